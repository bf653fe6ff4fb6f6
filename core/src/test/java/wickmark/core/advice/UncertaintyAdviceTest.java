package wickmark.core.advice;

import static org.assertj.core.api.Assertions.assertThat;
import static wickmark.core.chromatogram.UncertaintySource.BASELINE;
import static wickmark.core.chromatogram.UncertaintySource.FLATNESS;
import static wickmark.core.chromatogram.UncertaintySource.FRONT;
import static wickmark.core.chromatogram.UncertaintySource.SCALE;
import static wickmark.core.chromatogram.UncertaintySource.SPOT;

import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import wickmark.core.chromatogram.Chromatogram;
import wickmark.core.chromatogram.LaneEvidence;
import wickmark.core.chromatogram.LaneRole;
import wickmark.core.chromatogram.Place;
import wickmark.core.chromatogram.SpotCentre;
import wickmark.core.chromatogram.SpotEvidence;
import wickmark.core.chromatogram.StripEvidence;
import wickmark.core.chromatogram.UncertaintySource;
import wickmark.core.colour.DyeAbsorbance;
import wickmark.core.uncertainty.UncertaintyBudget;

class UncertaintyAdviceTest {
  private static final Circumstances PHOTO =
      new Circumstances("ruler", "pencil", false, false, false);

  @Test
  void namesQuantityShareAndRemedy() {
    assertThat(sentences(List.of(budget(Map.of(SCALE, 0.62, SPOT, 0.38))), List.of()))
        .containsExactly(
            "The uncertainty of Rf comes first of all from the scale (62 % of the variance, median"
                + " over the spots): lay the ruler flat and close beside the strip, along it, and"
                + " take the picture from straight above.");
  }

  @Test
  void isTwoSentencesWhereRfAndDistancesDiffer() {
    assertThat(
            sentences(
                List.of(budget(Map.of(FRONT, 0.7, SPOT, 0.3))),
                List.of(budget(Map.of(SCALE, 0.55, BASELINE, 0.45)))))
        .satisfiesExactly(
            rf -> assertThat(rf).contains("of Rf ", "solvent front (70 %", "pencil line"),
            mm -> assertThat(mm).contains("of the distances in mm ", "scale (55 %", "ruler flat"));
  }

  @Test
  void isOneSentenceWhereTheyAgree() {
    assertThat(
            sentences(
                List.of(budget(Map.of(FLATNESS, 0.7, SPOT, 0.3))),
                List.of(budget(Map.of(FLATNESS, 0.5, SCALE, 0.5)))))
        .containsExactly(
            "The uncertainty of Rf and of the distances in mm comes first of all from paper not"
                + " lying flat (70 % and 50 % of the variance, median over the spots): press the"
                + " dry strip flat under a book before the picture, or scan it, where the lid holds"
                + " it flat.");
  }

  @Test
  void givesNoAdviceWhereNothingStandsOut() {
    assertThat(
            sentences(List.of(budget(Map.of(SPOT, 0.35, FRONT, 0.33, BASELINE, 0.32))), List.of()))
        .containsExactly(
            "No single source stands out in the uncertainty of Rf; the largest is finding the"
                + " spot's centre (35 % of the variance, median over the spots).");
  }

  @Test
  void saysNothingWithoutSpots() {
    assertThat(sentences(List.of(), List.of())).isEmpty();
  }

  @ParameterizedTest
  @EnumSource
  void hasARemedyForEachSource(UncertaintySource source) {
    assertThat(remedy(source, PHOTO)).isNotBlank().doesNotEndWith(".");
  }

  @ParameterizedTest
  @CsvSource({
    "ruler, ruler flat and close beside the strip",
    "card, printed card flat and close beside the strip",
    "resolution, a ruler on the glass",
    "strip-size, measure the strip to half a millimetre",
    "span, two points further apart"
  })
  void ofTheScaleFitsWhereItComesFrom(String scale, String words) {
    Circumstances circumstances = new Circumstances(scale, "pencil", false, false, false);

    assertThat(remedy(SCALE, circumstances)).contains(words);
  }

