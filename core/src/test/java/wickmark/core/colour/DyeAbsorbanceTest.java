package wickmark.core.colour;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class DyeAbsorbanceTest {
  private static final DyeAbsorbance BLUE = new DyeAbsorbance(0.8, 0.4, 0.05);
  private static final DyeAbsorbance VIOLET = new DyeAbsorbance(0.6, 0.8, 0.1);

  @Test
  void ofAColourIsTheLogarithmOfTheLightLeft() {
    DyeAbsorbance dye = DyeAbsorbance.of(LabColour.of(new LinearRgb(0.1, 0.5, 1)));

    assertThat(dye.red()).isCloseTo(1, within(1e-5));
    assertThat(dye.green()).isCloseTo(0.30103, within(1e-5));
    assertThat(dye.blue()).isCloseTo(0, within(1e-5));
  }

  @Test
  void tellsAPaleSpotOfTheSameDyeFromAnotherDye() {
    LabColour strong = BLUE.toLab();
    LabColour pale = BLUE.atStrength(0.1).toLab();
    LabColour paleViolet = VIOLET.atStrength(0.1).toLab();

    assertThat(ColourDifference.between(strong, pale).value()).isGreaterThan(20);
    assertThat(DyeAbsorbance.differenceAtLikeStrength(strong, pale).value()).isLessThan(0.01);
    assertThat(DyeAbsorbance.differenceAtLikeStrength(strong, paleViolet).value()).isGreaterThan(5);
  }

  @Test
  void isGreyWhereAllChannelsAbsorbAlike() {
    assertThat(new DyeAbsorbance(0.3, 0.3, 0.3).greyness()).isEqualTo(1);
    assertThat(new DyeAbsorbance(0, 0.3, 0.5).greyness()).isZero();
    assertThat(new DyeAbsorbance(-0.01, 0.3, 0.5).greyness()).isZero();
  }

  @Test
  void comparesBlankPaperAsItIs() {
    LabColour blank = new LabColour(100, 0, 0);

    assertThat(DyeAbsorbance.differenceAtLikeStrength(blank, BLUE.toLab()))
        .isEqualTo(ColourDifference.between(blank, BLUE.toLab()));
  }

  @Test
  void refusesToStrengthenBlankPaper() {
    assertThatThrownBy(() -> new DyeAbsorbance(0, -0.01, 0).atStrength(1))
        .hasMessageContaining("blank paper");
  }
}
