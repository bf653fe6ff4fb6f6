package wickmark.core.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class GrubbsTestTest {

  // e-Handbook of Statistical Methods, 1.3.5.17.1: G = 2.4687, one-sided 5 % value 2.032, outlier.
  @Test
  void findsTheHandbooksOutlier() {
    GrubbsTest test =
        GrubbsTest.of(List.of(199.31, 199.53, 200.19, 200.82, 201.92, 201.95, 202.18, 245.57))
            .orElseThrow();

    assertThat(test.statistic()).isCloseTo(2.4687, within(1e-4));
    assertThat(test.index()).isEqualTo(7);
    assertThat(test.isOutlier()).isTrue();
    assertThat(GrubbsTest.critical(8, 0.05)).isCloseTo(2.032, within(5e-4));
  }

  // Published one-sided five-percent column for n = 3 to 10.
  @ParameterizedTest
  @CsvSource({
    "3, 1.15",
    "4, 1.46",
    "5, 1.67",
    "6, 1.82",
    "7, 1.94",
    "8, 2.03",
    "9, 2.11",
    "10, 2.18"
  })
  void hasThePublishedCriticalValues(int n, double critical) {
    assertThat(GrubbsTest.critical(n, 0.05)).isCloseTo(critical, within(0.006));
  }

  @Test
  void doesNotApplyToTooFewOrEqualValues() {
    assertThat(GrubbsTest.of(List.of(1.0, 9.0))).isEmpty();
    assertThat(GrubbsTest.of(List.of(2.0, 2.0, 2.0))).isEmpty();
  }

  @Test
  void leavesGoodValuesAlone() {
    assertThat(GrubbsTest.of(List.of(33.1, 33.0, 32.8, 33.4, 33.2)).orElseThrow().isOutlier())
        .isFalse();
  }
}
