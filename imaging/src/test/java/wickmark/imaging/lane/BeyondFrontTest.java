package wickmark.imaging.lane;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import org.junit.jupiter.api.Test;
import wickmark.imaging.line.FittedLine;
import wickmark.imaging.paper.DensityMap;
import wickmark.imaging.raster.Raster;

/** No dye runs further than the solvent (common practice). */
class BeyondFrontTest {
  private static final int MM = 8;
  private static final int WIDTH = 30 * MM;
  private static final int HEIGHT = 60 * MM;
  private static final double FRONT_MM = 20;

  @Test
  void seesASpotBeyond() {
    assertThat(beyond(8, 0.12, 0.02)).isTrue();
  }

  @Test
  void pencilIsNoDye() {
    assertThat(beyond(8, 0.3, 0.3)).isFalse();
  }

  /** Black is never quite without colour. */
  @Test
  void aDarkPenOnThePaperIsNoDye() {
    assertThat(beyond(8, 1.4, 1.2)).isFalse();
  }

  @Test
  void aSpotThatRanWithTheFrontIsNotBeyond() {
    assertThat(beyond(20.5, 0.3, 0.02)).isFalse();
  }

  /** A round blot of so much red density, and so much of the others, so far from the upper edge. */
  private static boolean beyond(double fromTopMm, double red, double others) {
    Raster[] density = new Raster[3];
    for (int c = 0; c < 3; c++) {
      density[c] = new Raster(WIDTH, HEIGHT);
      for (int y = 0; y < HEIGHT; y++) {
        for (int x = 0; x < WIDTH; x++) {
          double dx = (x + 0.5) / MM - 15;
          double dy = (y + 0.5) / MM - fromTopMm;
          double shape = StrictMath.exp(-(dx * dx + dy * dy) / 2);
          density[c].set(x, y, (float) ((c == 0 ? red : others) * shape));
        }
      }
    }
    Raster paper = new Raster(WIDTH, HEIGHT);
    Arrays.fill(paper.cells(), 1);
    DensityMap map =
        new DensityMap(
            density, paper, new Raster(WIDTH, HEIGHT), MM, new double[] {0.004, 0.004, 0.004});
    double y = FRONT_MM * MM;
    return BeyondFront.holdsDye(
        map, FittedLine.byHand(new double[] {0, y}, new double[] {WIDTH, y}, 0.2, WIDTH));
  }
}
