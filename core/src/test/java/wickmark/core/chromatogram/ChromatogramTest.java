package wickmark.core.chromatogram;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static wickmark.core.chromatogram.StripEvidences.EXACT;
import static wickmark.core.chromatogram.StripEvidences.grey;
import static wickmark.core.chromatogram.StripEvidences.lane;
import static wickmark.core.chromatogram.StripEvidences.spot;
import static wickmark.core.chromatogram.StripEvidences.strip;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wickmark.core.uncertainty.UncertaintyBudget;

class ChromatogramTest {

  @Test
  void givesDistanceFrontAndRf() {
    Lane lane = measure(strip(EXACT, lane(0, spot(53, 0))));

    assertThat(lane.frontDistance().value()).isEqualTo(60);
    assertThat(lane.spots().get(0).distances().centroid().value()).isEqualTo(33);
    assertThat(lane.spots().get(0).rf().value()).isCloseTo(0.55, within(1e-12));
  }

  @Test
  void countsSpotsFromTheFrontDown() {
    Lane lane = measure(strip(EXACT, lane(0, spot(30, 0), spot(70, 0), spot(50, 0))));

    assertThat(lane.spots()).extracting(Spot::number).containsExactly(1, 2, 3);
    assertThat(lane.spots())
        .extracting(s -> s.distances().centroid().value())
        .containsExactly(50.0, 30.0, 10.0);
  }

  @Nested
  class Uncertainty {

    // All three places with the 0.5/√3 mm of one ruler reading (JCGM 100:2008, 4.3.7), front
    // distance 60 mm: computed from the law of propagation with the baseline shared.
    @ParameterizedTest
    @CsvSource({"0.1, 0.0065", "0.3, 0.0060", "0.5, 0.0059", "0.7, 0.0060", "0.9, 0.0065"})
    void keepsTheBaselineThatBothDistancesShare(double rf, double expected) {
      double reading = 0.5 / Math.sqrt(3);

      Spot spot = measureSpot(strip(EXACT, lane(reading, spot(20 + 60 * rf, reading))));

      assertThat(spot.rf().standardUncertainty()).isCloseTo(expected, within(5e-5));
    }

    // JCGM 101:2008: the distribution of the result by drawing the inputs.
    @Test
    void isTheSpreadOfDrawnInputs() {
      Random random = new Random(20260517);
      int draws = 200_000;
      double sum = 0;
      double squares = 0;
      for (int i = 0; i < draws; i++) {
        double b = 20 + 0.2 * random.nextGaussian();
        double f = 80 + 0.5 * random.nextGaussian();
        double s = 62 + 0.3 * random.nextGaussian();
        double distance = (s - b) * (1 + 0.01 * random.nextGaussian() * (1 - (s - b) / (f - b)));
        double rf = distance / (f - b);
        sum += rf;
        squares += rf * rf;
      }
      double spread = Math.sqrt(squares / draws - sum / draws * sum / draws);

      LaneEvidence lane =
          new LaneEvidence(
              "A",
              LaneRole.REFERENCE,
              new Place(20, 0.2),
              new Place(80, 0.5),
              List.of(spot(62, 0.3)));
      Spot spot = measureSpot(strip(new StripEvidence.SharedUncertainties(0.005, 0.01, 0), lane));

      assertThat(spot.rf().standardUncertainty()).isCloseTo(spread, within(0.01 * spread));
    }

    @Test
    void ofRfDoesNotKnowTheScale() {
      LaneEvidence lane = lane(0.1, spot(50, 0.1));
      Spot exact = measureSpot(strip(EXACT, lane));
      Spot rough = measureSpot(strip(new StripEvidence.SharedUncertainties(0.02, 0, 0), lane));

      assertThat(rough.rf()).isEqualTo(exact.rf());
      assertThat(rough.distances().centroid().standardUncertainty())
          .isCloseTo(Math.sqrt(0.02 + 0.36), within(1e-9));
      assertThat(rough.distanceBudget().largest().source()).isEqualTo("the scale");
    }

    @Test
    void ofPaperThatIsNotFlatVanishesAtBothLines() {
      StripEvidence.SharedUncertainties bent = new StripEvidence.SharedUncertainties(0, 0, 0.6);

      Lane lane = measure(strip(bent, lane(0, spot(80, 0), spot(50, 0), spot(20, 0))));

      assertThat(lane.spots())
          .extracting(s -> s.rf().standardUncertainty())
          .containsExactly(0.0, 0.01, 0.0);
    }

    @Test
    void hasABudgetWhoseSharesAddUpToOne() {
      Spot spot =
          measureSpot(
              strip(
                  new StripEvidence.SharedUncertainties(0.01, 0.004, 0.2),
                  lane(0.2, spot(65, 0.1))));

      assertThat(spot.rfBudget().contributions()).hasSize(5);
      assertThat(
              spot.rfBudget().contributions().stream()
                  .mapToDouble(UncertaintyBudget.Contribution::share)
                  .sum())
          .isCloseTo(1, within(1e-12));
      assertThat(spot.rfBudget().combined()).isEqualTo(spot.rf().standardUncertainty());
    }
  }