  @Test
  void ofWhatAPersonSetIsToSetItMoreExactly() {
    Circumstances byHand = new Circumstances("ruler", "by-hand", true, true, false);

    assertThat(List.of(SPOT, FRONT, BASELINE))
        .allSatisfy(
            source -> assertThat(remedy(source, byHand)).contains("with the picture enlarged"));
  }

  @Test
  void ofAFrontWithoutALineIsToDrawOne() {
    assertThat(remedy(FRONT, new Circumstances("ruler", "tide-mark", false, false, false)))
        .contains("where it is not marked");
  }

  @Test
  void doesNotAskForPalerSpotsWhereTheyAreFaint() {
    assertThat(remedy(SPOT, PHOTO)).contains("paler");
    assertThat(remedy(SPOT, new Circumstances("ruler", "pencil", false, false, true)))
        .contains("deeper")
        .doesNotContain("paler");
  }

  @Test
  void ofAScanDoesNotAdviseToScan() {
    assertThat(remedy(FLATNESS, PHOTO)).contains("scan");
    assertThat(remedy(FLATNESS, new Circumstances("resolution", "pencil", false, false, false)))
        .doesNotContain("scan");
  }

  @Nested
  class OfAStrip {
    // Distances of 15, 30 and 45 mm of 60 with 2 % of scale; the places cost 0.2 mm together.
    private static final StripEvidence.SharedUncertainties ROUGH_SCALE =
        new StripEvidence.SharedUncertainties(0.02, 0, 0);

    @Test
    void theScaleIsNeverASourceOfRf() {
      assertThat(UncertaintyAdvice.of(strip(true), PHOTO))
          .satisfiesExactly(
              rf -> {
                assertThat(rf.findings().get(0).quantity())
                    .isEqualTo(UncertaintyAdvice.Quantity.RF);
                assertThat(rf.findings().get(0).largest().source()).isEqualTo(SPOT.words());
              },
              mm -> {
                assertThat(mm.findings().get(0).quantity())
                    .isEqualTo(UncertaintyAdvice.Quantity.DISTANCE);
                assertThat(mm.findings().get(0).largest().source()).isEqualTo(SCALE.words());
              });
    }

    @Test
    void withoutAScaleNothingIsSaidOfDistances() {
      assertThat(UncertaintyAdvice.of(strip(false), PHOTO))
          .singleElement()
          .extracting(UncertaintyAdvice::sentence)
          .asString()
          .doesNotContain("distances");
    }

    private Chromatogram strip(boolean millimetres) {
      LaneEvidence lane =
          new LaneEvidence(
              "A",
              LaneRole.REFERENCE,
              new Place(20, 0.05),
              new Place(80, 0.05),
              List.of(spot(35), spot(50), spot(65)));
      return Chromatogram.of(
          new StripEvidence(millimetres, ROUGH_SCALE, List.of(lane)), SpotCentre.CENTROID);
    }

    private static SpotEvidence spot(double along) {
      Place place = new Place(along, 0.2);
      return new SpotEvidence(
          place,
          place,
          place,
          new SpotEvidence.Extent(along + 4, along - 4, 6, 38),
          new SpotEvidence.Look(0.4, new DyeAbsorbance(0.4, 0.2, 0).toLab()),
          Set.of(),
          1);
    }
  }

  private static List<String> sentences(
      List<UncertaintyBudget> ofRf, List<UncertaintyBudget> ofDistance) {
    return UncertaintyAdvice.of(ofRf, ofDistance, PHOTO).stream()
        .map(UncertaintyAdvice::sentence)
        .toList();
  }

  private static String remedy(UncertaintySource source, Circumstances circumstances) {
    return UncertaintyAdvice.of(List.of(budget(Map.of(source, 1.0))), List.of(), circumstances)
        .get(0)
        .remedy()
        .orElseThrow();
  }

  /** A budget with these shares of the variance, the sources in their usual order. */
  private static UncertaintyBudget budget(Map<UncertaintySource, Double> shares) {
    UncertaintyBudget.Builder builder = UncertaintyBudget.builder();
    for (UncertaintySource source : UncertaintySource.values()) {
      builder.add(source.words(), 0.01, Math.sqrt(shares.getOrDefault(source, 0.0)));
    }
    return builder.build();
  }
}
