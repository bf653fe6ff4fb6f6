package wickmark.imaging.line;

import java.util.Arrays;

/**
 * A line seen running across the strip, as a path through bins of columns.
 *
 * @param kind pencil or tide mark
 * @param x middle of each bin, cells
 * @param y row of the path in each bin, cells
 * @param contrast how much darker the path is than beside it, each bin, optical density
 * @param noise standard deviation of a bin's contrast where there is no line
 */
record CrossLine(LineKind kind, double[] x, double[] y, double[] contrast, double noise) {

  /** Share of the bins in which the line is seen. */
  double coverage() {
    int seen = 0;
    for (double c : contrast) {
      seen += c > 3 * noise ? 1 : 0;
    }
    return seen / (double) contrast.length;
  }

  /** Middle contrast of all bins. */
  double strength() {
    double[] sorted = contrast.clone();
    Arrays.sort(sorted);
    return sorted[sorted.length / 2];
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
