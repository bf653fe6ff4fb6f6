package wickmark.imaging.paper;

/**
 * How blank paper darkens into a shadow: in its midst only the light is left that comes from
 * elsewhere, at its rim a part of the direct light as well,
 *
 * <pre>light = elsewhere + t · direct,  0 ≤ t ≤ 1,  elsewhere + direct = 1</pre>
 *
 * <p>in each channel, so that all of it lies on one curve, whatever the colours of both lights.
 *
 * @param elsewhere that light in red, green and blue, parts of lit paper's
 */
record ShadowCurve(double[] elsewhere) {
  /** Part of lit paper's light than which no shadow leaves less. */
  private static final double DARKEST = 1e-3;

  /** How far from the curve blank paper lies at most, density. */
  private static final double AGREED = 0.03;

  /**
   * A place of some density against lit paper.
   *
   * @param direct part of the direct light there; below 0 by its noise
   * @param isPaper whether all channels tell of the same part; if not, a dye lies there, and the
   *     part is by the channel that it leaves alone
   */
  record Place(double direct, boolean isPaper) {}

  /** The curve to a midst of a density in red, green and blue. */
  static ShadowCurve to(double[] density) {
    double[] elsewhere = new double[3];
    for (int c = 0; c < 3; c++) {
      elsewhere[c] = StrictMath.pow(10, -density[c]);
    }
    return new ShadowCurve(elsewhere);
  }

  Place at(double red, double green, double blue) {
    double[] density = {red, green, blue};
    double most = 0;
    double mean = 0;
    for (int c = 0; c < 3; c++) {
      double t = (StrictMath.pow(10, -density[c]) - elsewhere[c]) / (1 - elsewhere[c]);
      most = Math.max(most, t);
      mean += t / 3;
    }
    boolean isPaper = true;
    for (int c = 0; c < 3; c++) {
      isPaper &= Math.abs(density[c] + logLight(c, mean)) < AGREED;
    }
    return new Place(Math.min(1, isPaper ? mean : most), isPaper);
  }

  /** Log light in a channel against lit paper's. */
  double logLight(int channel, double direct) {
    return StrictMath.log10(
        Math.max(DARKEST, elsewhere[channel] + (1 - elsewhere[channel]) * direct));
  }

  /** Density, in the mean of the channels. */
  double density(double direct) {
    return -(logLight(0, direct) + logLight(1, direct) + logLight(2, direct)) / 3;
  }
}
