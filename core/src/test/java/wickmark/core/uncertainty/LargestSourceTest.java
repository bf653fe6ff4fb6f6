package wickmark.core.uncertainty;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class LargestSourceTest {

  @Test
  void hasTheShareOfTheVarianceNotOfTheUncertainty() {
    LargestSource largest = LargestSource.of(List.of(budget(0.3, 0.4))).orElseThrow();

    // 4² / (3² + 4²)
    assertThat(largest.source()).isEqualTo("right");
    assertThat(largest.share()).isCloseTo(0.64, within(1e-12));
  }

  @Test
  void isThatOfTheTypicalBudgetNotOfAnOddOne() {
    List<UncertaintyBudget> budgets =
        List.of(budget(0.4, 0.3), budget(0.4, 0.3), budget(0.4, 0.3), budget(0.4, 0.3));

    assertThat(LargestSource.of(with(budgets, budget(0, 9))).orElseThrow())
        .isEqualTo(LargestSource.of(budgets).orElseThrow());
  }

  @Test
  void standsOutFromFortyPerCentOn() {
    assertThat(new LargestSource("a", 0.4).standsOut()).isTrue();
    assertThat(new LargestSource("a", 0.3999).standsOut()).isFalse();
  }

  @Test
  void aSourceThatABudgetDoesNotNameHasNoShareInIt() {
    UncertaintyBudget other = UncertaintyBudget.builder().add("third", 1, 1).build();

    assertThat(LargestSource.of(List.of(other, other, budget(1, 0))).orElseThrow())
        .isEqualTo(new LargestSource("third", 1));
  }

  @Test
  void ofNothingUncertainThereIsNone() {
    assertThat(LargestSource.of(List.of())).isEmpty();
    assertThat(LargestSource.of(List.of(budget(0, 0)))).isEmpty();
  }

  private static List<UncertaintyBudget> with(
      List<UncertaintyBudget> budgets, UncertaintyBudget last) {
    return Stream.concat(budgets.stream(), Stream.of(last)).toList();
  }

  private static UncertaintyBudget budget(double left, double right) {
    return UncertaintyBudget.builder().add("left", 1, left).add("right", -1, right).build();
  }
}
