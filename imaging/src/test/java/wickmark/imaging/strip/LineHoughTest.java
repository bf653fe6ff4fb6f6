package wickmark.imaging.strip;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import wickmark.imaging.raster.ColourRaster;
import wickmark.imaging.raster.Raster;

/** Lines of a painted picture, against the geometry it was painted with. */
class LineHoughTest {
  private static final int WIDTH = 600;
  private static final int HEIGHT = 500;
  private static final int MOST = 60;

  /** A ribbon of paper from 150 to 450 across and from 200 to 270 down, on wood with its grain. */
  private static EdgeMap ribbonAlongTheGrain() {
    float[] light = new float[WIDTH * HEIGHT];
    for (int y = 0; y < HEIGHT; y++) {
      for (int x = 0; x < WIDTH; x++) {
        boolean paper = x >= 150 && x < 450 && y >= 200 && y < 270;
        light[y * WIDTH + x] = paper ? 0.9f : y / 7 % 2 == 0 ? 0.5f : 0.4f;
      }
    }
    Raster grey = new Raster(WIDTH, HEIGHT, light);
    return EdgeMap.of(new ColourRaster(grey, grey, grey));
  }

  private static boolean runsDownAt(EdgeLine line, double x) {
    return Math.abs(line.ny) < 0.03 && Math.abs(line.offset / line.nx - x) < 2;
  }

  @Test
  void theGrainLeavesRoomForTheShortSidesOfARibbon() {
    List<EdgeLine> lines = LineHough.find(ribbonAlongTheGrain(), MOST, 18);

    assertThat(lines).hasSizeLessThanOrEqualTo(MOST);
    assertThat(lines).anyMatch(line -> runsDownAt(line, 150));
    assertThat(lines).anyMatch(line -> runsDownAt(line, 450));
  }

  @Test
  void noneAreFoundWhereThereAreNone() {
    Raster plain = new Raster(WIDTH, HEIGHT);

    assertThat(LineHough.find(EdgeMap.of(new ColourRaster(plain, plain, plain)), MOST, 18))
        .isEmpty();
  }
}
