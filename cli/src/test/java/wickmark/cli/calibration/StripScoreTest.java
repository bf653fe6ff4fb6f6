package wickmark.cli.calibration;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import wickmark.cli.measuring.AlteredRecord;
import wickmark.cli.measuring.MeasuredStrip;
import wickmark.cli.measuring.SampleStrip;
import wickmark.core.record.RunRecord;

class StripScoreTest {
  private static final TruthFile.Lane A = lane("A", "reference", 30, spot(1, 0.72));
  private static final TruthFile.Lane B = lane("B", "reference", 60, spot(1, 0.4));
  private static final TruthFile.Lane X = lane("X", "unknown", 90, spot(1, 0.4), spot(2, 0.72));
  private static final TruthFile.Unknown A_AND_B =
      new TruthFile.Unknown("X", List.of(Set.of("A", "B")), Set.of());

  private final RunRecord record =
      AlteredRecord.of(SampleStrip.record()).warnings(List.of()).record();

  @Test
  void nothingIsWrongInARightRecord() {
    StripScore score = measured(truth("ok", A_AND_B, A, B, X));

    assertThat(score.wrong()).isEmpty();
    assertThat(score.isFlawless()).isTrue();
    assertThat(score.isSilentlyWrong()).isFalse();
    assertThat(score.lanes.fraction()).isEqualTo("3/3");
    assertThat(score.spots.fraction()).isEqualTo("4/4");
    assertThat(score.foundSpots.fraction()).isEqualTo("4/4");
    assertThat(score.explained.fraction()).isEqualTo("1/1");
    assertThat(score.unexplained.fraction()).isEqualTo("1/1");
    // The record has 54.03 and 30.05 mm in lane X, and a front 75 mm away.
    assertThat(score.distanceMm.largest()).isCloseTo(0.05, within(1e-9));
    assertThat(score.rf.largest()).isCloseTo(0.05 / 75, within(1e-9));
    assertThat(score.frontMm.trio(2)).isEqualTo("0.00/0.00/0.00");
    assertThat(score.scalePercent.largest()).isZero();
  }

  @Test
  void aSpotThatIsMissedIsWrongUnlessItIsFaintOrStayed() {
    TruthFile.Spot faint = new TruthFile.Spot(2, 0.2, 0.2, 15, 15, false, true, false, Set.of());
    TruthFile.Spot stayed = new TruthFile.Spot(2, 0.04, 0.04, 3, 3, false, false, true, Set.of());

    StripScore missed =
        measured(truth("ok", A_AND_B, lane("A", "", 30, spot(1, 0.2), spot(2, 0.72)), B, X));
    StripScore fine =
        measured(
            truth(
                "ok",
                A_AND_B,
                lane("A", "", 30, faint, spot(1, 0.72)),
                lane("B", "", 60, stayed, spot(1, 0.4)),
                X));

    assertThat(missed.wrong()).containsExactly("lane A: spot at Rf 0.20 missed");
    assertThat(missed.isSilentlyWrong()).isTrue();
    assertThat(missed.spots.fraction()).isEqualTo("4/5");
    assertThat(fine.wrong()).isEmpty();
    assertThat(fine.faint.fraction()).isEqualTo("0/1");
  }

  @Test
  void aSpotThatIsNotThereIsWrong() {
    StripScore score = measured(truth("ok", A_AND_B, A, B, lane("X", "", 90, spot(1, 0.4))));

    assertThat(score.wrong()).containsExactly("lane X: false spot at Rf 0.72");
    assertThat(score.foundSpots.fraction()).isEqualTo("3/4");
  }

  @Test
  void anRfThatIsFarOffIsWrongThoughItIsPaired() {
    StripScore score = measured(truth("ok", A_AND_B, lane("A", "", 30, spot(1, 0.68)), B, X));

    assertThat(score.wrong()).containsExactly("lane A: Rf 0.68 off by 0.040");
    assertThat(score.foundSpots.wrong()).isZero();
  }

  @Test
  void aWarningMakesWhatIsWrongNoSilence() {
    StripScore score =
        StripScore.of(
            truth("ok", A_AND_B, A, B, lane("X", "", 90, spot(1, 0.4))),
            done(SampleStrip.record()));

    assertThat(score.isSilentlyWrong()).isFalse();
    assertThat(score.warnings()).containsExactly("front-faint");
  }

  @Test
  void whereALaneIsMissingTheOthersAreKnownByTheirOrigins() {
    StripScore score = measured(truth("ok", A_AND_B, lane("0", "", 10, spot(1, 0.5)), A, B, X));

    assertThat(score.wrong()).containsExactly("3 lanes for 4");
    assertThat(score.lanes.fraction()).isEqualTo("3/4");
    assertThat(score.spots.fraction()).isEqualTo("4/5");
    assertThat(score.explained.fraction()).isEqualTo("1/1");
  }

  @Test
  void anotherExplanationIsWrongButNoFlaw() {
    TruthFile.Unknown onlyA = new TruthFile.Unknown("X", List.of(Set.of("A")), Set.of(1));

    StripScore score = measured(truth("ok", onlyA, A, B, X));

    assertThat(score.explained.fraction()).isEqualTo("0/1");
    assertThat(score.unexplained.fraction()).isEqualTo("0/1");
    assertThat(score.isFlawless()).isTrue();
  }

  @Test
  void whatIsToBeRefusedIsRightOnlyIfItIs() {
    MeasuredStrip refused = new MeasuredStrip.Refused("no strip");
    TruthFile toRefuse = truth("refuse", A_AND_B);

    assertThat(StripScore.of(toRefuse, refused).wrong()).isEmpty();
    assertThat(measured(toRefuse).wrong()).containsExactly("should be refused");
    assertThat(measured(toRefuse).isSilentlyWrong()).isTrue();
    assertThat(StripScore.of(truth("ok", A_AND_B, A, B, X), refused).wrong())
        .containsExactly("refused, should be measured");
  }

  @Test
  void millimetresWithoutAScaleAreWrong() {
    assertThat(measured(truth("rf-only", A_AND_B, A, B, X)).wrong())
        .containsExactly("millimetres where there is no scale");
  }

  private StripScore measured(TruthFile truth) {
    return StripScore.of(truth, done(record));
  }

  private static MeasuredStrip done(RunRecord record) {
    return new MeasuredStrip.Done(record, SampleStrip.straightened());
  }

  private static TruthFile truth(
      String expected, TruthFile.Unknown unknown, TruthFile.Lane... lanes) {
    return new TruthFile(
        "sample",
        "sample.jpg",
        "phone",
        "easy",
        expected,
        List.of(lanes),
        List.of(unknown),
        0.5,
        List.of(),
        false,
        List.of(),
        List.of());
  }

  private static TruthFile.Lane lane(String name, String role, double x, TruthFile.Spot... spots) {
    return new TruthFile.Lane(name, role, List.of(x, 160.0), 75, List.of(spots));
  }

  private static TruthFile.Spot spot(int number, double rf) {
    return new TruthFile.Spot(
        number, rf, rf, 75 * rf, 75 * rf, false, false, false, Set.of("yellow", "blue"));
  }
}
