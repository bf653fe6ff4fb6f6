package wickmark.imaging.spot;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Where a lane may hold a peak that a fit has not yet. */
final class HiddenPeaks {
  /** Neighbours nearer than this many of the flanks between them may hide a third. */
  private static final double CLOSE = 3.5;

  /** Ratio of a peak's flanks from which the longer may hide a peak. */
  private static final double UNEVEN = 1.35;

  /** Share of the dye that even a good fit leaves over: real spots are no Gaussians. */
  private static final double USUAL_REST = 0.03;

  private HiddenPeaks() {}

  /**
   * Returns the places to try, mm from the baseline: those between and beside peaks, then the one
   * where most dye is left over; none if none is.
   */
  static List<Double> places(LaneProfile profile, PeakFit fit) {
    int rest = largestRest(profile, fit);
    if (rest < 0) {
      return List.of();
    }
    List<Double> places = besidePeaks(fit);
    places.add(profile.place(rest));
    return places;
  }

  /** The sample around which most dye is left over for what is usual there; −1 for none. */
  private static int largestRest(LaneProfile profile, PeakFit fit) {
    double[] left = fit.unexplained(profile);
    int at = -1;
    double most = 0;
    for (int k = 2; k < left.length - 2; k++) {
      double lobe = left[k - 2] + left[k - 1] + left[k] + left[k + 1] + left[k + 2];
      double usual = profile.noise()[k] + USUAL_REST * Math.max(0, profile.totalAt(k));
      if (lobe / usual > most) {
        most = lobe / usual;
        at = k;
      }
    }
    return at;
  }

  /** Places between neighbours that run into one another, and on flanks that are long. */
  private static List<Double> besidePeaks(PeakFit fit) {
    List<PeakShape> sorted = new ArrayList<>(fit.shapes());
    sorted.sort(Comparator.comparingDouble(PeakShape::centre));
    List<Double> places = new ArrayList<>();
    for (int j = 0; j < sorted.size(); j++) {
      PeakShape s = sorted.get(j);
      if (j + 1 < sorted.size()) {
        PeakShape t = sorted.get(j + 1);
        if (t.centre() - s.centre() < CLOSE * (s.ahead() + t.behind())) {
          places.add((s.centre() + t.centre()) / 2);
        }
      }
      if (Math.max(s.behind(), s.ahead()) > UNEVEN * Math.min(s.behind(), s.ahead())) {
        places.add(
            s.behind() > s.ahead() ? s.centre() - 1.5 * s.behind() : s.centre() + 1.5 * s.ahead());
      }
    }
    return places;
  }
}
