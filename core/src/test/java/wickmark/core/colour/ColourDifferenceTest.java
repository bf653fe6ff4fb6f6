package wickmark.core.colour;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

class ColourDifferenceTest {

  @ParameterizedTest(name = "pair {0}")
  @CsvFileSource(resources = "ciede2000-pairs.csv", useHeadersInDisplayName = true)
  void agreesWithThePublishedPairs(
      int pair, double l1, double a1, double b1, double l2, double a2, double b2, double expected) {
    LabColour first = new LabColour(l1, a1, b1);
    LabColour second = new LabColour(l2, a2, b2);

    assertThat(ColourDifference.between(first, second).value()).isCloseTo(expected, within(1e-4));
    assertThat(ColourDifference.between(second, first).value()).isCloseTo(expected, within(1e-4));
  }

  @Test
  void isZeroForTheSameColour() {
    LabColour colour = new LabColour(61.3, -12.4, 33.1);

    assertThat(ColourDifference.between(colour, colour).value()).isZero();
  }
}
