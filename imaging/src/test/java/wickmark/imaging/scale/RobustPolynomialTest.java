package wickmark.imaging.scale;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class RobustPolynomialTest {
  private static final double[] X = {0, 1, 2, 3, 4, 5, 6, 7, 8, 9};

  @Test
  void goesThroughAParabolaInSpiteOfAWildPoint() {
    double[] y = new double[X.length];
    for (int i = 0; i < y.length; i++) {
      y[i] = 3 - 2 * X[i] + 0.5 * X[i] * X[i];
    }
    y[6] += 40;

    RobustPolynomial fit = RobustPolynomial.fit(X, y, 2, 1e-3);

    assertThat(fit.at(6)).isCloseTo(9, within(1e-6));
    assertThat(fit.slopeAt(4)).isCloseTo(2, within(1e-6));
  }

  @Test
  void keepsItsShapeWhenEnlarged() {
    RobustPolynomial fit = RobustPolynomial.fit(X, X, 1, 1e-3);

    assertThat(fit.enlarged(2).at(8)).isCloseTo(8, within(1e-9));
    assertThat(fit.stretched(2).at(8)).isCloseTo(4, within(1e-9));
  }
}
