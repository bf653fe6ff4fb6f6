package wickmark.imaging.spot;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;
import wickmark.imaging.raster.Raster;

/** A spot at the end of the trace that its dye left in the paper on its way. */
class StreakBandTest {
  private static final int MM = OneLane.CELLS_PER_MM;
  private static final int WIDTH = 30 * MM;
  private static final int HEIGHT = 80 * MM;
  private static final double NOISE = 0.012;
  private static final double BASELINE = 72;
  private static final double CENTRE = 43;
  private static final double[] YELLOW = {0, 0.05, 0.28};
  private static final double[] BLUE = {0.3, 0.12, 0.02};

  @Test
  void aPaleTraceDoesNotDragTheSpotTowardsTheOrigin() {
    // 0.02 in the blue channel alone: paler than anything that is taken for dye cell by cell.
    SpotRegion spot = spot(YELLOW, 0.07);
    assertThat(distance(spot)).isCloseTo(CENTRE, within(0.1));
    assertThat(spot.box().bottom() / MM).as("the visible end").isLessThan(BASELINE - CENTRE + 9);
  }

  @Test
  void aClearTraceDoesNotEither() {
    assertThat(distance(spot(BLUE, 0.12))).isCloseTo(CENTRE, within(0.15));
  }

  @Test
  void withoutATraceNothingIsTaken() {
    SpotRegion spot = spot(YELLOW, 0);
    assertThat(distance(spot)).isCloseTo(CENTRE, within(0.05));
    assertThat(spot.peakAbsorbance()).isCloseTo(YELLOW[2], within(0.01));
  }

  private static double distance(SpotRegion spot) {
    return BASELINE - spot.centroid().y() / MM;
  }

  /** A Gaussian of 3 mm and, up to its middle, a trace of a part of its density 1.8 mm wide. */
  private static SpotRegion spot(double[] dye, double trace) {
    Random chance = new Random(23);
    Raster[] density = new Raster[3];
    for (int c = 0; c < 3; c++) {
      density[c] = new Raster(WIDTH, HEIGHT);
      for (int y = 0; y < HEIGHT; y++) {
        for (int x = 0; x < WIDTH; x++) {
          double along = BASELINE - (y + 0.5) / MM;
          // The lane leans to the right by a millimetre on its way.
          double across = (x + 0.5) / MM - 15 - along / CENTRE;
          double spot = gaussian(Math.hypot(across / 2.4, (along - CENTRE) / 3));
          double left = along > 0 && along < CENTRE ? trace * gaussian(across / 1.8) : 0;
          density[c].set(x, y, (float) (dye[c] * (spot + left) + NOISE * chance.nextGaussian()));
        }
      }
    }
    return OneLane.spot(density, NOISE, 15.0 * MM, BASELINE);
  }

  private static double gaussian(double z) {
    return StrictMath.exp(-z * z / 2);
  }
}
