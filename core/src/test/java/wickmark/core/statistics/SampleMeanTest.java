package wickmark.core.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

class SampleMeanTest {

  // Class table of a school experiment: red 0.89, 0.99, 0.97 on three benches: SD 0.053. The
  // interval is t(2, 0.975) = 4.303 standard errors wide.
  @Test
  void ofThreeBenches() {
    SampleMean red = SampleMean.of(List.of(0.89, 0.99, 0.97));

    assertThat(red.mean()).isCloseTo(0.95, within(1e-9));
    assertThat(red.standardDeviation().orElseThrow()).isCloseTo(0.0529, within(1e-4));
    assertThat(red.confidence().orElseThrow().high())
        .isCloseTo(0.95 + 4.303 * 0.0529 / Math.sqrt(3), within(1e-3));
  }

  @Test
  void ofOneValueHasNoSpread() {
    SampleMean one = SampleMean.of(List.of(0.5));

    assertThat(one.standardDeviation()).isEmpty();
    assertThat(one.confidence()).isEmpty();
  }
}
