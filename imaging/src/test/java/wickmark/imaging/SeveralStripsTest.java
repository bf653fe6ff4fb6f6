package wickmark.imaging;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import wickmark.imaging.finding.Refusal;
import wickmark.imaging.photo.Photo;
import wickmark.testdata.picture.DrawnPicture;
import wickmark.testdata.scene.Placement;
import wickmark.testdata.scene.RulerItem;
import wickmark.testdata.scene.RulerPlan;
import wickmark.testdata.scene.ScanPlan;
import wickmark.testdata.scene.Scanner;
import wickmark.testdata.scene.SensorPlan;
import wickmark.testdata.scene.StripItem;
import wickmark.testdata.strip.Baseline;
import wickmark.testdata.strip.DyeCupboard;
import wickmark.testdata.strip.LanePlan;
import wickmark.testdata.strip.Lead;
import wickmark.testdata.strip.SolventFront;
import wickmark.testdata.strip.StripPlan;
import wickmark.testdata.strip.StripPlanBuilder;

/** Several strips in one picture, one beside the other. */
class SeveralStripsTest {
  private static final double PITCH_MM = 34;
  private static final double HEIGHT_MM = 96;

  /** A narrow strip with one lane of one spot. */
  private static StripPlanBuilder narrow(double rf) {
    return StripPlan.sheet(24, HEIGHT_MM)
        .baseline(17, 0)
        .front(80)
        .namedLane(LanePlan.reference("A", 12, DrawnStrips.spot(DyeCupboard.RASPBERRY, rf)))
        .seed((long) (1000 * rf));
  }

  private static Photo scan(List<StripItem> strips, List<RulerItem> rulers) {
    double width = PITCH_MM * (strips.size() + rulers.size()) + 6;
    DrawnPicture picture =
        Scanner.scan(
            new ScanPlan(
                150,
                new ScanPlan.Glass(width, HEIGHT_MM + 24, ScanPlan.Lid.BLACK),
                strips,
                rulers,
                SensorPlan.scanner(),
                3));
    return DrawnStrips.scanned(picture, 150);
  }

  private static Placement place(int column, double lowerMm) {
    return new Placement(20 + PITCH_MM * column, -HEIGHT_MM / 2 - 12 - lowerMm, 0.7 * column - 1);
  }

  @Test
  void sixStripsAreReadFromTheLeft() {
    List<StripItem> strips = new ArrayList<>();
    for (int k = 0; k < 6; k++) {
      strips.add(StripItem.of(narrow(0.25 + 0.1 * k).build(), place(k, k % 2 == 0 ? 4 : -4)));
    }
    List<StripOutcome> outcomes =
        StripReader.readAll(scan(strips, List.of()), ReadingRequest.nothing());
    assertThat(outcomes).hasSize(6);
    for (int k = 0; k < 6; k++) {
      assertThat(SaidPlacesTest.rf(reading(outcomes.get(k)), 0, 0))
          .isCloseTo(0.25 + 0.1 * k, within(0.01));
    }
  }

  @Test
  void oneThatFailsDoesNotStopTheOthers() {
    StripPlan unmarked =
        narrow(0.5).front(new SolventFront(80, 0, 0, SolventFront.Mark.NONE, 0, 0)).build();
    List<StripOutcome> outcomes = betweenTwo(unmarked);
    assertThat(outcomes).hasSize(3);
    assertThat(SaidPlacesTest.rf(reading(outcomes.get(0)), 0, 0)).isCloseTo(0.3, within(0.01));
    assertThat(refusal(outcomes.get(1)).reason()).isEqualTo(Refusal.Reason.NO_FRONT);
    assertThat(SaidPlacesTest.rf(reading(outcomes.get(2)), 0, 0)).isCloseTo(0.6, within(0.01));
  }

  /** Nobody drew the line on it; dye and front are there. */
  @Test
  void oneOfThemWithoutABaselineIsRefusedUnderItsNumber() {
    StripPlan unmarked =
        narrow(0.5).baseline(new Baseline(17, 0, 1, 23, Lead.USUAL, false)).build();
    List<StripOutcome> outcomes = betweenTwo(unmarked);
    assertThat(outcomes).hasSize(3);
    // The one line that is there may be the front or the baseline.
    assertThat(refusal(outcomes.get(1)).reason())
        .isIn(Refusal.Reason.NO_BASELINE, Refusal.Reason.NO_FRONT);
    assertThat(SaidPlacesTest.rf(reading(outcomes.get(2)), 0, 0)).isCloseTo(0.6, within(0.01));
  }

  @Test
  void anUnusedStripAndARulerAreNotReported() {
    StripPlan unused = StripPlan.sheet(24, HEIGHT_MM).baseline(17, 0).front(80).seed(4).build();
    List<StripOutcome> outcomes =
        StripReader.readAll(
            scan(
                List.of(
                    StripItem.of(unused, place(0, 0)).unused(),
                    StripItem.of(narrow(0.55).build(), place(1, 0))),
                List.of(new RulerItem(RulerPlan.school(), new Placement(90, -60, 90)))),
            ReadingRequest.nothing());
    assertThat(outcomes).hasSize(1);
    assertThat(SaidPlacesTest.rf(reading(outcomes.get(0)), 0, 0)).isCloseTo(0.55, within(0.01));
  }

  @Test
  void anUnusedStripAloneIsRefused() {
    StripPlan unused = StripPlan.sheet(60, HEIGHT_MM).baseline(17, 0).front(80).seed(4).build();
    List<StripOutcome> outcomes =
        StripReader.readAll(
            scan(
                List.of(StripItem.of(unused, new Placement(36, -60, 1))),
                List.of(new RulerItem(RulerPlan.school(), new Placement(90, -60, 90)))),
            ReadingRequest.nothing());
    assertThat(outcomes).hasSize(1);
    assertThat(refusal(outcomes.get(0)).message()).isNotEmpty();
  }

  /** What is read of a strip and of the two good ones on either side of it. */
  private static List<StripOutcome> betweenTwo(StripPlan plan) {
    return StripReader.readAll(
        scan(
            List.of(
                StripItem.of(narrow(0.3).build(), place(0, 0)),
                StripItem.of(plan, place(1, 0)),
                StripItem.of(narrow(0.6).build(), place(2, 0))),
            List.of()),
        ReadingRequest.nothing());
  }

  private static StripReading reading(StripOutcome outcome) {
    return outcome.fold(
        read -> read,
        refused -> {
          throw new AssertionError(refused.message());
        });
  }

  private static Refusal refusal(StripOutcome outcome) {
    return outcome.fold(
        read -> {
          throw new AssertionError("measured");
        },
        refused -> refused);
  }
}
