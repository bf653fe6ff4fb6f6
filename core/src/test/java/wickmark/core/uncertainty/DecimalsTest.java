package wickmark.core.uncertainty;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DecimalsTest {

  @ParameterizedTest
  @CsvSource({
    "0.625, 0.63",
    "0.125, 0.13",
    "0.565, 0.57",
    "0.995, 1.00",
    "0.475, 0.48",
    "0.975, 0.98",
    "0.525, 0.53",
    "-0.001, 0.00",
    "-0.005, -0.01",
    "12345678.5, 12345678.50"
  })
  void roundHalfUpOnWhatTheNumberShows(double value, String text) {
    assertThat(Decimals.text(value, 2)).isEqualTo(text);
  }

  @ParameterizedTest
  @CsvSource({
    "0.0031, 3",
    "0.0029, 4",
    "0.15, 2",
    "0.096, 2",
    "0.0996, 2",
    "0.3, 1",
    "2.4, 1",
    "4.4, 0",
    "38, 0",
    "0, 6"
  })
  void areAsManyAsTheUncertaintyAllows(double uncertainty, int decimals) {
    assertThat(Decimals.forUncertainty(uncertainty)).isEqualTo(decimals);
  }

  @Test
  void matchInValueAndUncertainty() {
    assertThat(new Measured(34.6172, 0.0751).text()).isEqualTo("34.62 ± 0.15");
    assertThat(new Measured(34.6172, 0.2).text()).isEqualTo("34.6 ± 0.4");
    assertThat(new Measured(0.56349, 0.0021).text()).isEqualTo("0.563 ± 0.004");
  }
}
