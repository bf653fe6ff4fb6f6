package wickmark.testdata.set;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumSet;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import wickmark.testdata.strip.Blemish;
import wickmark.testdata.strip.Figure;
import wickmark.testdata.strip.LanePlan;
import wickmark.testdata.strip.PencilMark;
import wickmark.testdata.strip.SolventFront;
import wickmark.testdata.strip.StripPlan;

class StripMakerTest {
  private static StripPlan made(long seed, StripFeature feature) {
    return new StripMaker(EnumSet.of(feature), seed).plan();
  }

  private static List<PencilMark.Lettering> names(StripPlan plan) {
    List<String> names = plan.lanes().stream().map(LanePlan::name).toList();
    return plan.marks().stream()
        .filter(PencilMark.Lettering.class::isInstance)
        .map(PencilMark.Lettering.class::cast)
        .filter(words -> names.contains(words.text()))
        .toList();
  }

  private static long aboveFront(StripPlan plan) {
    SolventFront front = plan.lines().front();
    double width = plan.sheet().widthMm();
    return names(plan).stream()
        .filter(n -> n.at().y() > front.heightAt(n.at().x(), width))
        .filter(n -> n.at().y() + n.heightMm() < plan.sheet().heightMm())
        .count();
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5})
  void namesAtTheFrontStandBetweenItAndTheSheetsEnd(long seed) {
    StripPlan plan = made(seed, StripFeature.NAMES_AT_FRONT);

    assertThat(names(plan)).hasSize(plan.lanes().size());
    assertThat(aboveFront(plan)).isEqualTo(plan.lanes().size());
    // A dot or a cross at each origin.
    assertThat(plan.marks().stream().filter(PencilMark.Line.class::isInstance).count())
        .isIn((long) plan.lanes().size(), 2L * plan.lanes().size());
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5})
  void namesAtBothEndsStandThereTwice(long seed) {
    StripPlan plan = made(seed, StripFeature.NAMES_AT_BOTH_ENDS);
    double base = plan.lines().baseline().heightMm();

    assertThat(aboveFront(plan)).isEqualTo(plan.lanes().size());
    assertThat(names(plan).stream().filter(n -> n.at().y() + n.heightMm() < base).count())
        .isEqualTo(plan.lanes().size());
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5})
  void aTideMarkLiesOneToFourMillimetresOffAFrontWithoutOne(long seed) {
    for (StripFeature side :
        List.of(StripFeature.TIDE_ABOVE_FRONT, StripFeature.TIDE_BELOW_FRONT)) {
      StripPlan plan = made(seed, side);
      Blemish.TideMark tide =
          plan.blemishes().stream()
              .filter(Blemish.TideMark.class::isInstance)
              .map(Blemish.TideMark.class::cast)
              .findFirst()
              .orElseThrow();

      assertThat(plan.lines().front().mark()).isEqualTo(SolventFront.Mark.PENCIL);
      assertThat(plan.lines().front().tide()).isZero();
      double off = side == StripFeature.TIDE_ABOVE_FRONT ? 1 : -1;
      assertThat(off * tide.aboveFrontMm()).isBetween(1.0, 4.0);
    }
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5})
  void sidesThatAreNotParallelCloseByTwoToEightPercent(long seed) {
    StripPlan plan = made(seed, StripFeature.TRAPEZOID);
    Figure figure = plan.sheet().cut().figure();

    assertThat((figure.leftInMm() + figure.rightInMm()) / plan.sheet().widthMm())
        .isBetween(0.02, 0.08);
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5})
  void aPointedOrRoundEndStaysBelowNamesAndBaseline(long seed) {
    for (StripFeature end : List.of(StripFeature.POINTED_END, StripFeature.ROUND_END)) {
      StripPlan plan = made(seed, end);
      double reach = plan.sheet().cut().figure().endMm();

      assertThat(reach).isGreaterThan(5);
      assertThat(plan.lines().baseline().heightMm()).isGreaterThan(reach + 10);
      assertThat(names(plan)).allMatch(n -> n.at().y() > reach);
    }
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5})
  void longTicksLeaveTheMiddleFree(long seed) {
    StripPlan plan = made(seed, StripFeature.LONG_TICKS);
    double tick = plan.lines().front().tickMm();

    assertThat(tick).isBetween(12.0, 20.0);
    assertThat(plan.sheet().widthMm() - 2 * tick).isGreaterThan(10);
  }
}
