package wickmark.core.colour;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Words for blank paper, by colours that the CSS Color Module Level 4 (6.1) names so. */
class PaperTintTest {
  @ParameterizedTest
  @CsvSource({
    "255, 255, 255, white",
    "245, 245, 245, white", // whitesmoke
    "255, 250, 250, white", // snow
    "250, 240, 230, cream", // linen
    "253, 245, 230, cream", // oldlace
    "255, 248, 220, cream", // cornsilk
    "173, 216, 230, tinted turquoise", // lightblue
    "144, 238, 144, tinted green" // lightgreen
  })
  void wordsThatPeopleUse(int red, int green, int blue, String word) {
    assertThat(PaperTint.of(LabColour.of(LinearRgb.ofSrgb8(red, green, blue)))).isEqualTo(word);
  }
}
