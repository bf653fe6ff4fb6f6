package wickmark.imaging.line;

import java.util.Arrays;

/**
 * A line seen running across the strip, as a path through bins of columns.
 *
 * @param kind pencil or tide mark
 * @param x middle of each bin, cells
 * @param y row of the path in each bin, cells
 * @param contrast how much darker the path is than beside it, each bin, optical density; not a
 *     number where white paper shows no line, and could not
 * @param noise standard deviation of a bin's contrast where there is no line
 */
record CrossLine(LineKind kind, double[] x, double[] y, double[] contrast, double noise) {
  /** Contrast over the noise from which a bin shows the line. */
  static final double SEEN = 3;

  /** Share of a line that must lie where it could be seen. */
  private static final double LEAST_TELLING = 0.4;

  /** Share of the bins in which the line is seen, of those that could show it. */
  double coverage() {
    int seen = 0;
    double[] telling = telling();
    for (double c : telling) {
      seen += c > SEEN * noise ? 1 : 0;
    }
    return seen / (double) telling.length;
  }

  /** Middle contrast of all bins that could show it. */
  double strength() {
    double[] sorted = telling();
    Arrays.sort(sorted);
    return sorted[sorted.length / 2];
  }

  /**
   * The contrasts of the bins that could show the line. Where they are few, all the others count as
   * if it were not there.
   */
  private double[] telling() {
    double[] telling = Arrays.stream(contrast).filter(c -> !Double.isNaN(c)).toArray();
    return Arrays.copyOf(
        telling, Math.max(telling.length, (int) Math.ceil(LEAST_TELLING * contrast.length)));
  }

  /** Mean row. */
  double level() {
    double sum = 0;
    for (double v : y) {
      sum += v;
    }
    return sum / y.length;
  }

  /** Row at a column, linearly between bins. */
  double at(double column) {
    int n = x.length;
    if (n == 1 || column <= x[0]) {
      return y[0];
    }
    int found = Arrays.binarySearch(x, column);
    int i = found >= 0 ? found : -found - 1;
    if (i < n) {
      double f = (column - x[i - 1]) / (x[i] - x[i - 1]);
      return y[i - 1] + f * (y[i] - y[i - 1]);
    }
    return y[n - 1];
  }

  /**
   * How sure it is that there is a line at all, 0 to 1: seen in most bins, and well above noise.
   */
  double certainty() {
    double clear = strength() / (strength() + 4 * noise);
    return Math.max(0, coverage() * Math.max(0, clear) * 1.25 - 0.1);
  }
}
