package wickmark.core.record;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import wickmark.core.chromatogram.Chromatogram;
import wickmark.core.chromatogram.LaneEvidence;
import wickmark.core.chromatogram.LaneRole;
import wickmark.core.chromatogram.Place;
import wickmark.core.chromatogram.SpotCentre;
import wickmark.core.chromatogram.SpotEvidence;
import wickmark.core.chromatogram.SpotFlag;
import wickmark.core.chromatogram.StripEvidence;
import wickmark.core.colour.DyeAbsorbance;
import wickmark.core.match.Identification;
import wickmark.core.match.MatchSettings;
import wickmark.core.match.UnknownReading;

class ChromatogramRecordTest {

  @Test
  void writesWhatWasMeasured() {
    RunRecord.Lane lane = ChromatogramRecord.lanes(strip(true), pictures(), Set.of("B")).get(1);

    assertThat(lane.role()).isEqualTo("unknown");
    assertThat(lane.frontDistanceMm()).isEqualTo(60);
    assertThat(lane.reading()).isEqualTo("a mixture of at least 2 dyes");
    RunRecord.Spot spot = lane.spots().get(0);
    assertThat(spot.number()).isEqualTo(1);
    assertThat(spot.distanceMm()).isEqualTo(50);
    assertThat(spot.rf()).isEqualTo(0.83333);
    assertThat(spot.colour()).isEqualTo("blue");
    assertThat(spot.centrePx()).containsExactly(20.13, 2.0);
    assertThat(spot.flags()).containsExactly("tailing");
    assertThat(spot.budget()).hasSize(5);
  }

  @Test
  void knowsNoMillimetresWithoutAScale() {
    RunRecord.Lane lane = ChromatogramRecord.lanes(strip(false), pictures(), Set.of("B")).get(0);

    assertThat(lane.confidence()).isEqualTo(0.877);
    assertThat(lane.frontDistanceMm()).isNull();
    assertThat(lane.spots().get(0).distanceMm()).isNull();
    assertThat(lane.spots().get(0).areaMm2()).isNull();
    assertThat(lane.spots().get(0).rf()).isEqualTo(0.5);
  }

  @Test
  void writesWhatExplainsTheUnknown() {
    RunRecord.Unknown unknown =
        ChromatogramRecord.unknowns(Identification.of(strip(true), MatchSettings.defaults()))
            .get(0);

    assertThat(unknown.lane()).isEqualTo("X");
    assertThat(unknown.explanations().get(0).references()).containsExactly("A");
    assertThat(unknown.explanations().get(0).matches().get(0).unknownSpot()).isEqualTo(2);
    assertThat(unknown.unexplainedSpots()).containsExactly(1);
  }

  @Test
  void warnsOfASpotThatStandsForTwoDyes() {
    List<UnknownReading> readings = Identification.of(twoInOne(), MatchSettings.defaults());

    assertThat(ChromatogramRecord.warnings(twoInOne(), readings))
        .extracting(RunRecord.Warning::code)
        .containsExactly("spot-of-two-dyes");
    assertThat(
            ChromatogramRecord.warnings(
                strip(true), Identification.of(strip(true), MatchSettings.defaults())))
        .isEmpty();
  }

  @Test
  void warnsOfASpotInWhichAnotherOfItsColourMayHide() {
    DyeAbsorbance red = new DyeAbsorbance(0.02, 0.5, 0.44);
    Chromatogram strip =
        Chromatogram.of(
            new StripEvidence(
                true,
                new StripEvidence.SharedUncertainties(0.002, 0.002, 0.1),
                List.of(
                    lane("A", LaneRole.REFERENCE, spot(59.9, red)),
                    lane("B", LaneRole.REFERENCE, spot(62.3, red)),
                    lane("X", LaneRole.UNKNOWN, spot(61.9, 5, red)))),
            SpotCentre.CENTROID);
    List<UnknownReading> readings = Identification.of(strip, MatchSettings.defaults());

    RunRecord.Warning warning = ChromatogramRecord.warnings(strip, readings).get(0);
    assertThat(warning.code()).isEqualTo("spot-may-be-two");
    assertThat(warning.message()).contains("Lane X, spot 1", "A has a spot", "(Rf 0.66)");
  }

  /** Blue and yellow, which A and B have by themselves, lie on top of one another in X. */
  private static Chromatogram twoInOne() {
    DyeAbsorbance blue = new DyeAbsorbance(0.5, 0.29, 0.05);
    DyeAbsorbance yellow = new DyeAbsorbance(0.02, 0.05, 0.5);
    DyeAbsorbance both = new DyeAbsorbance(0.52, 0.34, 0.55);
    return Chromatogram.of(
        new StripEvidence(
            true,
            new StripEvidence.SharedUncertainties(0.002, 0.002, 0.1),
            List.of(
                lane("A", LaneRole.REFERENCE, spot(50.5, blue)),
                lane("B", LaneRole.REFERENCE, spot(49.5, yellow)),
                lane("X", LaneRole.UNKNOWN, spot(50, both)))),
        SpotCentre.CENTROID);
  }

  private static Chromatogram strip(boolean millimetres) {
    DyeAbsorbance red = new DyeAbsorbance(0.02, 0.5, 0.44);
    DyeAbsorbance blue = new DyeAbsorbance(0.5, 0.29, 0.05);
    StripEvidence evidence =
        new StripEvidence(
            millimetres,
            new StripEvidence.SharedUncertainties(0.002, 0.002, 0.1),
            List.of(
                lane("A", LaneRole.REFERENCE, spot(50, red)),
                lane("X", LaneRole.UNKNOWN, spot(50, red), spot(70, blue, SpotFlag.TAILING))));
    return Chromatogram.of(evidence, SpotCentre.CENTROID);
  }

  private static List<LanePicture> pictures() {
    LanePicture.SpotPicture first = new LanePicture.SpotPicture(List.of(10.0, 5.0), List.of());
    LanePicture.SpotPicture second = new LanePicture.SpotPicture(List.of(20.125, 2.0), List.of());
    return List.of(
        new LanePicture(List.of(10.0, 20.0), 0.87654, List.of(first)),
        new LanePicture(List.of(20.0, 20.0), 1, List.of(first, second)));
  }

  private static LaneEvidence lane(String name, LaneRole role, SpotEvidence... spots) {
    return new LaneEvidence(name, role, new Place(20, 0.1), new Place(80, 0.1), List.of(spots));
  }

  private static SpotEvidence spot(double along, DyeAbsorbance dye, SpotFlag... flags) {
    return spot(along, 4, dye, flags);
  }

  private static SpotEvidence spot(
      double along, double half, DyeAbsorbance dye, SpotFlag... flags) {
    Place place = new Place(along, 0.1);
    return new SpotEvidence(
        place,
        place,
        place,
        new SpotEvidence.Extent(along + half, along - half, 6, 38),
        new SpotEvidence.Look(0.6, dye.toLab()),
        Set.of(flags),
        0.9);
  }
}
