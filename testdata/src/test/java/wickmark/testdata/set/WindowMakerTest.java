package wickmark.testdata.set;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.EnumSet;
import java.util.Set;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import wickmark.testdata.noise.Dice;
import wickmark.testdata.scene.LightPlan;
import wickmark.testdata.scene.Placement;
import wickmark.testdata.scene.ShadePattern;
import wickmark.testdata.strip.Cut;
import wickmark.testdata.strip.Paper;
import wickmark.testdata.strip.Sheet;

class WindowMakerTest {
  private static final Sheet SHEET = new Sheet(60, 120, Paper.FILTER, Cut.SCISSORS);

  private static LightPlan light(long seed, SceneFeature feature) {
    Set<SceneFeature> asked = EnumSet.of(feature);
    Placement placement = new Placement(-12, 5, 90);
    return new WindowMaker(asked, SHEET, placement, new Dice(seed)).over(LightPlan.even());
  }

  private static double normalDeg(LightPlan light) {
    return ((ShadePattern.Blinds) light.patterns().get(0)).normalDeg();
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5})
  void aBlindsBandsLieAcrossTheLanesOrAlongThem(long seed) {
    // The sheet is turned by 90 degrees, so that its lanes run at 180.
    assertThat(normalDeg(light(seed, SceneFeature.BLINDS_ACROSS))).isCloseTo(180, within(12.0));
    assertThat(normalDeg(light(seed, SceneFeature.BLINDS_ALONG))).isCloseTo(90, within(12.0));
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5})
  void theSunIsOnACornerOfTheSheet(long seed) {
    LightPlan.HotSpot sun = light(seed, SceneFeature.BURNT_CORNER).spots().get(0);

    assertThat(Math.abs(sun.xMm() + 12)).isCloseTo(60, within(1e-9));
    assertThat(Math.abs(sun.yMm() - 5)).isCloseTo(30, within(1e-9));
  }
}
