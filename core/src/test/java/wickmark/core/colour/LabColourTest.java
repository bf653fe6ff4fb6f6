package wickmark.core.colour;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LabColourTest {

  // Computed independently from IEC 61966-2-1:1999 (7-decimal matrix) and CIE 15:2004; with the
  // standard's own 4-decimal matrix the results move by up to 0.02.
  @ParameterizedTest(name = "{0}")
  @CsvSource({
    "white, 255, 255, 255, 100.00, 0.00, 0.00",
    "black, 0, 0, 0, 0.00, 0.00, 0.00",
    "grey, 128, 128, 128, 53.59, 0.00, 0.00",
    "grey on the linear foot, 10, 10, 10, 2.74, 0.00, 0.00",
    "red, 255, 0, 0, 53.24, 80.09, 67.20",
    "orange, 255, 128, 0, 67.05, 42.83, 74.02",
    "brown, 150, 75, 0, 40.44, 27.50, 50.14",
    "yellow, 255, 255, 0, 97.14, -21.55, 94.48",
    "green, 0, 255, 0, 87.73, -86.18, 83.18",
    "cyan, 0, 255, 255, 91.11, -48.09, -14.13",
    "blue, 0, 0, 255, 32.30, 79.19, -107.86",
    "purple, 128, 0, 128, 29.78, 58.93, -36.49",
    "magenta, 255, 0, 255, 60.32, 98.23, -60.82",
    "pink, 255, 192, 203, 83.59, 24.14, 3.33",
    "cream paper, 245, 240, 225, 94.81, -0.86, 7.84"
  })
  void isTheColourOfAnSrgbValue(
      String name, int red, int green, int blue, double l, double a, double b) {
    LabColour colour = LabColour.of(LinearRgb.ofSrgb8(red, green, blue));

    assertThat(colour.lightness()).isCloseTo(l, within(0.03));
    assertThat(colour.a()).isCloseTo(a, within(0.03));
    assertThat(colour.b()).isCloseTo(b, within(0.03));
  }

  @Test
  void hasHueAndChroma() {
    LabColour orange = LabColour.of(LinearRgb.ofSrgb8(255, 128, 0));

    assertThat(orange.chroma()).isCloseTo(85.51, within(0.03));
    assertThat(orange.hueDegrees()).isCloseTo(59.9, within(0.1));
  }

  @Test
  void goesBackToTheLightItCameFrom() {
    LinearRgb light = new LinearRgb(0.31, 0.72, 0.05);

    LinearRgb back = LabColour.of(light).toLinearRgb();

    assertThat(back.red()).isCloseTo(0.31, within(1e-6));
    assertThat(back.green()).isCloseTo(0.72, within(1e-6));
    assertThat(back.blue()).isCloseTo(0.05, within(1e-6));
  }

  @Test
  void callsThePaperWhiteWhateverItsTint() {
    LinearRgb cream = LinearRgb.ofSrgb8(245, 240, 225);

    LabColour paper = LabColour.of(cream, cream);

    assertThat(paper.lightness()).isCloseTo(100, within(1e-3));
    assertThat(paper.chroma()).isLessThan(0.01);
  }

  @Test
  void doesNotDependOnTheLightOnThePaper() {
    LinearRgb paper = new LinearRgb(0.8, 0.75, 0.6);
    LinearRgb spot = new LinearRgb(0.7, 0.3, 0.2);
    LinearRgb dimPaper = new LinearRgb(0.4, 0.375, 0.3);
    LinearRgb dimSpot = new LinearRgb(0.35, 0.15, 0.1);

    assertThat(LabColour.of(dimSpot, dimPaper)).isEqualTo(LabColour.of(spot, paper));
  }

  @Test
  void refusesAWhiteWithoutLight() {
    assertThatThrownBy(() -> LabColour.of(new LinearRgb(1, 1, 1), new LinearRgb(1, 0, 1)))
        .hasMessageContaining("light in every channel");
  }

  // IEC 61966-2-1:1999, the two branches and the value at their break.
  @ParameterizedTest
  @CsvSource({"128, 0.215861", "10, 0.003035", "11, 0.003347", "255, 1", "0, 0"})
  void decodesPictureValues(int value, double light) {
    assertThat(SrgbTransfer.decode(value / 255.0)).isCloseTo(light, within(1e-6));
    assertThat(SrgbTransfer.encode(SrgbTransfer.decode(value / 255.0)))
        .isCloseTo(value / 255.0, within(1e-6));
  }

  @Test
  void encodesMiddleGrey() {
    assertThat(SrgbTransfer.encode(0.18)).isCloseTo(0.461356, within(1e-6));
  }
}
