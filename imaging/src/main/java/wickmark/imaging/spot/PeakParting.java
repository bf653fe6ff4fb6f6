package wickmark.imaging.spot;

import java.util.Optional;

/**
 * Whether two peaks of a lane are two dyes: of one hue if there is a valley between them, of two
 * hues if they are far enough apart for the colours to be seen.
 */
final class PeakParting {
  /**
   * Two colours that differ by less (radians) are one hue: paper texture alone makes a few degrees.
   */
  static final double SAME_HUE = 0.22;

  /**
   * Two colours as they are seen, each with what overlaps it, are one hue below this (radians):
   * overlap brings the colours of two dyes nearer to one another.
   */
  private static final double SEEN_SAME = SAME_HUE / 2;

  /** Depth of a valley, as a part of the lower peak, that parts two peaks of one hue. */
  private static final double VALLEY = 0.15;

  /** A peak with less of a larger neighbour's height, its hue just told apart, needs a valley. */
  private static final double SATELLITE = 0.4;

  /** Peaks further apart than this many of the flanks between them do not overlap. */
  private static final double FREE = 3.2;

  /** Least height of a shoulder over the highest peak's. */
  private static final double SHOULDER = 0.1;

  /** A shoulder stands off its neighbour by more than this many of the flanks between them. */
  private static final double CLEAR = 1.15;

  /**
   * Density by which blank paper may be taken for too light or too dark: a low shoulder whose hue
   * is another only by so much grey is its neighbour's foot on paper that is not quite blank.
   */
  private static final double BLANK_UNSURE = 0.008;

  /** Centres of two hues that are nearer than this many flanks are one place. */
  private static final double ONE_PLACE = 0.5;

  /** Smoothing of the curve in which a valley is looked for (standard deviation), mm. */
  private static final double VALLEY_SMOOTHING_MM = 0.7;

  /** Smoothing before a colour is read (standard deviation), mm. */
  private static final double COLOUR_SMOOTHING_MM = 0.6;

  /** A maximum of the curve may lie so far beyond the centre of its peak, mm. */
  private static final double BEYOND_MM = 0.75;

  private final LaneProfile profile;
  private final Optional<TwinPeaks> twins;

  PeakParting(LaneProfile profile) {
    this(profile, Optional.empty());
  }

  /** The same where two dyes are known to lie. */
  PeakParting(LaneProfile profile, Optional<TwinPeaks> twins) {
    this.profile = profile;
    this.twins = twins;
  }

  /** The flank of one peak that faces the other, mm. */
  static double flank(PeakShape of, PeakShape towards) {
    return towards.centre() > of.centre() ? of.ahead() : of.behind();
  }

  /** Whether two peaks run into one another. */
  static boolean overlap(PeakShape a, PeakShape b) {
    return apart(a, b) <= FREE * flanks(a, b);
  }

  private static double apart(PeakShape a, PeakShape b) {
    return Math.abs(a.centre() - b.centre());
  }

  private static double flanks(PeakShape a, PeakShape b) {
    return flank(a, b) + flank(b, a);
  }

  /** Whether the lower of two peaks, the i-th of a fit, is a dye of its own beside the j-th. */
  boolean parted(PeakFit fit, int i, int j) {
    PeakShape a = fit.shapes().get(i);
    PeakShape b = fit.shapes().get(j);
    if (!overlap(a, b) || (twins.isPresent() && twins.get().are(i, j))) {
      return true;
    }
    double ratio = fit.height(i) / fit.height(j);
    double angle = fit.colourAngle(i, j);
    boolean twoHues =
        angle > SAME_HUE && seenAngle(a, b) > SEEN_SAME && ratio > SATELLITE * SAME_HUE / angle;
    return (twoHues && apart(a, b) > ONE_PLACE * flanks(a, b)) || hasValley(fit, i, j);
  }

  /** Whether the lower of two peaks, the i-th of a fit, is a part of the j-th's own course. */
  boolean one(PeakFit fit, int i, int j) {
    return !parted(fit, i, j) && !isShoulder(fit, i);
  }

