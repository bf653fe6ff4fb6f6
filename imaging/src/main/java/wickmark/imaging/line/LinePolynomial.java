package wickmark.imaging.line;

import java.util.Arrays;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.LUDecomposition;
import org.apache.commons.math3.linear.RealMatrix;

/**
 * The course of a line as a polynomial, by iteratively reweighted least squares (Tukey's biweight)
 * through points that are trusted to different degrees.
 *
 * @param coefficients of rising powers of the place across, in the unit of the points' height
 * @param covariance of the coefficients
 * @param sigma standard deviation of the points from the course, in the same unit
 * @param criterion for the choice of a degree (Bayesian information criterion); less is better
 */
record LinePolynomial(
    double[] coefficients, double[][] covariance, double sigma, double criterion) {
  /** Tuning constant of the biweight, for 95 % efficiency. */
  private static final double TUKEY = 4.7;

  private static final double MAD_TO_SIGMA = 1.4826;

  /** A point is never known better, in cells: so that a perfect line does not divide by zero. */
  private static final double LEAST_SIGMA = 0.03;

  private static final int ROUNDS = 15;

  /** Straight first: a high degree would follow outliers. */
  private static final int STRAIGHT_ROUNDS = 4;

  /** Keeps the equations solvable where all weight is on too few points. */
  private static final double RIDGE = 1e-9;

  /**
   * Fits a polynomial.
   *
   * @param u places across, −1 at the strip's left side and 1 at its right
   * @param y heights, cells
   * @param trust of each point, 0 to 1
   */
  static LinePolynomial robust(double[] u, double[] y, double[] trust, int degree) {
    int n = u.length;
    double[] weight = trust.clone();
    double[] c = new double[degree + 1];
    RealMatrix inverse = new Array2DRowRealMatrix(degree + 1, degree + 1);
    double sigma = 1;
    for (int round = 0; round < ROUNDS; round++) {
      int terms = round < STRAIGHT_ROUNDS ? 2 : degree + 1;
      double[] right = new double[terms];
      inverse = inverseOfNormalEquations(u, y, weight, right);
      c = Arrays.copyOf(inverse.operate(right), degree + 1);
      double[] size = new double[n];
      for (int i = 0; i < n; i++) {
        size[i] = Math.abs(y[i] - value(c, u[i]));
      }
      sigma = Math.max(LEAST_SIGMA, MAD_TO_SIGMA * median(size));
      for (int i = 0; i < n; i++) {
        double z = size[i] / (TUKEY * sigma);
        weight[i] = z < 1 ? trust[i] * (1 - z * z) * (1 - z * z) : 0;
      }
    }
    double[][] covariance = inverse.getData();
    for (double[] row : covariance) {
      for (int k = 0; k < row.length; k++) {
        row[k] *= sigma * sigma;
      }
    }
    return new LinePolynomial(c, covariance, sigma, criterion(u, y, trust, c, sigma));
  }

  /** The inverse of the normal equations' matrix; their right side goes into the array. */
  private static RealMatrix inverseOfNormalEquations(
      double[] u, double[] y, double[] weight, double[] right) {
    int terms = right.length;
    double[][] a = new double[terms][terms];
    for (int i = 0; i < u.length; i++) {
      double[] p = powers(u[i], terms);
      for (int j = 0; j < terms; j++) {
        right[j] += weight[i] * p[j] * y[i];
        for (int k = 0; k < terms; k++) {
          a[j][k] += weight[i] * p[j] * p[k];
        }
      }
    }
    for (int j = 0; j < terms; j++) {
      a[j][j] += RIDGE;
    }
    return new LUDecomposition(new Array2DRowRealMatrix(a, false)).getSolver().getInverse();
  }

  private static double criterion(
      double[] u, double[] y, double[] trust, double[] c, double sigma) {
    int n = u.length;
    double loss = 0;
    for (int i = 0; i < n; i++) {
      double z = (y[i] - value(c, u[i])) / Math.max(sigma, 1e-9);
      loss += trust[i] * Math.min(z * z, 9);
    }
    return n * StrictMath.log(sigma * sigma * Math.max(loss, 1e-9) / n)
        + c.length * StrictMath.log(n);
  }

  /** The upper one of the two in the middle, where there are two. */
  private static double median(double[] values) {
    double[] sorted = values.clone();
    Arrays.sort(sorted);
    return sorted[sorted.length / 2];
  }

  private static double[] powers(double u, int terms) {
    double[] p = new double[terms];
    p[0] = 1;
    for (int i = 1; i < terms; i++) {
      p[i] = p[i - 1] * u;
    }
    return p;
  }

  private static double value(double[] c, double u) {
    double v = 0;
    for (int i = c.length - 1; i >= 0; i--) {
      v = v * u + c[i];
    }
    return v;
  }
}
