package wickmark.core.match;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import wickmark.core.colour.DyeAbsorbance;

class DyeMixtureTest {
  private static final DyeAbsorbance BLUE = new DyeAbsorbance(0.5, 0.3, 0.0);
  private static final DyeAbsorbance YELLOW = new DyeAbsorbance(0.0, 0.1, 0.7);

  // Beer and Lambert: absorbances of a mixture add up.
  @Test
  void findsThePartsOfASum() {
    DyeAbsorbance green = new DyeAbsorbance(0.25, 0.25, 0.7);

    DyeMixture mixture = DyeMixture.of(green, BLUE, YELLOW);

    assertThat(mixture.firstPart()).isCloseTo(0.4 / 1.2, within(1e-9));
    assertThat(mixture.secondPart()).isCloseTo(0.8 / 1.2, within(1e-9));
    assertThat(mixture.sum().green()).isCloseTo(0.25, within(1e-9));
  }

  @Test
  void takesNothingAway() {
    DyeMixture mixture = DyeMixture.of(new DyeAbsorbance(0.5, 0.2, -0.1), BLUE, YELLOW);

    assertThat(mixture.firstPart()).isEqualTo(1);
    assertThat(mixture.secondPart()).isZero();
  }

  @Test
  void copesWithTheSameDyeTwice() {
    assertThat(DyeMixture.of(BLUE, BLUE, BLUE.atStrength(0.2)).sum().red())
        .isCloseTo(0.5, within(1e-9));
  }
}
