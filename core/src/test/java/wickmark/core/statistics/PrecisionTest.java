package wickmark.core.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

class PrecisionTest {

  // ISO 5725-2:1994, annex B.1, sulfur in coal, levels 1 to 3: m, s_r and s_R. Data and results
  // from
  // memory; they close on each other.
  @Test
  void isThatOfTheCoalExperiment() {
    Precision first =
        Precision.of(
                List.of(
                    List.of(0.71, 0.71, 0.70, 0.71),
                    List.of(0.69, 0.67, 0.68),
                    List.of(0.66, 0.65, 0.69),
                    List.of(0.67, 0.65, 0.66),
                    List.of(0.70, 0.69, 0.66, 0.71, 0.69),
                    List.of(0.73, 0.74, 0.73),
                    List.of(0.71, 0.71, 0.69),
                    List.of(0.70, 0.65, 0.68)))
            .orElseThrow();

    assertThat(first.mean()).isCloseTo(0.690, within(5e-4));
    assertThat(first.repeatability()).isCloseTo(0.015, within(5e-4));
    assertThat(first.reproducibility()).isCloseTo(0.026, within(5e-4));
    assertThat(Precision.limit(first.repeatability())).isCloseTo(2.8 * 0.0151, within(1e-3));
  }

  @Test
  void isThatOfTheSecondLevelToo() {
    Precision second =
        Precision.of(
                List.of(
                    List.of(1.20, 1.18, 1.23, 1.21),
                    List.of(1.22, 1.21, 1.22),
                    List.of(1.28, 1.31, 1.30),
                    List.of(1.23, 1.18, 1.20),
                    List.of(1.31, 1.22, 1.22, 1.24),
                    List.of(1.39, 1.36, 1.37),
                    List.of(1.20, 1.26, 1.26),
                    List.of(1.24, 1.22, 1.30)))
            .orElseThrow();

    assertThat(second.mean()).isCloseTo(1.252, within(1e-3));
    assertThat(second.repeatability()).isCloseTo(0.029, within(1e-3));
    assertThat(second.reproducibility()).isCloseTo(0.061, within(1e-3));
  }

  @Test
  void isNotKnownWhereNothingRepeats() {
    assertThat(Precision.of(List.of(List.of(1.0), List.of(2.0)))).isEmpty();
    assertThat(Precision.of(List.of(List.of(1.0, 2.0)))).isEmpty();
    assertThat(Precision.pooledDeviation(List.of(List.of(1.0), List.of(2.0)))).isEmpty();
  }

  // JCGM 100:2008, H.3.6 and common practice: variances are averaged by their degrees of freedom.
  @Test
  void poolsDeviations() {
    assertThat(
            Precision.pooledDeviation(List.of(List.of(1.0, 3.0), List.of(5.0, 5.0), List.of(9.0))))
        .hasValueSatisfying(s -> assertThat(s).isCloseTo(1, within(1e-12)));
  }
}
