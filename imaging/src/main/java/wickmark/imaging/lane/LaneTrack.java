package wickmark.imaging.lane;

/**
 * One sample's place on the baseline.
 *
 * @param originX column on the baseline, cells
 * @param left column from which on stain belongs to this lane
 * @param right column up to which it does
 * @param support how well writing, marks and stain agree on it, 0 to 1
 * @param countLead how much better the evidence is explained with this number of lanes on the strip
 *     than with another; infinite where the person says it and no other explains it better, below 0
 *     where another does
 */
public record LaneTrack(
    double originX, double left, double right, double support, double countLead) {
  /** Lead of the number of lanes at which it is as sure as not. */
  private static final double HALF_LEAD = 0.3;

  /** A lane that the person says. */
  public static LaneTrack said(double originX) {
    return new LaneTrack(originX, originX, originX, 1, Double.POSITIVE_INFINITY);
  }

  /** The same lane with stain from one column to another. */
  public LaneTrack between(double from, double to) {
    return new LaneTrack(originX, from, to, support, countLead);
  }

  /** How sure it is that one sample was put there, 0 to 1. */
  public double confidence() {
    return support * counted();
  }

  private double counted() {
    if (Double.isInfinite(countLead)) {
      return 1;
    }
    // The number that was said is right; what speaks for another says that a lane was misplaced.
    return countLead < 0
        ? HALF_LEAD / (HALF_LEAD - countLead)
        : countLead / (countLead + HALF_LEAD);
  }
}
