package wickmark.core.colour;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ColourNameTest {

  // CSS Color Module Level 4 (2022), section 6.1, named colours: the word is in the name.
  // Left out are the screen's own pure blue, violet and magenta, which no dye on paper reaches.
  @ParameterizedTest(name = "{0}")
  @CsvSource({
    "red, 255, 0, 0, RED",
    "firebrick, 178, 34, 34, RED",
    "darkorange, 255, 140, 0, ORANGE",
    "orange, 255, 165, 0, ORANGE",
    "saddlebrown, 139, 69, 19, BROWN",
    "gold, 255, 215, 0, YELLOW",
    "yellow, 255, 255, 0, YELLOW",
    "olive, 128, 128, 0, OLIVE",
    "yellowgreen, 154, 205, 50, YELLOW_GREEN",
    "green, 0, 128, 0, GREEN",
    "limegreen, 50, 205, 50, GREEN",
    "turquoise, 64, 224, 208, TURQUOISE",
    "darkturquoise, 0, 206, 209, TURQUOISE",
    "dodgerblue, 30, 144, 255, BLUE",
    "royalblue, 65, 105, 225, BLUE",
    "steelblue, 70, 130, 180, BLUE",
    "purple, 128, 0, 128, PURPLE",
    "hotpink, 255, 105, 180, PINK",
    "grey, 128, 128, 128, GREY",
    "dimgrey, 105, 105, 105, GREY",
    "black, 0, 0, 0, BLACK",
    "white, 255, 255, 255, WHITE"
  })
  void isThePlainWord(String name, int red, int green, int blue, ColourName expected) {
    assertThat(ColourName.of(LabColour.of(LinearRgb.ofSrgb8(red, green, blue))))
        .isEqualTo(expected);
  }

  // Two dyes as printers know them: process magenta and process cyan let through all but a third.
  @ParameterizedTest
  @CsvSource({"0.02, 0.3, 0.1, MAGENTA", "0.3, 0.05, 0.03, TURQUOISE", "0.02, 0.03, 0.3, YELLOW"})
  void namesTheThreeDyesOfPrinting(double red, double green, double blue, ColourName expected) {
    assertThat(ColourName.of(new DyeAbsorbance(red, green, blue).toLab())).isEqualTo(expected);
  }

  @ParameterizedTest
  @CsvSource({"0.07", "0.2", "0.6", "1.2"})
  void doesNotDependOnTheAmountOfDye(double strength) {
    assertThat(nameOf(0.04, 1, 0.88, strength)).isEqualTo(ColourName.RED);
    assertThat(nameOf(0.02, 0.42, 1, strength)).isEqualTo(ColourName.ORANGE);
    assertThat(nameOf(0.42, 0.72, 1, strength)).isEqualTo(ColourName.BROWN);
    assertThat(nameOf(0.01, 0.07, 1, strength)).isEqualTo(ColourName.YELLOW);
    assertThat(nameOf(1, 0.58, 0.1, strength)).isEqualTo(ColourName.BLUE);
  }

  @Test
  void callsAGreyThatIsNearlyWithoutLightBlack() {
    assertThat(nameOf(1, 1, 1, 0.3)).isEqualTo(ColourName.GREY);
    assertThat(nameOf(1, 1, 1, 1.5)).isEqualTo(ColourName.BLACK);
  }

  @Test
  void isWrittenInLowerCase() {
    assertThat(ColourName.YELLOW_GREEN.word()).isEqualTo("yellow-green");
  }

  private static ColourName nameOf(double red, double green, double blue, double strength) {
    return ColourName.of(new DyeAbsorbance(red, green, blue).atStrength(strength).toLab());
  }
}
