package wickmark.core.rf;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

class RetardationFactorTest {

  @ParameterizedTest(name = "{0} / {1}")
  @CsvFileSource(resources = "published-triples.csv", useHeadersInDisplayName = true)
  void ofPublishedDistancesIsThePublishedValue(
      BigDecimal spot, BigDecimal front, String rf, String source) {
    assertThat(RetardationFactor.text(spot, front)).startsWith(rf);
  }

  @ParameterizedTest
  @CsvSource({"25, 40, 0.63", "5, 40, 0.13", "113, 200, 0.57", "2.55, 8.5, 0.30", "0, 50, 0.00"})
  void isRoundedHalfUpFromTheExactQuotient(BigDecimal spot, BigDecimal front, String rf) {
    assertThat(RetardationFactor.text(spot, front)).isEqualTo(rf);
    double value = spot.doubleValue() / front.doubleValue();
    assertThat(new RetardationFactor(value, 0).text()).isEqualTo(rf);
  }

  @Test
  void belowOneIsNotPrintedAsOneWithoutAWord() {
    assertThat(new RetardationFactor(0.995, 0).text()).isEqualTo("1.00 (just below 1)");
    assertThat(RetardationFactor.text(new BigDecimal("199"), new BigDecimal("200")))
        .isEqualTo("1.00 (just below 1)");
    assertThat(new RetardationFactor(0.9996, 0.0005).textWithUncertainty())
        .isEqualTo("0.9996 ± 0.0010");
    assertThat(new RetardationFactor(1, 0).text()).isEqualTo("1.00");
  }

  @Test
  void hasNeverFewerThanTwoDecimals() {
    assertThat(new RetardationFactor(0.5634, 0.021).textWithUncertainty()).isEqualTo("0.56 ± 0.04");
    assertThat(new RetardationFactor(0.5634, 0.2).textWithUncertainty()).isEqualTo("0.56 ± 0.40");
  }

  @Test
  void refusesWhatIsNotBetweenZeroAndOne() {
    assertThatThrownBy(() -> new RetardationFactor(1.01, 0))
        .hasMessageContaining("between 0 and 1");
    assertThatThrownBy(() -> new RetardationFactor(-0.01, 0))
        .hasMessageContaining("between 0 and 1");
    assertThatThrownBy(() -> new RetardationFactor(Double.NaN, 0))
        .hasMessageContaining("between 0 and 1");
    assertThatThrownBy(() -> RetardationFactor.text(new BigDecimal("55"), new BigDecimal("33")))
        .hasMessageContaining("55 / 33");
  }
}
