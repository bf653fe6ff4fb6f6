package wickmark.imaging.line;

import java.util.List;

/**
 * A line across the strip as a polynomial of its row over the column, with the covariance of its
 * coefficients.
 *
 * @param kind what it is made of
 * @param middle column at which the polynomial's variable is 0, cells
 * @param half columns from there to where it is 1, cells
 * @param coefficients of rising powers, cells
 * @param covariance of the coefficients
 * @param sigma standard deviation of the line's points about it, cells
 * @param certainty 0 to 1: whether there is such a line
 * @param seenShare share of the width in which it is seen
 */
public record FittedLine(
    LineKind kind,
    double middle,
    double half,
    List<Double> coefficients,
    double[][] covariance,
    double sigma,
    double certainty,
    double seenShare) {

  public FittedLine {
    coefficients = List.copyOf(coefficients);
  }

  /**
   * The straight line through two places that a person set.
   *
   * @param from {column, row}, cells
   * @param to {column, row}, cells
   * @param sigma standard uncertainty of each place's row, cells
   * @param width of the map, cells
   */
  public static FittedLine byHand(double[] from, double[] to, double sigma, double width) {
    double half = width / 2;
    double u = (from[0] - half) / half;
    double v = (to[0] - half) / half;
    double rise = (to[1] - from[1]) / (v - u);
    double variance = sigma * sigma / ((v - u) * (v - u));
    double mixed = -variance * (u + v);
    return new FittedLine(
        LineKind.BY_HAND,
        half,
        half,
        List.of(from[1] - rise * u, rise),
        new double[][] {{variance * (u * u + v * v), mixed}, {mixed, 2 * variance}},
        sigma,
        1,
        0);
  }

  /** Row at a column, cells. */
  public double at(double column) {
    double u = variable(column);
    double value = 0;
    for (int i = coefficients.size() - 1; i >= 0; i--) {
      value = value * u + coefficients.get(i);
    }
    return value;
  }

  /** Standard uncertainty of the row at a column, cells, from the fit alone. */
  public double uncertaintyAt(double column) {
    double u = variable(column);
    double sum = 0;
    for (int i = 0; i < coefficients.size(); i++) {
      for (int j = 0; j < coefficients.size(); j++) {
        sum += covariance[i][j] * StrictMath.pow(u, i + j);
      }
    }
    return Math.sqrt(Math.max(0, sum));
  }

  /** Mean slope over the width, rows per column. */
  public double slope() {
    return (at(middle + half) - at(middle - half)) / (2 * half);
  }

  /** A curve must not be followed far beyond where it was seen. */
  private double variable(double column) {
    return Math.max(-1.15, Math.min(1.15, (column - middle) / half));
  }
}
