package wickmark.testdata.strip;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import wickmark.testdata.truth.LaneTruth;
import wickmark.testdata.truth.SpotTruth;
import wickmark.testdata.truth.StripTruth;

class StripPainterTest {
  private static final SpotShape ROUND = SpotShape.gaussian(2.0, 1.5);

  private static SpotTruth painted(SpotPlan spot, double slopeDeg) {
    StripPlan plan =
        StripPlan.sheet(60, 120)
            .baseline(20, slopeDeg)
            .front(100)
            .lane(LanePlan.reference("A", 30, spot))
            .build();
    return StripPainter.paint(plan, 8).truth().lane("A").spots().get(0);
  }

  @Nested
  class OfASmoothRoundSpot {
    @Test
    void theCentroidIsWhereTheSpotWasPut() {
      SpotTruth spot = painted(SpotPlan.of(DyeCupboard.SKY, 0.5, 0.7, ROUND), 0);

      assertThat(spot.centroid().x()).isCloseTo(30, within(1e-4));
      assertThat(spot.distanceMm()).isCloseTo(40, within(1e-4));
      assertThat(spot.rf()).isCloseTo(0.5, within(1e-5));
    }

    @Test
    void theDistanceIsSquareToASlopingBaseline() {
      SpotTruth spot = painted(SpotPlan.of(DyeCupboard.SKY, 0.5, 0.7, ROUND), 2);

      // The lane runs square to the baseline, so it meets the level front after 80 mm / cos(2°).
      double front = 80 / StrictMath.cos(StrictMath.toRadians(2));
      assertThat(spot.distanceMm()).isCloseTo(front / 2, within(1e-3));
      assertThat(spot.centroid().x())
          .isCloseTo(30 - front / 2 * StrictMath.sin(StrictMath.toRadians(2)), within(0.01));
    }

    @Test
    void theExtentReachesToATenthOfThePeak() {
      SpotTruth spot = painted(SpotPlan.of(DyeCupboard.SKY, 0.5, 0.7, ROUND), 0);

      // A gaussian falls to a tenth at sqrt(2 ln 10) standard deviations; the grid adds half a
      // cell.
      double reach = Math.sqrt(2 * Math.log(10));
      assertThat(spot.extent().topDistanceMm()).isCloseTo(40 + 1.5 * reach, within(0.13));
      assertThat(spot.extent().bottomDistanceMm()).isCloseTo(40 - 1.5 * reach, within(0.13));
      assertThat(spot.extent().widthMm()).isCloseTo(4.0 * reach, within(0.26));
    }
  }

  @Test
  void aTailPullsTheCentroidAndTheMiddleTowardsTheBaseline() {
    SpotTruth plain = painted(SpotPlan.of(DyeCupboard.ROSE, 0.6, 0.7, ROUND), 0);
    SpotTruth tailing = painted(SpotPlan.of(DyeCupboard.ROSE, 0.6, 0.7, ROUND.withTail(6)), 0);

    assertThat(tailing.distanceMm()).isBetween(plain.distanceMm() - 8, plain.distanceMm() - 1);
    assertThat(tailing.extent().middleDistanceMm())
        .isLessThan(plain.extent().middleDistanceMm() - 2);
    assertThat(tailing.flags()).contains("tailing");
  }

  @Test
  void noDyeRunsAheadOfTheFront() {
    SpotTruth spot = painted(SpotPlan.of(DyeCupboard.LEMON, 1.0, 0.7, ROUND), 0);

    assertThat(spot.extent().topDistanceMm()).isLessThan(80.8);
    assertThat(spot.rf()).isLessThan(1);
    assertThat(spot.flags()).contains("at_front");
  }

  @Test
  void densitiesOfOverlappingDyesAddUp() {
    StripPlan both =
        StripPlan.sheet(40, 80)
            .front(70)
            .lane(
                LanePlan.unknown(
                    "X",
                    20,
                    SpotPlan.of(DyeCupboard.LEMON, 0.5, 0.4, ROUND),
                    SpotPlan.of(DyeCupboard.SKY, 0.5, 0.3, ROUND)))
            .paper(new Paper(Paper.FILTER.white(), 0, 0, 0.2))
            .build();
    float[] seen = new float[3];
    StripPainter.paint(both, 16).addReflectance(20, 45, seen);

    double blue = 0.4 * 1 + 0.3 * DyeCupboard.SKY.absorption().blue() + tone(both).toned() * 1;
    assertThat(seen[2] / Paper.FILTER.white().blue()).isCloseTo(Math.pow(10, -blue), within(0.003));
  }

