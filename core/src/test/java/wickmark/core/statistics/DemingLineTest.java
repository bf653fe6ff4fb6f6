package wickmark.core.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class DemingLineTest {

  // Ten points of 1901 (On lines and planes of closest fit, Philosophical Magazine 2(11), 559-572):
  // printed y = 5.784 - 0.5456 x (from memory); equal errors.
  @Test
  void isTheLineOfClosestFit() {
    DemingLine line =
        DemingLine.through(
                points(
                    new double[] {0, 0.9, 1.8, 2.6, 3.3, 4.4, 5.2, 6.1, 6.5, 7.4},
                    new double[] {5.9, 5.4, 4.4, 4.6, 3.5, 3.7, 2.8, 2.8, 2.4, 1.5}),
                1)
            .orElseThrow();

    assertThat(line.intercept()).isCloseTo(5.7840, within(1e-4));
    assertThat(line.slope()).isCloseTo(-0.54556, within(1e-5));
  }

  // Manual of a statistics package, chapter 303, example 1; variances 0.008 in y and 0.032 in x.
  @Test
  void weighsTheErrorsOfBothAxes() {
    double[] x = {7, 8.3, 10.5, 9, 5.1, 8.2, 10.2, 10.3, 7.1, 5.9};
    double[] y = {7.9, 8.2, 9.6, 9, 6.5, 7.3, 10.2, 10.6, 6.3, 5.2};

    DemingLine line = DemingLine.through(points(x, y), 0.008 / 0.032).orElseThrow();

    assertThat(line.intercept()).isCloseTo(-0.08974, within(1e-5));
    assertThat(line.slope()).isCloseTo(1.00119, within(1e-5));
    assertThat(line.slopeConfidence().low()).isLessThan(1);
    assertThat(line.slopeConfidence().high()).isGreaterThan(1.1);
  }

  @Test
  void isCertainWhereThePointsLieOnALine() {
    DemingLine line =
        DemingLine.through(points(new double[] {1, 2, 3, 5}, new double[] {3, 5, 7, 11}), 1)
            .orElseThrow();

    assertThat(line.intercept()).isCloseTo(1, within(1e-9));
    assertThat(line.slopeConfidence().high()).isCloseTo(2, within(1e-6));
  }

  @Test
  void needsThreePointsWithATrend() {
    assertThatThrownBy(() -> DemingLine.through(List.of(), 1)).hasMessageContaining("three points");
    assertThat(DemingLine.through(points(new double[] {1, 2, 3}, new double[] {4, 4, 4}), 1))
        .isEmpty();
    assertThat(DemingLine.through(points(new double[] {1, 1, 3}, new double[] {2, 5, 8}), 1))
        .isEmpty();
  }

  private static List<DemingLine.Point> points(double[] x, double[] y) {
    List<DemingLine.Point> points = new ArrayList<>();
    for (int i = 0; i < x.length; i++) {
      points.add(new DemingLine.Point(x[i], y[i]));
    }
    return points;
  }
}
