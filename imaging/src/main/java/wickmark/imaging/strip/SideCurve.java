package wickmark.imaging.strip;

import java.util.Arrays;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.QRDecomposition;
import org.apache.commons.math3.linear.SingularMatrixException;

/**
 * A smooth curve through the traced points of one side: the offset from the straight line between
 * two corners as a cubic in the place along it (0 to 1), by iteratively reweighted least squares
 * (Tukey's biweight), so that a dog-ear or a finger at the edge has no say. Where the points bear
 * them out, the waves of a cockled edge are added as sines that vanish at the ends: the corners are
 * the cubic's.
 */
final class SideCurve {
  private static final int TERMS = 4;

  /** Half waves along the side: fewer are the cubic's. */
  private static final int LEAST_WAVE = 3;

  private static final int MOST_WAVE = 8;

  /** Ratio of residual variances, with and without waves, from which they are borne out. */
  private static final double WAVES_EXPLAIN = 0.6;

  private final double x0;
  private final double y0;
  private final double dx;
  private final double dy;
  private final double length;
  private final double[] coefficient;
  private final double[] waves;
  private final double[] along;
  private final double[] offset;
  private final double[] weight;
  private final double sigma;

  private SideCurve(
      double[] line,
      double[] coefficient,
      double[] waves,
      SideTracer.Trace trace,
      double[] weight,
      double sigma) {
    this.x0 = line[0];
    this.y0 = line[1];
    this.length = Math.hypot(line[2] - line[0], line[3] - line[1]);
    this.dx = (line[2] - line[0]) / length;
    this.dy = (line[3] - line[1]) / length;
    this.coefficient = coefficient;
    this.waves = waves;
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
    double[] residual = new double[n];
    for (int k = 0; k < n; k++) {
      residual[k] = trace.offset()[k] - value(c, u[k]);
    }
    double[] waves = waves(u, residual, weight);
    return new SideCurve(
        line, c, waves, trace, weight, waves.length == 0 ? sigma : spread(u, residual, waves));
  }

  /** Amplitudes of the sines, by weighted least squares; none where they explain too little. */
  private static double[] waves(double[] u, double[] residual, double[] weight) {
    int terms = MOST_WAVE - LEAST_WAVE + 1;
    if (u.length < 4 * terms) {
      return new double[0];
    }
    double[][] shapes = new double[u.length][terms];
    double[] right = new double[u.length];
    double before = 0;
    for (int k = 0; k < u.length; k++) {
      double root = Math.sqrt(weight[k]);
      for (int i = 0; i < terms; i++) {
        shapes[k][i] = root * StrictMath.sin((i + LEAST_WAVE) * Math.PI * u[k]);
      }
      right[k] = root * residual[k];
      before += right[k] * right[k];
    }
    double[] amplitudes;
    try {
      amplitudes =
          new QRDecomposition(new Array2DRowRealMatrix(shapes, false))
              .getSolver()
              .solve(new ArrayRealVector(right, false))
              .toArray();
    } catch (SingularMatrixException e) {
      return new double[0]; // hardly any point was kept
    }
    double after = 0;
    for (int k = 0; k < u.length; k++) {
      double left = residual[k] - wave(amplitudes, u[k]);
      after += weight[k] * left * left;
    }
    return after < WAVES_EXPLAIN * before ? amplitudes : new double[0];
  }

  private static double wave(double[] amplitudes, double u) {
    double sum = 0;
    if (u > 0 && u < 1) {
      for (int i = 0; i < amplitudes.length; i++) {
        sum += amplitudes[i] * StrictMath.sin((i + LEAST_WAVE) * Math.PI * u);
      }
    }
    return sum;
  }

  private static double spread(double[] u, double[] residual, double[] waves) {
    double[] size = new double[u.length];
    for (int k = 0; k < u.length; k++) {
      size[k] = Math.abs(residual[k] - wave(waves, u[k]));
    }
    Arrays.sort(size);
    return Math.max(0.05, 1.4826 * size[u.length / 2]);
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
    return value(coefficient, u) + wave(waves, u);
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
