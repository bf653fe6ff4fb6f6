package wickmark.testdata.colour;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

class CielabTest {

  /** Values computed from the definitions; see the table's own head for sources. */
  @ParameterizedTest
  @CsvFileSource(files = "reference/srgb-cielab.csv", numLinesToSkip = 1)
  void agreesWithTheReferenceTable(
      String name, int r, int g, int b, double lightness, double a, double bStar) {
    Cielab colour = Cielab.of(LinearRgb.ofSrgb(r, g, b));

    assertThat(colour.lightness()).as(name).isCloseTo(lightness, within(0.03));
    assertThat(colour.a()).as(name).isCloseTo(a, within(0.03));
    assertThat(colour.b()).as(name).isCloseTo(bStar, within(0.03));
  }
}
