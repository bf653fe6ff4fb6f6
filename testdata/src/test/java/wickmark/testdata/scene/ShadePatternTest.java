package wickmark.testdata.scene;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import wickmark.testdata.colour.LinearRgb;

class ShadePatternTest {
  private static final LinearRgb HALF = new LinearRgb(0.4, 0.5, 0.6);

  private static float[] light(ShadePattern pattern, double x, double y) {
    float[] rgb = new float[3];
    new Illumination(LightPlan.even().withPatterns(List.of(pattern))).at(x, y, rgb);
    return rgb;
  }

  @Test
  void aBlindsBandsComeAgainAfterTheirPitch() {
    ShadePattern blinds = new ShadePattern.Blinds(90, 30, 4, 12, 6, HALF);

    for (double middle : new double[] {-56, 4, 34, 64}) {
      assertThat(light(blinds, 11, middle)).containsExactly(0.4f, 0.5f, 0.6f);
      assertThat(light(blinds, -50, middle + 15)).containsExactly(1, 1, 1);
      assertThat(blinds.depth().at(0, middle + 6)).isCloseTo(0.5, within(1e-12));
    }
  }

  @Test
  void aBlindsBandsLieSquareToTheirDirection() {
    ShadePattern.Depth depth = new ShadePattern.Blinds(0, 30, 0, 15, 10, HALF).depth();

    assertThat(depth.at(7.5, -40)).isCloseTo(0.5, within(1e-12));
    assertThat(depth.at(7.5, 90)).isCloseTo(0.5, within(1e-12));
    assertThat(depth.at(5, 0)).isGreaterThan(depth.at(9, 0));
  }

  @Test
  void leavesShadeAboutHalfOfTheDeskAndSoftly() {
    ShadePattern.Depth depth = new ShadePattern.Leaves(20, HALF, 7).depth();
    double sum = 0;
    double steepest = 0;
    int light = 0;
    int shade = 0;
    for (int y = 0; y < 400; y++) {
      for (int x = 0; x < 400; x++) {
        double here = depth.at(x, y);
        sum += here;
        light += here < 0.2 ? 1 : 0;
        shade += here > 0.8 ? 1 : 0;
        steepest = Math.max(steepest, Math.abs(depth.at(x + 1, y) - here));
      }
    }

    assertThat(sum / 160_000).isBetween(0.35, 0.65);
    assertThat(light).isGreaterThan(16_000);
    assertThat(shade).isGreaterThan(16_000);
    assertThat(steepest).isLessThan(0.4);
  }
}
