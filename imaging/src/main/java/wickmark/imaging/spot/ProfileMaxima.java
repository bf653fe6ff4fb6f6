package wickmark.imaging.spot;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * The peaks that a lane's profile shows by itself, as first shapes for a fit: maxima of all three
 * channels together and of each channel, since a dye beneath another may show in one alone.
 */
final class ProfileMaxima {
  /** Smoothing before maxima are looked for (standard deviation), mm. */
  private static final double SMOOTHING_MM = 0.7;

  /** Least prominence of a maximum over its height: of all channels together, and of one alone. */
  private static final double PROMINENT = 0.05;

  private static final double PROMINENT_IN_ONE = 0.12;

  /** Maxima of several channels that are nearer to one another are one peak's, mm. */
  private static final double ONE_PEAK_MM = 1.6;

  /** Bounds of the flank that a shape starts with, mm. */
  private static final double LEAST_FLANK_MM = 0.6;

  private static final double MOST_FLANK_MM = 6;

  private final LaneProfile profile;
  private final List<Maximum> found = new ArrayList<>();

  /** A maximum of one curve: its place and half width in mm, its height in the curve's unit. */
  private record Maximum(double place, double height, double halfWidth) {}

  private ProfileMaxima(LaneProfile profile) {
    this.profile = profile;
    collect(profile.total(SMOOTHING_MM), PROMINENT);
    for (int c = 0; c < 3; c++) {
      collect(profile.channel(c, SMOOTHING_MM), PROMINENT_IN_ONE);
    }
  }

  /** Returns a shape without a streak for each of the highest maxima, at most so many. */
  static List<PeakShape> shapes(LaneProfile profile, int most) {
    return new ProfileMaxima(profile).shapes(most);
  }

  private List<PeakShape> shapes(int most) {
    List<Maximum> kept = highest(most);
    List<PeakShape> shapes = new ArrayList<>();
    for (Maximum m : kept) {
      double flank = m.halfWidth;
      for (Maximum other : kept) {
        // What several dyes make together is wider than each of them.
        flank = other.equals(m) ? flank : Math.min(flank, 0.55 * Math.abs(other.place - m.place));
      }
      double start = Math.max(LEAST_FLANK_MM, flank);
      shapes.add(new PeakShape(m.place, start, start, 0));
    }
    return shapes;
  }

  private List<Maximum> highest(int most) {
    List<Maximum> kept = new ArrayList<>();
    found.sort(Comparator.comparingDouble(m -> -m.height));
    for (Maximum m : found) {
      boolean near = kept.stream().anyMatch(k -> Math.abs(k.place - m.place) < ONE_PEAK_MM);
      if (!near && kept.size() < most) {
        kept.add(m);
      }
    }
    return kept;
  }

  /** Adds the maxima of a curve that stand out by this part of their height, and from the noise. */
  private void collect(double[] curve, double prominent) {
    double most = 0;
    for (double v : curve) {
      most = Math.max(most, v);
    }
    for (int k = 0; k < curve.length; k++) {
      double before = k > 0 ? curve[k - 1] : 0;
      double after = k + 1 < curve.length ? curve[k + 1] : 0;
      if (curve[k] <= before || curve[k] < after || curve[k] < 4 * profile.noise()[k]) {
        continue;
      }
      double prominence = Math.min(fall(curve, k, -1), fall(curve, k, 1));
      if (prominence > Math.max(3 * profile.noise()[k], prominent * curve[k])
          && curve[k] > 0.015 * most) {
        found.add(new Maximum(profile.place(k), curve[k], halfWidth(curve, k)));
      }
    }
  }

  /** How deep the curve falls on one side before it rises above this maximum. */
  private static double fall(double[] curve, int top, int direction) {
    double least = curve[top];
    for (int k = top + direction; k >= 0 && k < curve.length; k += direction) {
      if (curve[k] > curve[top]) {
        return curve[top] - least;
      }
      least = Math.min(least, curve[k]);
    }
    return curve[top] - Math.min(least, 0);
  }

  private double halfWidth(double[] curve, int top) {
    int left = top;
    int right = top;
    while (left > 0 && curve[left] > 0.6 * curve[top]) {
      left--;
    }
    while (right < curve.length - 1 && curve[right] > 0.6 * curve[top]) {
      right++;
    }
    double half = (right - left) * profile.step() / 2;
    return Math.max(LEAST_FLANK_MM, Math.min(MOST_FLANK_MM, half));
  }
}
