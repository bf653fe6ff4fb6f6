package wickmark.imaging.strip;

import java.util.Arrays;

/**
 * A smooth curve through the traced points of one side: the offset from the straight line between
 * two corners as a cubic in the place along it (0 to 1), by iteratively reweighted least squares
 * (Tukey's biweight), so that a dog-ear or a finger at the edge has no say.
 */
final class SideCurve {
  private static final int TERMS = 4;
  private final double x0;
  private final double y0;
  private final double dx;
  private final double dy;
  private final double length;
  private final double[] coefficient;
  private final double[] along;
  private final double[] offset;
  private final double[] weight;
  private final double sigma;

  private SideCurve(
      double[] line, double[] coefficient, SideTracer.Trace trace, double[] weight, double sigma) {
    this.x0 = line[0];
    this.y0 = line[1];
    this.length = Math.hypot(line[2] - line[0], line[3] - line[1]);
    this.dx = (line[2] - line[0]) / length;
    this.dy = (line[3] - line[1]) / length;
    this.coefficient = coefficient;
    this.along = trace.along();
    this.offset = trace.offset();
    this.weight = weight;
    this.sigma = sigma;
  }

  /** Fits a curve to a trace along the line {x0, y0, x1, y1}. */
  static SideCurve fit(double[] line, SideTracer.Trace trace) {
    int n = trace.along().length;
    double length = Math.hypot(line[2] - line[0], line[3] - line[1]);
    double[] u = new double[n];
    double typical = 1e-12;
    for (int k = 0; k < n; k++) {
      u[k] = trace.along()[k] / length;
      typical += trace.strength()[k] / n;
    }
    double[] trust = new double[n];
    for (int k = 0; k < n; k++) {
      trust[k] = Math.min(1, trace.strength()[k] / typical);
    }
    double[] weight = trust.clone();
    double[] c = new double[TERMS];
    double sigma = 0;
    // Few terms first: a cubic that starts from bad points bends towards them.
    for (int round = 0; round < 12; round++) {
      int terms = round < 4 ? 2 : TERMS;
      c = solve(u, trace.offset(), weight, terms);
      double[] residual = new double[n];
      double[] sorted = new double[n];
      for (int k = 0; k < n; k++) {
        residual[k] = trace.offset()[k] - value(c, u[k]);
        sorted[k] = Math.abs(residual[k]);
      }
      Arrays.sort(sorted);
      sigma = Math.max(0.05, 1.4826 * sorted[n / 2]);
      for (int k = 0; k < n; k++) {
        double z = residual[k] / (4.7 * sigma);
        weight[k] = Math.abs(z) < 1 ? trust[k] * (1 - z * z) * (1 - z * z) : 0;
      }
    }
    return new SideCurve(line, c, trace, weight, sigma);
  }

  private static double[] solve(double[] u, double[] v, double[] w, int terms) {
    double[][] a = new double[terms][terms + 1];
    for (int k = 0; k < u.length; k++) {
      double[] p = new double[terms];
      p[0] = 1;
      for (int i = 1; i < terms; i++) {
        p[i] = p[i - 1] * (u[k] - 0.5);
      }
      for (int i = 0; i < terms; i++) {
        for (int j = 0; j < terms; j++) {
          a[i][j] += w[k] * p[i] * p[j];
        }
        a[i][terms] += w[k] * p[i] * v[k];
      }
    }
    double[] c = new double[TERMS];
    for (int i = 0; i < terms; i++) {
      a[i][i] += 1e-9;
      for (int r = i + 1; r < terms; r++) {
        double f = a[r][i] / a[i][i];
        for (int j = i; j <= terms; j++) {
          a[r][j] -= f * a[i][j];
        }
      }
    }
    for (int i = terms - 1; i >= 0; i--) {
      double s = a[i][terms];
      for (int j = i + 1; j < terms; j++) {
        s -= a[i][j] * c[j];
      }
      c[i] = s / a[i][i];
    }
    return c;
  }

  private static double value(double[] c, double u) {
    double t = u - 0.5;
    return c[0] + t * (c[1] + t * (c[2] + t * c[3]));
  }

  /** Offset of the curve to the inside at the place u along the line, 0 to 1. */
  double offsetAt(double u) {
    return value(coefficient, u);
  }

  /** The point of the curve at u, which may lie a little outside 0 to 1. */
  double[] pointAt(double u) {
    double off = offsetAt(u);
    double t = u * length;
    return new double[] {x0 + dx * t - dy * off, y0 + dy * t + dx * off};
  }

  /** Standard deviation of the traced points about the curve. */
  double sigma() {
    return sigma;
  }

  /** Share of the traced points that the curve keeps. */
  double kept() {
    double sum = 0;
    for (double w : weight) {
      sum += w > 0.1 ? 1 : 0;
    }
    return sum / weight.length;
  }

  double[] offsets() {
    return offset.clone();
  }

  double[] places() {
    double[] u = new double[along.length];
    for (int k = 0; k < u.length; k++) {
      u[k] = along[k] / length;
    }
    return u;
  }

  /** Crossing of the end of this curve with the start of the next, by fixed-point iteration. */
  double[] cornerWith(SideCurve next) {
    double u = 1;
    double v = 0;
    double[] p = pointAt(u);
    for (int round = 0; round < 20; round++) {
      p = pointAt(u);
      v = next.placeOf(p[0], p[1]);
      double[] q = next.pointAt(v);
      u = placeOf(q[0], q[1]);
    }
    double[] q = next.pointAt(v);
    return new double[] {(p[0] + q[0]) / 2, (p[1] + q[1]) / 2};
  }

  private double placeOf(double x, double y) {
    return ((x - x0) * dx + (y - y0) * dy) / length;
  }
}
