package wickmark.imaging.line;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import org.junit.jupiter.api.Test;
import wickmark.imaging.paper.DensityMap;
import wickmark.imaging.raster.Raster;

/** A sheet of 60 mm by 100 mm. */
class EndGripTest {
  private static final int WIDTH = 240;
  private static final int HEIGHT = 400;
  private static final double MM = 4;

  /** Skin beside white paper: most of the blue is gone, and some green. */
  private static final float[] SKIN = {0.1f, 0.3f, 0.45f};

  private static final float[] SHADE = {0.3f, 0.3f, 0.3f};

  private static boolean isHeld(double x, double y, double radius, float[] colour) {
    Raster[] density = new Raster[3];
    for (int c = 0; c < 3; c++) {
      density[c] = new Raster(WIDTH, HEIGHT);
      for (int i = 0; i < WIDTH * HEIGHT; i++) {
        int row = i / WIDTH;
        double away = Math.hypot(i % WIDTH + 0.5 - x, row + 0.5 - y);
        density[c].cells()[i] = away < radius ? colour[c] : 0;
      }
    }
    Raster paper = new Raster(WIDTH, HEIGHT);
    Arrays.fill(paper.cells(), 1);
    return EndGrip.isOn(
        new DensityMap(
            density, paper, new Raster(WIDTH, HEIGHT), MM, new double[] {0.01, 0.01, 0.01}));
  }

  @Test
  void aFingertipOverAnEndHoldsTheSheet() {
    assertThat(isHeld(100, HEIGHT, 30, SKIN)).isTrue();
    assertThat(isHeld(60, 0, 30, SKIN)).isTrue();
  }

  @Test
  void aShadowDoesNot() {
    assertThat(isHeld(100, HEIGHT, 30, SHADE)).isFalse();
  }

  @Test
  void norDoesASpotOnTheSheet() {
    assertThat(isHeld(100, 200, 30, SKIN)).isFalse();
  }

  /** A stain of 4 mm is less than a fingertip. */
  @Test
  void norALittleDirtAtTheEnd() {
    assertThat(isHeld(100, HEIGHT, 2 * MM, SKIN)).isFalse();
  }
}
