package wickmark.imaging.lane;

/**
 * One kind of evidence across the strip, with what of it is one thing and what are several.
 *
 * @param least below which there is nothing
 * @param half height of a peak that is as much a thing as not; 0 where every peak is one
 */
record CrossProfile(double[] values, double least, double half) {
  /** Peaks within this distance on either side tell how deep a valley is, mm. */
  private static final double NEIGHBOUR_MM = 8;

  /** Ink is there or not. */
  private static final double LEAST_INK = 0.3;

  /** Density of stain that is no ripple of the paper's texture. */
  private static final double LEAST_STAIN = 0.02;

  /** Ink with gaps up to some width closed: those between letters, or within one mark. */
  static CrossProfile ofInk(double[] ink, double gapMm) {
    double[] closed = ink.clone();
    int gap = (int) Math.round(gapMm / LaneEvidence.STEP_MM);
    int last = -1;
    for (int i = 0; i < ink.length; i++) {
      if (ink[i] > LEAST_INK) {
        for (int k = last + 1; last >= 0 && i - last <= gap && k < i; k++) {
          closed[k] = Math.max(closed[k], Math.min(ink[last], ink[i]));
        }
        last = i;
      }
    }
    return new CrossProfile(closed, LEAST_INK, 0);
  }

  static CrossProfile ofDensity(double[] density) {
    return new CrossProfile(density, LEAST_STAIN, 2 * LEAST_STAIN);
  }

  /** How surely a peak is a thing of its own, by its height, 0 to 1. */
  double sureness(double height) {
    double part = height / (height + half);
    return height < least ? 0 : part * part;
  }

  /** How much of a thing is cut through between a step and the one before it, 0 to 1. */
  double cutThrough(int step) {
    int reach = (int) (NEIGHBOUR_MM / LaneEvidence.STEP_MM);
    double before = 0;
    for (int i = Math.max(0, step - reach); i < step; i++) {
      before = Math.max(before, values[i]);
    }
    double after = 0;
    for (int i = step; i < Math.min(values.length, step + reach); i++) {
      after = Math.max(after, values[i]);
    }
    double lower = Math.min(before, after);
    double here = Math.min(values[step - 1], values[step]);
    return lower < least ? 0 : Math.min(1, here / lower) * sureness(lower);
  }
}