  @Nested
  class AtTheFront {
    private static final Paper SMOOTH = new Paper(Paper.FILTER.white(), 0, 0, 0.2);

    private static float[] seen(StripPlan plan, double x, double y) {
      float[] seen = new float[3];
      StripPainter.paint(plan, 10).addReflectance(x, y, seen);
      return seen;
    }

    private static double darkest(StripPlan plan, double x, double fromY, double toY) {
      PaintedStrip painted = StripPainter.paint(plan, 10);
      double least = 1;
      for (double y = fromY; y <= toY; y += 0.1) {
        float[] seen = new float[3];
        painted.addReflectance(x, y, seen);
        least = Math.min(least, seen[1]);
      }
      return least;
    }

    @Test
    void aTideMarkIsABrownishLineOffThePencilsAndNoFrontOfItsOwn() {
      StripPlan plan =
          StripPlan.sheet(60, 120)
              .paper(SMOOTH)
              .front(new SolventFront(100, 0, 0, SolventFront.Mark.PENCIL, 0, 0))
              .blemish(new Blemish.TideMark(3, 0, 0.2, 0))
              .build();
      float[] mark = seen(plan, 30, 102.8);
      float[] beyond = seen(plan, 30, 106);

      assertThat(mark[2] / beyond[2]).isLessThan(0.85f);
      assertThat(mark[0] / beyond[0]).isGreaterThan(mark[2] / beyond[2] + 0.05f);
      assertThat(StripPainter.paint(plan, 4).truth().front().points())
          .allMatch(point -> point.y() == 100);
    }

    @Test
    void ticksReachAsFarAsTheyAreSaidTo() {
      SolventFront ticks = new SolventFront(100, 0, 0, SolventFront.Mark.TICKS, 0, 0);
      StripPlan usual = StripPlan.sheet(60, 120).paper(SMOOTH).front(ticks).build();
      StripPlan wide = StripPlan.sheet(60, 120).paper(SMOOTH).front(ticks.withTicks(15)).build();
      double blank = darkest(usual, 30, 99, 101);

      assertThat(darkest(usual, 3, 99, 101)).isLessThan(0.9 * blank);
      assertThat(darkest(usual, 14, 99, 101)).isGreaterThan(0.99 * blank);
      assertThat(darkest(wide, 14, 99, 101)).isLessThan(0.9 * blank);
      assertThat(darkest(wide, 46, 99, 101)).isLessThan(0.9 * blank);
      assertThat(darkest(wide, 30, 99, 101)).isGreaterThan(0.99 * blank);
    }
  }

  private static SolventFront tone(StripPlan plan) {
    return plan.lines().front();
  }

  @Nested
  class OfAMixture {
    private final StripTruth truth =
        StripPainter.paint(
                StripPlan.sheet(80, 100)
                    .front(85)
                    .lane(
                        LanePlan.reference(
                            "A", 10, SpotPlan.of(DyeCupboard.LEMON, 0.3, 0.4, ROUND)))
                    .lane(
                        LanePlan.reference("B", 25, SpotPlan.of(DyeCupboard.SKY, 0.8, 0.4, ROUND)))
                    .lane(
                        LanePlan.reference(
                            "C", 40, SpotPlan.of(DyeCupboard.LEMON, 0.3, 0.7, ROUND)))
                    .lane(
                        LanePlan.unknown(
                            "X",
                            60,
                            SpotPlan.of(DyeCupboard.SKY, 0.8, 0.4, ROUND),
                            SpotPlan.of(DyeCupboard.LEMON, 0.3, 0.4, ROUND),
                            SpotPlan.of(DyeCupboard.ROSE, 0.5, 0.4, ROUND)))
                    .build(),
                8)
            .truth();

    @Test
    void everySmallestSetOfReferencesIsGiven() {
      assertThat(truth.unknowns().get(0).explanations())
          .containsExactlyInAnyOrder(java.util.List.of("A", "B"), java.util.List.of("B", "C"));
    }

    @Test
    void whatNoReferenceHoldsStaysUnexplained() {
      assertThat(truth.unknowns().get(0).unexplainedDyes()).containsExactly("rose");
      assertThat(truth.unknowns().get(0).unexplainedSpots()).containsExactly(2);
    }

    @Test
    void spotsAreNumberedFromTheBaselineUp() {
      LaneTruth unknown = truth.lane("X");

      assertThat(unknown.spots())
          .extracting(SpotTruth::dye)
          .containsExactly("lemon", "rose", "sky");
      assertThat(unknown.spots()).extracting(SpotTruth::number).containsExactly(1, 2, 3);
    }
  }
}