  @Nested
  class BeyondALine {

    @Test
    void byLessThanItsUncertaintyIsPutOnTheFrontWithACaution() {
      Chromatogram strip = chromatogram(strip(EXACT, lane(0.1, spot(80.2, 0.1))));

      assertThat(strip.lanes().get(0).spots().get(0).rf().value()).isEqualTo(1);
      assertThat(strip.cautions())
          .extracting(Caution::kind)
          .containsExactly(Caution.Kind.SPOT_PUT_ON_FRONT);
      assertThat(strip.cautions().get(0).message()).contains("Lane A, spot 1", "0.2 mm");
    }

    @Test
    void byMoreThanItsUncertaintyIsSaidToBeWrong() {
      Chromatogram strip = chromatogram(strip(EXACT, lane(0.1, spot(82, 0.1))));

      assertThat(strip.cautions())
          .extracting(Caution::kind)
          .containsExactly(Caution.Kind.SPOT_BEYOND_FRONT);
    }

    @Test
    void entirelyIsLeftOut() {
      Chromatogram strip = chromatogram(strip(EXACT, lane(0.1, spot(90, 0.1), spot(12, 0.1))));

      assertThat(strip.lanes().get(0).spots()).isEmpty();
      assertThat(strip.lanes().get(0).leftOut()).containsExactly(0, 1);
      assertThat(strip.cautions())
          .extracting(Caution::message)
          .satisfiesExactly(
              front -> assertThat(front).contains("10.0 mm beyond the solvent front"),
              base -> assertThat(base).contains("8.0 mm below the baseline"));
    }

    @Test
    void isPassedOverInSilenceIfItIsGreyLikePencil() {
      Chromatogram strip = chromatogram(strip(EXACT, lane(0.1, grey(spot(90, 0.1)))));

      assertThat(strip.lanes().get(0).leftOut()).containsExactly(0);
      assertThat(strip.cautions()).isEmpty();
    }

    @Test
    void isNothingSpecialForResidueAtTheOrigin() {
      Chromatogram strip =
          chromatogram(strip(EXACT, lane(0.1, spot(19.6, 0.1, SpotFlag.AT_ORIGIN))));

      assertThat(strip.lanes().get(0).spots().get(0).rf().value()).isZero();
      assertThat(strip.cautions()).isEmpty();
    }

    @Test
    void isSaidInPartsOfTheFrontWithoutAScale() {
      StripEvidence noScale = new StripEvidence(false, EXACT, List.of(lane(0.1, spot(83, 0.1))));

      assertThat(chromatogram(noScale).cautions().get(0).message())
          .contains("5.0 % of the front's distance");
    }
  }

  @Nested
  class OfATailingSpot {
    private final StripEvidence tailing =
        strip(EXACT, lane(0.1, spot(50, 48, 54, 0.1, SpotFlag.TAILING)));

    @Test
    void saysThatTheCentresDiffer() {
      assertThat(chromatogram(tailing).cautions())
          .extracting(Caution::message)
          .containsExactly(
              "Lane A, spot 1 is not symmetrical: Rf is 0.50 by the absorbance-weighted centre, "
                  + "0.47 by the middle of what is visible, 0.57 by the densest point. This table "
                  + "uses the absorbance-weighted centre.");
    }

    @Test
    void countsTheCentreThatWasChosen() {
      Lane lane = Chromatogram.of(tailing, SpotCentre.DENSEST).lanes().get(0);

      assertThat(lane.spots().get(0).rf().value()).isCloseTo(34.0 / 60, within(1e-12));
    }

    @Test
    void isNotRemarkableWhenTheCentresAgreeWithinTheirUncertainty() {
      StripEvidence rough = strip(EXACT, lane(0.5, spot(50, 49.2, 50.5, 0.5)));

      assertThat(chromatogram(rough).cautions()).isEmpty();
    }
  }

  @Test
  void refusesAFrontBelowTheBaseline() {
    assertThatThrownBy(
            () ->
                new LaneEvidence(
                    "A", LaneRole.UNKNOWN, new Place(50, 0), new Place(50, 0), List.of()))
        .hasMessageContaining("front of lane A must lie above its baseline");
  }

  private static Chromatogram chromatogram(StripEvidence strip) {
    return Chromatogram.of(strip, SpotCentre.CENTROID);
  }

  private static Lane measure(StripEvidence strip) {
    return chromatogram(strip).lanes().get(0);
  }

  private static Spot measureSpot(StripEvidence strip) {
    return measure(strip).spots().get(0);
  }
}
