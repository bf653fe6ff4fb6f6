package wickmark.core.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class LimitsOfAgreementTest {

  // Lancet 327 (8476), 1986, 307-310, table 1, first readings of both meters (l/min).
  private static final double[] LARGE = {
    494, 395, 516, 434, 476, 557, 413, 442, 650, 433, 417, 656, 267, 478, 178, 423, 427
  };
  private static final double[] MINI = {
    512, 430, 520, 428, 500, 600, 364, 380, 658, 445, 432, 626, 260, 477, 259, 350, 451
  };

  private final LimitsOfAgreement agreement = LimitsOfAgreement.of(differences());

  @Test
  void hasThePublishedMeanAndSpread() {
    assertThat(agreement.meanDifference()).isCloseTo(-2.1, within(0.05));
    assertThat(agreement.standardDeviation()).isCloseTo(38.8, within(0.05));
  }

  // The article uses 2 instead of 1.96 standard deviations and rounds on the way: -79.7 and 75.5.
  @Test
  void hasLimitsAt196Deviations() {
    assertThat(agreement.lower().value()).isCloseTo(-78.10, within(0.01));
    assertThat(agreement.upper().value()).isCloseTo(73.86, within(0.01));
  }

  // Recomputed from the table with t(16) = 2.12; the article's own, with 2 deviations, are -22.0 to
  // 17.8 for the mean and, from memory, -114.3 to -45.1 and 40.9 to 110.1 for the limits.
  @Test
  void hasConfidenceIntervals() {
    assertThat(agreement.meanConfidence().low()).isCloseTo(-22.05, within(0.01));
    assertThat(agreement.meanConfidence().high()).isCloseTo(17.81, within(0.01));
    double half = 2.1199 * 16.285;
    assertThat(agreement.lower().confidence().low()).isCloseTo(-78.10 - half, within(0.02));
    assertThat(agreement.upper().confidence().high()).isCloseTo(73.86 + half, within(0.02));
  }

  @Test
  void needsTwoDifferences() {
    assertThatThrownBy(() -> LimitsOfAgreement.of(List.of(1.0)))
        .hasMessageContaining("at least two");
  }

  private static List<Double> differences() {
    List<Double> differences = new ArrayList<>();
    for (int i = 0; i < LARGE.length; i++) {
      differences.add(LARGE[i] - MINI[i]);
    }
    return differences;
  }
}
