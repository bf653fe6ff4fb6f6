package wickmark.imaging.scale;

import java.util.Arrays;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.QRDecomposition;
import org.apache.commons.math3.linear.SingularMatrixException;

/**
 * A polynomial through noisy points by iteratively reweighted least squares with Tukey's biweight
 * (tuning constant 4.685 for 95 % efficiency: Huber and Ronchetti, Robust Statistics, 2nd ed. 2009,
 * sec. 4.8 ff., from memory).
 */
final class RobustPolynomial {
  private static final double TUKEY = 4.685;
  private static final double MAD_TO_SIGMA = 1.4826;
  private static final int ROUNDS = 20;

  /** Relative change of the residual scale below which nothing more is to be gained. */
  private static final double SETTLED = 1e-3;

  private final double middle;
  private final double half;
  private final double[] coefficients;
  private final double sigma;

  private RobustPolynomial(double middle, double half, double[] coefficients, double sigma) {
    this.middle = middle;
    this.half = half;
    this.coefficients = coefficients;
    this.sigma = sigma;
  }

  /** Returns the curve that has the same value everywhere. */
  static RobustPolynomial constant(double value) {
    return new RobustPolynomial(0, 1, new double[] {value}, 0);
  }

  /**
   * Fits y over x, at least one point.
   *
   * @param floor least residual scale, in units of y, so that perfect data do not divide by zero
   */
  static RobustPolynomial fit(double[] x, double[] y, int degree, double floor) {
    int n = x.length;
    int usable = Math.max(0, Math.min(degree, n - 1));
    double low = Arrays.stream(x).min().orElse(0);
    double high = Arrays.stream(x).max().orElse(1);
    double middle = (low + high) / 2;
    double half = Math.max((high - low) / 2, 1e-9);
    double[] weights = new double[n];
    Arrays.fill(weights, 1);
    RobustPolynomial fit = new RobustPolynomial(middle, half, new double[usable + 1], floor);
    for (int round = 0; round < ROUNDS; round++) {
      double[] solved = solve(x, y, weights, middle, half, usable);
      double[] residuals = new double[n];
      RobustPolynomial next = new RobustPolynomial(middle, half, solved, 0);
      for (int i = 0; i < n; i++) {
        residuals[i] = Math.abs(y[i] - next.at(x[i]));
      }
      double scale = Math.max(floor, MAD_TO_SIGMA * median(residuals.clone()));
      boolean settled = round > 0 && Math.abs(scale - fit.sigma) < SETTLED * scale;
      fit = new RobustPolynomial(middle, half, solved, scale);
      if (settled) {
        break;
      }
      for (int i = 0; i < n; i++) {
        weights[i] = biweight(residuals[i], scale);
      }
    }
    return fit;
  }

  private static double biweight(double residual, double scale) {
    double t = residual / (TUKEY * scale);
    return t < 1 ? (1 - t * t) * (1 - t * t) : 0;
  }

  private static double[] solve(
      double[] x, double[] y, double[] weights, double middle, double half, int degree) {
    double[][] rows = new double[x.length][degree + 1];
    double[] right = new double[x.length];
    for (int i = 0; i < x.length; i++) {
      double root = Math.sqrt(weights[i]);
      double t = (x[i] - middle) / half;
      double power = root;
      for (int d = 0; d <= degree; d++) {
        rows[i][d] = power;
        power *= t;
      }
      right[i] = root * y[i];
    }
    try {
      return new QRDecomposition(new Array2DRowRealMatrix(rows, false))
          .getSolver()
          .solve(new ArrayRealVector(right, false))
          .toArray();
    } catch (SingularMatrixException e) {
      // All weight on too few places: the mean is what is left to say.
      double[] constant = new double[degree + 1];
      constant[0] = median(y.clone());
      return constant;
    }
  }

  /** Returns the value below which the given share lies; the order of {@code values} is changed. */
  static double quantile(double[] values, double share) {
    if (values.length == 0) {
      return 0;
    }
    Arrays.sort(values);
    return values[(int) (share * (values.length - 1))];
  }

  /** Returns the median; the order of {@code values} is changed. */
  static double median(double[] values) {
    if (values.length == 0) {
      return 0;
    }
    Arrays.sort(values);
    int n = values.length;
    return n % 2 == 1 ? values[n / 2] : (values[n / 2 - 1] + values[n / 2]) / 2;
  }

  /** Returns the same curve over an x that is larger by the factor. */
  RobustPolynomial stretched(double by) {
    return new RobustPolynomial(middle * by, half * by, coefficients, sigma);
  }

  /** Returns the curve with its values, too, larger by the factor. */
  RobustPolynomial enlarged(double by) {
    double[] larger = new double[coefficients.length];
    for (int d = 0; d < larger.length; d++) {
      larger[d] = coefficients[d] * by;
    }
    return new RobustPolynomial(middle * by, half * by, larger, sigma * by);
  }

  double at(double x) {
    double t = (x - middle) / half;
    double value = 0;
    for (int d = coefficients.length - 1; d >= 0; d--) {
      value = value * t + coefficients[d];
    }
    return value;
  }

  double slopeAt(double x) {
    double t = (x - middle) / half;
    double value = 0;
    for (int d = coefficients.length - 1; d >= 1; d--) {
      value = value * t + d * coefficients[d];
    }
    return value / half;
  }

  /** Returns the robust standard deviation of the points from the curve. */
  double sigma() {
    return sigma;
  }
}
