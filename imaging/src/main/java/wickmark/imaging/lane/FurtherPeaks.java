package wickmark.imaging.lane;

/**
 * How many things a growing stretch of a profile shows beside its highest: each peak counts by how
 * deep the valley is that parts it from a higher one, as a part of its own height (the persistence
 * of peaks, in computational topology).
 */
final class FurtherPeaks {
  /** A valley that leaves more than this of the peak is none. */
  private static final double SHALLOW = 0.15;

  private final CrossProfile profile;

  /** The steps that no later one exceeds, and the lowest value between each and the one before. */
  private final double[] peak;

  private final double[] valley;
  private int size;
  private double exceeded;
  private double standing;

  FurtherPeaks(CrossProfile profile) {
    this.profile = profile;
    peak = new double[profile.values().length];
    valley = new double[profile.values().length];
  }

  /** Adds the next step. */
  void add(double value) {
    double lowest = size == 0 ? value : peak[size - 1];
    while (size > 0 && peak[size - 1] <= value) {
      size--;
      if (size > 0) {
        standing -= parted(peak[size], valley[size]);
        exceeded += parted(peak[size], Math.max(valley[size], lowest));
        lowest = Math.min(lowest, valley[size]);
      } else {
        exceeded += parted(peak[0], lowest);
      }
    }
    if (size > 0) {
      standing += parted(value, lowest);
    }
    peak[size] = value;
    valley[size] = lowest;
    size++;
  }

  private double parted(double height, double saddle) {
    double depth = Math.max(0, 1 - saddle / Math.max(height, 1e-9) - SHALLOW) / (1 - SHALLOW);
    return depth * profile.sureness(height);
  }

  /** Their number; a peak that is parted by half counts half. */
  double count() {
    return exceeded + standing;
  }
}
