package wickmark.core.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

class RobustMeanTest {

  // Algorithm A of ISO 13528:2015, C.3, iterated independently on seven values whose plain mean
  // 5.79
  // and standard deviation 1.94 are pulled by one of them.
  @Test
  void isHardlyMovedByAnOutlier() {
    RobustMean robust = RobustMean.of(List.of(4.5, 4.9, 5.6, 4.2, 6.2, 5.2, 9.9));

    assertThat(robust.mean()).isCloseTo(5.3865, within(1e-4));
    assertThat(robust.standardDeviation()).isCloseTo(1.1460, within(1e-4));
  }

  @Test
  void hasASpreadThoughMostValuesAreEqual() {
    RobustMean robust = RobustMean.of(List.of(33.0, 33.0, 33.0, 34.0, 32.0));

    assertThat(robust.mean()).isCloseTo(33, within(1e-9));
    assertThat(robust.standardDeviation()).isCloseTo(0.7, within(0.15));
  }

  @Test
  void ofOneValueIsThatValue() {
    assertThat(RobustMean.of(List.of(7.0))).isEqualTo(new RobustMean(1, 7, 0));
  }
}
