package wickmark.imaging.spot;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import org.junit.jupiter.api.Test;
import wickmark.imaging.raster.Raster;

/**
 * A spot's centre against what noise allows at best.
 *
 * <p>No unbiased estimate of a plane Gaussian's place in white noise has a standard deviation below
 * sqrt(2/π) σ/A cells, whatever the spot's size (Cramér-Rao: the Fisher information of the place is
 * the sum of the squared slopes over σ², which for a Gaussian is π A²/(2 σ²); derived, and checked
 * by summing over the cells here). Three channels add their information.
 */
class CentroidBoundTest {
  private static final int MM = OneLane.CELLS_PER_MM;
  private static final int WIDTH = 22 * MM;
  private static final int HEIGHT = 66 * MM;
  private static final double[] HEIGHTS = {0.05, 0.5, 0.28};
  private static final double NOISE = 0.02;
  private static final double SIZE = 2.0 * MM;
  private static final double CENTRE_X = WIDTH / 2.0;
  private static final double CENTRE_Y = 29.37 * MM;
  private static final int RUNS = 40;

  @Test
  void theBoundIsThatOfTheCells() {
    double information = 0;
    for (int y = 0; y < HEIGHT; y++) {
      for (int x = 0; x < WIDTH; x++) {
        double slope = shape(x, y) * (y + 0.5 - CENTRE_Y) / (SIZE * SIZE);
        information += slope * slope / (NOISE * NOISE);
      }
    }
    assertThat(1 / Math.sqrt(information) / NOISE).isBetween(0.797, 0.799);
  }

  @Test
  void theCentreScattersLittleMoreThanNoiseMakesItAtLeast() {
    Random chance = new Random(17);
    double square = 0;
    double mean = 0;
    double said = 0;
    for (int run = 0; run < RUNS; run++) {
      SpotRegion.Centroid centre = spot(chance).centroid();
      double off = centre.y() - CENTRE_Y;
      square += off * off / RUNS;
      mean += off / RUNS;
      said += centre.uncertainty() / RUNS;
    }
    double contrast =
        Math.sqrt(HEIGHTS[0] * HEIGHTS[0] + HEIGHTS[1] * HEIGHTS[1] + HEIGHTS[2] * HEIGHTS[2]);
    double bound = Math.sqrt(2 / Math.PI) * NOISE / contrast;
    double ratio = Math.sqrt(square) / bound;
    // Measured: 2.6, which is 0.07 cells or 0.009 mm; 1.9 if only what is seen counted. Counting
    // the
    // dye down to where it fades costs that much noise, and keeps the centre of a tailing spot.
    assertThat(ratio).isBetween(0.8, 3.0);
    assertThat(mean).as("no lean, in cells").isBetween(-0.03, 0.03);
    assertThat(Math.sqrt(square)).as("what is said of a centre covers it").isLessThan(said);
  }

  private static double shape(int x, int y) {
    double dx = (x + 0.5 - CENTRE_X) / SIZE;
    double dy = (y + 0.5 - CENTRE_Y) / SIZE;
    return StrictMath.exp(-(dx * dx + dy * dy) / 2);
  }

  private static SpotRegion spot(Random chance) {
    Raster[] density = new Raster[3];
    for (int c = 0; c < 3; c++) {
      density[c] = new Raster(WIDTH, HEIGHT);
      for (int y = 0; y < HEIGHT; y++) {
        for (int x = 0; x < WIDTH; x++) {
          double d = HEIGHTS[c] * shape(x, y) + NOISE * chance.nextGaussian();
          density[c].set(x, y, (float) d);
        }
      }
    }
    return OneLane.spot(density, NOISE, CENTRE_X, 58);
  }
}