  /**
   * Whether a peak, low as it may be, is a shoulder that the eye sees by its colour: it stands
   * clear of all others, by more than their flanks, and is of another hue than they.
   */
  boolean isShoulder(PeakFit fit, int i) {
    return fit.height(i) > SHOULDER * fit.highest() && standsClear(fit, i);
  }

  private boolean standsClear(PeakFit fit, int i) {
    PeakShape a = fit.shapes().get(i);
    for (int j = 0; j < fit.shapes().size(); j++) {
      PeakShape b = fit.shapes().get(j);
      if (j != i
          && overlap(a, b)
          && (apart(a, b) < CLEAR * flanks(a, b)
              || fit.colourAngle(i, j) < SAME_HUE
              || PeakFit.angle(withoutGrey(fit, i), fit.amount()[j]) < SAME_HUE
              || seenAngle(a, b) < SEEN_SAME)) {
        return false;
      }
    }
    return true;
  }

  /** The amounts of a peak without the grey that may be the paper's. */
  private double[] withoutGrey(PeakFit fit, int i) {
    double[] amount = fit.amount()[i].clone();
    double least = Math.min(amount[0], Math.min(amount[1], amount[2]));
    double across = profile.width()[profile.sampleAt(fit.shapes().get(i).centre())];
    double grey = Math.min(least, BLANK_UNSURE * across);
    for (int c = 0; c < amount.length; c++) {
      amount[c] -= grey;
    }
    return amount;
  }

  /** Whether the profile dips between two peaks, against the maxima on both sides of the dip. */
  private boolean hasValley(PeakFit fit, int i, int j) {
    PeakShape a = fit.shapes().get(i);
    PeakShape b = fit.shapes().get(j);
    double[] curve = withoutOtherHues(fit, i, j);
    int beyond = (int) Math.round(BEYOND_MM / profile.step());
    int one = profile.sampleAt(a.centre());
    int other = profile.sampleAt(b.centre());
    int from = Math.max(0, Math.min(one, other) - beyond);
    int to = Math.min(curve.length - 1, Math.max(one, other) + beyond);
    double[] after = new double[to - from + 1];
    double most = 0;
    for (int k = to; k >= from; k--) {
      most = Math.max(most, curve[k]);
      after[k - from] = most;
    }
    double before = 0;
    for (int k = from; k <= to; k++) {
      before = Math.max(before, curve[k]);
      if (curve[k] < (1 - VALLEY) * Math.min(before, after[k - from])) {
        return true;
      }
    }
    return false;
  }

  /**
   * All three channels together without the dyes of other hues: one that lies between two of one
   * hue fills up the valley between them.
   */
  private double[] withoutOtherHues(PeakFit fit, int i, int j) {
    double[] curve = profile.total(VALLEY_SMOOTHING_MM);
    for (int other = 0; other < fit.shapes().size(); other++) {
      if (other != i
          && other != j
          && fit.colourAngle(other, i) > SAME_HUE
          && fit.colourAngle(other, j) > SAME_HUE) {
        double[] amount = fit.amount()[other];
        for (int k = 0; k < curve.length; k++) {
          double height = fit.shapes().get(other).peak(profile.place(k));
          curve[k] -= (amount[0] + amount[1] + amount[2]) * height;
        }
      }
    }
    return curve;
  }

  /**
   * Angle between the colours that are seen at two peaks, both with what overlaps them, radians.
   */
  double seenAngle(PeakShape a, PeakShape b) {
    double[] one = new double[3];
    double[] other = new double[3];
    for (int c = 0; c < 3; c++) {
      double[] curve = profile.channel(c, COLOUR_SMOOTHING_MM);
      one[c] = Math.max(0, curve[profile.sampleAt(a.centre())]);
      other[c] = Math.max(0, curve[profile.sampleAt(b.centre())]);
    }
    return PeakFit.angle(one, other);
  }
}
