package wickmark.imaging.lane;

/**
 * What tells of lanes, in steps across the strip.
 *
 * @param writing below the baseline, 0 to 1
 * @param marks on the baseline, 0 to 1
 * @param density the greatest density of dye above it
 */
record LaneEvidence(double[] writing, double[] marks, double[] density) {
  /** Width of a step, (nominal) mm. */
  static final double STEP_MM = 0.5;

  /** Density of half the evidence: a pale spot says as much of its lane as a deep one. */
  private static final double HALF_DENSITY = 0.04;

  int steps() {
    return density.length;
  }

  /** Evidence of stain, 0 to 1; a spot's rim has less than its middle. */
  double stain(int step) {
    return density[step] / (density[step] + HALF_DENSITY);
  }

  /** Middle of a step, mm. */
  static double middleMm(int step) {
    return (step + 0.5) * STEP_MM;
  }

  /** Where the sample was put, mm: marks tell best, then writing, then stain. */
  double originMm(LaneSpan span) {
    double sum = 0;
    double moment = 0;
    for (int i = span.from(); i < span.to(); i++) {
      double w = writing[i] + 4 * marks[i] + 0.7 * stain(i);
      sum += w;
      moment += w * middleMm(i);
    }
    return sum > 0 ? moment / sum : (span.from() + span.to()) * STEP_MM / 2;
  }

  /** How well writing, marks and stain agree on a lane, 0 to 1: two kinds suffice. */
  double support(LaneSpan span) {
    double w = 0;
    double m = 0;
    double s = 0;
    for (int i = span.from(); i < span.to(); i++) {
      w += writing[i];
      m += marks[i];
      s += stain(i);
    }
    double kinds = Math.min(1, w / 3) + Math.min(1, m / 2) + Math.min(1, s / 3);
    return Math.min(1, kinds / 2);
  }
}
