package wickmark.core.uncertainty;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

class UncertaintyBudgetTest {

  /**
   * JCGM 100:2008, example H.2: resistance, reactance and impedance from five simultaneous readings
   * of voltage, current and phase. The means, their uncertainties and correlations are the
   * example's; expected are its results 127.732(71), 219.847(295) and 254.260(236) ohm.
   */
  @Nested
  class OfCorrelatedReadings {
    private static final double VOLT = 4.9990;
    private static final double AMPERE = 19.6610e-3;
    private static final double PHASE = 1.04446;

    @Test
    void ofImpedance() {
      double z = VOLT / AMPERE;

      assertThat(z).isCloseTo(254.260, within(0.001));
      assertThat(budget(1 / AMPERE, -z / AMPERE, 0).combined()).isCloseTo(0.236, within(0.001));
    }

    @Test
    void ofResistance() {
      double r = VOLT / AMPERE * StrictMath.cos(PHASE);
      double byPhase = -VOLT / AMPERE * StrictMath.sin(PHASE);

      assertThat(r).isCloseTo(127.732, within(0.001));
      assertThat(budget(r / VOLT, -r / AMPERE, byPhase).combined()).isCloseTo(0.071, within(0.001));
    }

    @Test
    void ofReactance() {
      double x = VOLT / AMPERE * StrictMath.sin(PHASE);
      double byPhase = VOLT / AMPERE * StrictMath.cos(PHASE);

      assertThat(x).isCloseTo(219.847, within(0.001));
      assertThat(budget(x / VOLT, -x / AMPERE, byPhase).combined()).isCloseTo(0.295, within(0.001));
    }

    @Test
    void hasSharesThatAddUpToOne() {
      double z = VOLT / AMPERE;

      double sum =
          budget(1 / AMPERE, -z / AMPERE, 0).contributions().stream()
              .mapToDouble(UncertaintyBudget.Contribution::share)
              .sum();

      assertThat(sum).isCloseTo(1, within(1e-12));
    }

    private UncertaintyBudget budget(double byVolt, double byAmpere, double byPhase) {
      return UncertaintyBudget.builder()
          .add("voltage", byVolt, 0.0032094)
          .add("current", byAmpere, 0.0094710e-3)
          .add("phase", byPhase, 0.00075206)
          .correlate(0, 1, -0.355311)
          .correlate(0, 2, 0.857609)
          .correlate(1, 2, -0.645100)
          .build();
    }
  }

  /** JCGM 100:2008, example H.1, end-gauge calibration, table H.1: combined 32 nm. */
  @Test
  void combinesTheEndGaugesContributions() {
    UncertaintyBudget gauge =
        UncertaintyBudget.builder()
            .add("calibration of the standard", 1, 25)
            .add("repeated observations", 1, 5.8)
            .add("random effects of the comparator", 1, 3.9)
            .add("systematic effects of the comparator", 1, 6.7)
            .add("difference in expansion coefficients", 50e6 * -0.1, 0.58e-6)
            .add("difference in temperatures", 50e6 * 11.5e-6 * -1, 0.029)
            .build();

    assertThat(gauge.combined()).isCloseTo(31.7, within(0.1));
    assertThat(gauge.largest().source()).isEqualTo("calibration of the standard");
  }

  @Test
  void hasNoShareWithoutUncertainty() {
    UncertaintyBudget budget = UncertaintyBudget.builder().add("nothing", 1, 0).build();

    assertThat(budget.combined()).isZero();
    assertThat(budget.largest().share()).isZero();
  }
}
