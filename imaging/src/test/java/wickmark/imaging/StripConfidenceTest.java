package wickmark.imaging;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class StripConfidenceTest {
  /**
   * Levels of confidence of a normal distribution by coverage factor: JCGM 100:2008 (GUM), table
   * G.1.
   */
  @Test
  void theChanceOfARightScaleIsThatOfANormalError() {
    assertThat(StripConfidence.within(0.01, 0.01)).isCloseTo(0.6827, within(5e-5));
    assertThat(StripConfidence.within(0.01, 0.005)).isCloseTo(0.9545, within(5e-5));
    assertThat(StripConfidence.within(0.01, 0.01 / 2.576)).isCloseTo(0.99, within(5e-5));
    assertThat(StripConfidence.within(0.01, 0)).isEqualTo(1);
  }
}
