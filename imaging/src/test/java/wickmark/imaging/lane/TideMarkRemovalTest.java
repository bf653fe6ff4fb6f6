package wickmark.imaging.lane;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import wickmark.imaging.line.FittedLine;
import wickmark.imaging.line.LineKind;
import wickmark.imaging.paper.DensityMap;
import wickmark.imaging.raster.Raster;
import wickmark.imaging.raster.Smoothing;

/** The upper part of a sheet, 50 mm wide, with a pencilled front 10 mm below its upper edge. */
class TideMarkRemovalTest {
  private static final double MM = 8;
  private static final int WIDTH = 400;
  private static final int HEIGHT = 320;
  private static final double FRONT = 80;

  /** What solvent washes out of paper absorbs blue most and red least (common practice). */
  private static final double[] BROWN = {0.045, 0.065, 0.1};

  private static final double[] YELLOW = {0.01, 0.06, 0.3};
  private static final double[] LANES_MM = {8, 20, 32, 44};

  private final Raster[] density = {
    new Raster(WIDTH, HEIGHT), new Raster(WIDTH, HEIGHT), new Raster(WIDTH, HEIGHT)
  };

  TideMarkRemovalTest() {
    Random grain = new Random(3);
    for (Raster channel : density) {
      for (int i = 0; i < channel.cells().length; i++) {
        channel.cells()[i] = (float) (0.005 * grain.nextGaussian());
      }
    }
  }

  private interface Amount {
    double at(double x, double y);
  }

  /** Adds a colour in proportion to a function of the place, mm. */
  private void paint(double[] colour, Amount amount) {
    for (int y = 0; y < HEIGHT; y++) {
      for (int x = 0; x < WIDTH; x++) {
        double share = amount.at((x + 0.5) / MM, (y + 0.5) / MM);
        for (int c = 0; c < 3; c++) {
          density[c].cells()[y * WIDTH + x] += (float) (colour[c] * share);
        }
      }
    }
  }

  /** Sharp outside, fading out within 3 mm inside, a millimetre up and down on its way. */
  private void tideMark() {
    paint(
        BROWN,
        (x, y) -> {
          double inside = y - (FRONT / MM - 1 + Math.sin(x / 3));
          return inside < 0 ? Math.exp(-inside * inside / 0.08) : Math.exp(-inside / 1.2);
        });
  }

  private static double spot(double x, double y, double lane, double row) {
    return Math.exp(-((x - lane) * (x - lane) + (y - row) * (y - row)) / (2 * 1.5 * 1.5));
  }

  /** Density in blue after it was taken off, smoothed as for spots. */
  private Raster blue() {
    Raster paper = new Raster(WIDTH, HEIGHT);
    Arrays.fill(paper.cells(), 1);
    DensityMap map =
        new DensityMap(
            density, paper, new Raster(WIDTH, HEIGHT), MM, new double[] {0.005, 0.005, 0.005});
    Raster[] left = {density[0].copy(), density[1].copy(), density[2].copy()};
    TideMarkRemoval.takeOff(map, left, front());
    return Smoothing.gaussian(left[2], 0.45 * MM);
  }

  private static FittedLine front() {
    return new FittedLine(
        LineKind.PENCIL,
        WIDTH / 2.0,
        WIDTH / 2.0,
        List.of(FRONT, 0.0),
        new double[][] {{0.01, 0}, {0, 0.01}},
        0.1,
        1,
        1);
  }

  @Test
  void aTideMarkThatWandersAboutThePencilIsNoDye() {
    tideMark();
    float most = 0;
    for (float cell : blue().cells()) {
      most = Math.max(most, cell);
    }
    // It was 0.07; the least spot that is reported has 0.04 in the mean of the channels.
    assertThat(most).isLessThan(0.03f);
  }

  @Test
  void aSpotJustInsideItKeepsItsDensity() {
    tideMark();
    double row = FRONT / MM + 5;
    paint(YELLOW, (x, y) -> spot(x, y, LANES_MM[1], row));
    double peak = blue().at((int) (LANES_MM[1] * MM), (int) (row * MM));
    // Smoothing alone takes 8 %.
    assertThat(peak).isCloseTo(0.92 * YELLOW[2], within(0.02));
  }

  /** Dye that ran with the front stands in the lanes alone. */
  @Test
  void spotsInAllLanesAtTheFrontAreNoTideMark() {
    for (double lane : LANES_MM) {
      paint(YELLOW, (x, y) -> spot(x, y, lane, FRONT / MM + 1));
    }
    Raster blue = blue();
    for (double lane : LANES_MM) {
      assertThat(blue.at((int) (lane * MM), (int) (FRONT + MM)))
          .isCloseTo((float) (0.92 * YELLOW[2]), within(0.02f));
    }
  }
}
