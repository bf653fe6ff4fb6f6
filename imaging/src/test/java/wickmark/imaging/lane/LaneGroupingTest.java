package wickmark.imaging.lane;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/** Lanes from evidence laid out by hand, each with its place known, mm. */
class LaneGroupingTest {
  /** What is laid out so far. */
  private static final class Strip {
    private final int steps;
    private final LaneEvidence evidence;

    Strip(double widthMm) {
      steps = (int) (widthMm / LaneEvidence.STEP_MM);
      evidence = new LaneEvidence(new double[steps], new double[steps], new double[steps]);
    }

    Strip ink(double[] kind, double middleMm, double widthMm) {
      for (int i = 0; i < steps; i++) {
        if (Math.abs(LaneEvidence.middleMm(i) - middleMm) <= widthMm / 2) {
          kind[i] = 1;
        }
      }
      return this;
    }

    Strip name(double middleMm, double widthMm) {
      return ink(evidence.writing(), middleMm, widthMm);
    }

    Strip mark(double middleMm) {
      return ink(evidence.marks(), middleMm, 1);
    }

    /** A spot that fades out like a Gaussian within its width (four standard deviations). */
    Strip spot(double middleMm, double widthMm, double peak) {
      for (int i = 0; i < steps; i++) {
        double z = (LaneEvidence.middleMm(i) - middleMm) / (widthMm / 4);
        evidence.density()[i] = Math.max(evidence.density()[i], peak * Math.exp(-z * z / 2));
      }
      return this;
    }

    Strip lane(double atMm, double spotMm) {
      return name(atMm, 5).mark(atMm).spot(atMm, spotMm, 0.5);
    }

    LaneGrouping.Grouping found() {
      return LaneGrouping.of(evidence, OptionalInt.empty(), SaidOrigins.none());
    }

    /** With the number of lanes said, and places of some by their numbers, mm. */
    LaneGrouping.Grouping said(int lanes, Map<Integer, Double> originsMm) {
      OptionalInt count = OptionalInt.of(lanes);
      SaidLanes said = new SaidLanes(count, new TreeMap<>(originsMm));
      return LaneGrouping.of(evidence, count, SaidOrigins.of(said, 1));
    }

    List<Double> origins() {
      return found().spans().stream().map(evidence::originMm).toList();
    }
  }

  private static void isAt(Strip strip, double... mm) {
    List<Double> origins = strip.origins();
    assertThat(origins).hasSize(mm.length);
    for (int k = 0; k < mm.length; k++) {
      assertThat(origins.get(k)).isCloseTo(mm[k], within(1.0));
    }
  }

  @Test
  void wideSpotsAreNotParted() {
    Strip strip = new Strip(90);
    strip.lane(13, 14).lane(30, 14).lane(47, 14);
    isAt(strip, 13, 30, 47);
  }

  @Test
  void oneSpotUnderALongNameIsOneLane() {
    Strip ribbon = new Strip(26);
    ribbon.name(9, 5.5).name(16.5, 5).mark(13).spot(13, 13, 0.6);
    isAt(ribbon, 13);
  }

  @Test
  void touchingLanesAreParted() {
    Strip ribbon = new Strip(32);
    ribbon.name(9, 3).name(19.5, 5).spot(9, 10, 0.3).spot(19.5, 10, 0.6);
    isAt(ribbon, 9, 19.5);
  }

  @Test
  void lanesWithoutNamesAndMarksArePartedByTheirSpots() {
    Strip strip = new Strip(90);
    strip.spot(14, 9, 0.4).spot(29, 9, 0.2).spot(44, 9, 0.6);
    isAt(strip, 14, 29, 44);
  }

  @Test
  void aSpotThatDriftedAsideIsNoLaneOfItsOwn() {
    Strip strip = new Strip(90);
    strip.lane(13, 9).lane(30, 9).name(47, 5).mark(47).spot(45, 7, 0.4).spot(54, 7, 0.4);
    assertThat(strip.found().spans()).hasSize(3);
  }

  @Test
  void aRemarkBesideTheLanesIsNone() {
    Strip strip = new Strip(90);
    strip.lane(13, 9).lane(29, 9).lane(45, 9).name(75, 12);
    isAt(strip, 13, 29, 45);
  }

  @Test
  void whatIsSaidHolds() {
    Strip strip = new Strip(90);
    strip.lane(13, 9).lane(30, 9).lane(47, 9);
    LaneGrouping.Grouping said = strip.said(3, Map.of());
    assertThat(said.spans()).hasSize(3);
    assertThat(said.lead()).isInfinite();
  }

  @Test
  void whatIsSaidHoldsWithADoubtWhereAnotherNumberExplainsMore() {
    Strip strip = new Strip(90);
    strip.lane(13, 9).lane(30, 9).lane(47, 9);
    LaneGrouping.Grouping said = strip.said(2, Map.of());
    assertThat(said.spans()).hasSize(2);
    assertThat(said.lead()).isNegative();
    LaneTrack lane = new LaneTrack(1, 0, 2, 1, said.lead());
    assertThat(lane.confidence()).isLessThan(0.3);
  }

  @Test
  void aLaneWhoseOriginIsSaidNeedsNothingElse() {
    Strip strip = new Strip(90);
    strip.lane(13, 9).lane(30, 9).lane(64, 9);

    LaneGrouping.Grouping said = strip.said(4, Map.of(2, 47.0));

    assertThat(said.spans().stream().map(strip.evidence::originMm).toList())
        .satisfiesExactly(
            mm -> assertThat(mm).isCloseTo(13, within(1.0)),
            mm -> assertThat(mm).isCloseTo(30, within(1.0)),
            mm -> assertThat(mm).isCloseTo(47, within(9.0)),
            mm -> assertThat(mm).isCloseTo(64, within(1.0)));
    assertThat(said.lead()).isPositive();
  }

  /** The lane that is said to be the second leaves one before it and none after. */
  @Test
  void aSaidOriginBelongsToTheLaneOfItsNumber() {
    Strip strip = new Strip(90);
    strip.lane(13, 9).lane(30, 9).lane(47, 9);

    LaneGrouping.Grouping said = strip.said(2, Map.of(1, 47.0));

    assertThat(said.spans()).hasSize(2);
    assertThat(said.spans().get(1).from() * LaneEvidence.STEP_MM).isLessThan(47);
    assertThat(said.spans().get(1).to() * LaneEvidence.STEP_MM).isGreaterThan(47);
  }

  @Test
  void clearLanesLeadByMoreThanBlurredOnes() {
    Strip blurred = new Strip(60);
    blurred.spot(14, 14, 0.2).spot(23, 14, 0.15).spot(45, 12, 0.1);
    Strip strip = new Strip(90);
    strip.lane(13, 9).lane(30, 9).lane(47, 9);
    assertThat(strip.found().lead()).isGreaterThan(2 * blurred.found().lead());
  }

  @Test
  void nothingIsNoLane() {
    assertThat(new Strip(90).found().spans()).isEmpty();
  }
}
