package wickmark.imaging.scale;

/**
 * Measures how marks lean by shearing the band until the marks stand upright, where the sums over
 * its columns vary most. Unlike the comparison of single marks it cannot catch the neighbouring
 * one.
 */
final class SlantSearch {
  private static final double STEP = 0.02;
  private static final int STEPS = 17;

  /** Length of the pieces that are sheared, in pitches. */
  private static final double PIECE = 12;

  private SlantSearch() {}

  /**
   * Returns the frame's slant, corrected.
   *
   * @param half rows looked at to both sides of v = 0
   */
  static RobustPolynomial corrected(EdgeBand band, TickSeries series, double half) {
    double pitch = series.middlePitch();
    double first = series.ticks().get(0).u();
    double last = series.ticks().get(series.ticks().size() - 1).u();
    double low = Math.min(first, last);
    double span = Math.abs(last - first);
    int pieces = (int) Math.max(1, Math.min(24, Math.floor(span / (PIECE * pitch / 2)) - 1));
    double length = Math.min(span, PIECE * pitch);
    double[] u = new double[pieces];
    double[] slant = new double[pieces];
    for (int i = 0; i < pieces; i++) {
      double start = pieces == 1 ? low : low + i * (span - length) / (pieces - 1);
      u[i] = start + length / 2;
      slant[i] =
          band.frame().slant().at(u[i]) + lean(band, start, start + length, (int) half, pitch);
    }
    return RobustPolynomial.fit(u, slant, pieces < 4 ? 0 : 1, 0.005);
  }

  /** Every other shear is tried, then those beside the best: the energy's peak is wider. */
  private static double lean(EdgeBand band, double low, double high, int half, double pitch) {
    double[] energy = new double[2 * STEPS + 1];
    int best = 0;
    for (int i = 0; i < energy.length; i += 2) {
      energy[i] = energy(band, low, high, half, (i - STEPS) * STEP, pitch);
      best = energy[i] > energy[best] ? i : best;
    }
    if (best == 0 || best == energy.length - 1) {
      return 0;
    }
    for (int i : new int[] {best - 1, best + 1}) {
      energy[i] = energy(band, low, high, half, (i - STEPS) * STEP, pitch);
    }
    best = energy[best - 1] > energy[best] ? best - 1 : best;
    best = energy[best + 1] > energy[best] ? best + 1 : best;
    double bend = energy[best - 1] - 2 * energy[best] + energy[best + 1];
    double shift = bend < 0 ? 0.5 * (energy[best - 1] - energy[best + 1]) / bend : 0;
    return (best - STEPS + shift) * STEP;
  }

  /** Energy of the second difference of the column sums at half a pitch: of a comb, not a slope. */
  private static double energy(
      EdgeBand band, double low, double high, int half, double shear, double pitch) {
    int n = (int) (high - low);
    double[] columns = new double[n];
    int rowStep = Math.max(1, half / 8);
    for (int v = -half; v <= half; v += rowStep) {
      for (int i = 0; i < n; i++) {
        columns[i] += band.at(low + i + shear * v, v);
      }
    }
    int lag = (int) Math.max(1, Math.round(pitch / 2));
    double sum = 0;
    for (int i = lag; i < n - lag; i++) {
      double d = columns[i - lag] - 2 * columns[i] + columns[i + lag];
      sum += d * d;
    }
    return sum;
  }
}
