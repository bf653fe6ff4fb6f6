package wickmark.imaging.paper;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import wickmark.imaging.photo.PhotoPoint;
import wickmark.imaging.pose.PlaneView;
import wickmark.imaging.raster.ColourRaster;
import wickmark.imaging.raster.Raster;
import wickmark.imaging.raster.Smoothing;
import wickmark.imaging.straight.StraightStrip;
import wickmark.imaging.straight.StripFrame;

/** Sheets of 50 x 80 mm, painted in light. */
class DensityMapTest {
  private static final int MM = 8;
  private static final int WIDTH = 50 * MM;
  private static final int HEIGHT = 80 * MM;

  /** Column at which a shadow begins on the upper edge; it slants to the right. */
  private static final double SHADOW = 21.0 * MM;

  private static final double[] SPOT = {0.02, 0.42, 0.23};

  /** Raspberry, orange and egg yellow from the top, so far apart that they hardly add up. */
  private static final double[][] COLUMN = {{0, 0.5, 0.28}, {0, 0.13, 0.37}, {0, 0.08, 0.45}};

  private static final double[] COLUMN_MM = {62, 82, 101};

  private static final int RIBBON_MM = 4;

  /** Standard deviation of a cell's light, as a share of it. */
  private static final double NOISE = 0.01;

  @Test
  void blankPaperHasNoDensityWhateverTheLight() {
    DensityMap map = DensityMap.of(sheet(true, false), MM);
    for (int c = 0; c < 3; c++) {
      Raster smooth = Smoothing.gaussian(map.density()[c], 0.5 * MM);
      double[] away = new double[WIDTH * HEIGHT];
      int n = 0;
      for (int y = 2 * MM; y < HEIGHT - 2 * MM; y++) {
        for (int x = 2 * MM; x < WIDTH - 2 * MM; x++) {
          if (Math.abs(x - edge(y)) > 2 * MM) {
            away[n++] = Math.abs(smooth.at(x, y));
          }
        }
      }
      Arrays.sort(away, 0, n);
      assertThat(away[n / 2]).as("half of the cells").isLessThan(0.003);
      assertThat(away[(int) (0.98 * n)]).as("all but one in fifty").isLessThan(0.012);
      // The least spot that is reported has 0.04. Worst are the sheet's lower rim, where light is
      // extrapolated, and the third millimetre from the edge of the shadow.
      assertThat(away[n - 1]).as("every cell").isLessThan(0.03);
    }
  }

  @Test
  void theEdgeOfAShadowIsKnownAsSteep() {
    DensityMap map = DensityMap.of(sheet(true, false), MM);
    int y = HEIGHT / 2;
    assertThat(map.steepness().at((int) edge(y), y)).isGreaterThan(0.05f);
    assertThat(map.steepness().at(WIDTH - 6 * MM, y)).isLessThan(0.01f);
  }

  /** Where a shadow's edge meets the paper's at 30° there is a tip too narrow for any spot. */
  @Test
  void theTipOfAShadowAtThePapersEdgeIsNoDye() {
    double slope = StrictMath.tan(Math.PI / 6);
    Random chance = new Random(7);
    DensityMap map =
        DensityMap.of(
            painted(
                (x, y, c) ->
                    (x < slope * (y - 20 * MM) ? 0.45 : 0.75)
                        * (1 + NOISE * chance.nextGaussian())),
            MM);
    Raster smooth = Smoothing.gaussian(map.density()[1], 0.4 * MM);
    int stained = 0;
    for (int y = 0; y < HEIGHT; y++) {
      for (int x = 0; x < WIDTH; x++) {
        double away = Math.abs(x - slope * (y - 20 * MM)) * Math.cos(Math.PI / 6);
        boolean counts = map.paper().at(x, y) > 0 && away > MM;
        stained += counts && smooth.at(x, y) > 0.04 ? 1 : 0;
      }
    }
    // 2.4 mm² of it were, when the paper's end was the end of what counts.
    assertThat(stained / (double) (MM * MM)).isLessThan(1);
  }

  /**
   * A flash in warm light: red is white where blue is not yet, and there the tint seems to change.
   */
  @Test
  void whereAChannelIsWhiteThereIsNoDye() {
    double[] warm = {1, 0.9, 0.72};
    Random chance = new Random(9);
    DensityMap map =
        DensityMap.of(
            painted(
                (x, y, c) -> {
                  double away = Math.hypot(x, y - HEIGHT / 2.0) / (16 * MM);
                  double light = warm[c] * (0.8 + 0.5 * StrictMath.exp(-away * away / 2));
                  return Math.min(1, light * (1 + NOISE * chance.nextGaussian()));
                }),
            MM);
    double most = 0;
    for (int c = 0; c < 3; c++) {
      Raster smooth = Smoothing.gaussian(map.density()[c], 0.5 * MM);
      for (int y = 4 * MM; y < HEIGHT - 4 * MM; y++) {
        for (int x = 4 * MM; x < WIDTH - 4 * MM; x++) {
          most = Math.max(most, smooth.at(x, y));
        }
      }
    }
    // The least spot that is reported has 0.04.
    assertThat(most).isLessThan(0.02);
  }

  /**
   * Sun and shade in warm light: the sunlit half is white in all channels, so that its tint seems
   * to be another than that of the shade.
   */
  @Test
  void besideWhitePaperThereIsNoDyeInTheShade() {
    double[] warm = {1, 0.9, 0.72};
    Random chance = new Random(13);
    DensityMap map =
        DensityMap.of(
            painted(
                (x, y, c) ->
                    Math.min(
                        1,
                        warm[c]
                            * (x < edge((int) y) ? 2 : 0.6)
                            * (1 + NOISE * chance.nextGaussian()))),
            MM);
    Raster chroma = Smoothing.gaussian(map.chroma(), 0.5 * MM);
    double most = 0;
    for (int y = 4 * MM; y < HEIGHT - 4 * MM; y++) {
      for (int x = (int) edge(y) + MM; x < WIDTH - 4 * MM; x++) {
        most = Math.max(most, chroma.at(x, y));
      }
    }
    // Noise alone makes 0.01 of it.
    assertThat(most).isLessThan(0.02);
  }

  /** Red is white: it cuts the pencil's density short, and green and blue have all of it. */
  @Test
  void pencilIsGreyWhereAChannelIsWhite() {
    double[] warm = {1.25, 0.9, 0.7};
    double pencil = 0.08;
    DensityMap map =
        DensityMap.of(
            painted(
                (x, y, c) -> {
                  boolean drawn = Math.abs(y - HEIGHT / 2.0) < 0.3 * MM;
                  return Math.min(1, warm[c] * (drawn ? StrictMath.pow(10, -pencil) : 1));
                }),
            MM);
    assertThat(map.neutral().at(WIDTH / 2, HEIGHT / 2)).isCloseTo((float) pencil, within(0.005f));
    assertThat(map.turned().neutral().at(HEIGHT / 2, WIDTH / 2))
        .isCloseTo((float) pencil, within(0.005f));
    assertThat(map.white().all(WIDTH / 2, HEIGHT / 2)).isFalse();
  }

  /**
   * A window's bar 9 mm wide in the sun, with a rim of 2 mm: in its midst the sky's light alone is
   * left. One spot lies in it, one on its rim.
   */
  @Test
  void theShadowOfANarrowThingIsNoDye() {
    DensityMap map = DensityMap.of(underABar(), MM);
    for (int c = 0; c < 3; c++) {
      Raster smooth = Smoothing.gaussian(map.density()[c], 0.5 * MM);
      double most = 0;
      for (int y = 2 * MM; y < HEIGHT - 2 * MM; y++) {
        for (int x = 2 * MM; x < WIDTH - 2 * MM; x++) {
          if (Math.abs(x - IN_BAR[0]) > 8 * MM && Math.abs(x - ON_RIM[0]) > 8 * MM) {
            most = Math.max(most, smooth.at(x, y) - map.unsure(x, y));
          }
        }
      }
      // The least spot that is reported has 0.04; the bar itself has up to 0.55.
      assertThat(most).isLessThan(0.03);
    }
    for (double[] at : List.of(IN_BAR, ON_RIM)) {
      for (int c = 0; c < 3; c++) {
        double peak = Smoothing.gaussian(map.density()[c], 3).at((int) at[0], (int) at[1]);
        assertThat(peak).isCloseTo(SPOT[c], within(0.15 * SPOT[c] + 0.03));
      }
    }
    assertThat(map.shade().at((int) IN_BAR[0], (int) IN_BAR[1])).isGreaterThan(0.9f);
    assertThat(map.shade().at(WIDTH / 2, 10 * MM)).isZero();
  }

  /** An overloaded black spot 11 mm wide, flat in its midst, is as grey as a shadow. */
  @Test
  void aLargeGreySpotIsNoShadow() {
    Random chance = new Random(19);
    DensityMap map =
        DensityMap.of(
            painted(
                (x, y, c) -> {
                  double away = Math.hypot(x - WIDTH / 2.0, y - HEIGHT / 2.0) / (5.5 * MM);
                  double dye = 0.5 * StrictMath.exp(-Math.pow(away, 6));
                  return 0.75 * StrictMath.pow(10, -dye) * (1 + NOISE * chance.nextGaussian());
                }),
            MM);
    assertThat(map.shade().at(WIDTH / 2, HEIGHT / 2)).isZero();
    assertThat(map.density()[1].at(WIDTH / 2, HEIGHT / 2)).isCloseTo(0.5f, within(0.05f));
  }

  /** Places of a spot in the midst of the bar's shadow and of one on its rim. */
  private static final double[] IN_BAR = {14 * MM, bar(14 * MM)};

  private static final double[] ON_RIM = {36 * MM, bar(36 * MM) + 4.5 * MM};

  private static double bar(double x) {
    return 28 * MM + 0.4 * x;
  }

  /** A sheet under a bar. */
  private static StraightStrip underABar() {
    Random chance = new Random(17);
    double[] direct = {0.6, 0.55, 0.46};
    double[] sky = {0.2, 0.24, 0.3};
    return painted(
        (x, y, c) -> {
          double inside = 4.5 - Math.abs(y - bar(x)) / MM / Math.hypot(1, 0.4);
          double lit = 1 - Math.min(1, Math.max(0, inside / 2 + 0.5));
          double dye = 0;
          for (double[] at : List.of(IN_BAR, ON_RIM)) {
            double away = Math.hypot(x - at[0], y - at[1]) / (2 * MM);
            dye += StrictMath.exp(-away * away / 2);
          }
          return (sky[c] + lit * direct[c])
              * StrictMath.pow(10, -dye * SPOT[c])
              * (1 + NOISE * chance.nextGaussian());
        });
  }

  @Test
  void aSpotKeepsItsDensity() {
    DensityMap map = DensityMap.of(sheet(true, true), MM);
    for (int c = 0; c < 3; c++) {
      double peak = Smoothing.gaussian(map.density()[c], 2).at(WIDTH * 7 / 10, HEIGHT / 2);
      assertThat(peak).isCloseTo(SPOT[c], within(0.1 * SPOT[c] + 0.004));
    }
  }

  /**
   * A yellow dye lets red through (Beer and Lambert: in each channel its density is in proportion
   * to its absorption there), so there is no red density on it, in whatever light it lies.
   */
  @Test
  void whatADyeLetsThroughIsBlankPaperInMixedLight() {
    DensityMap map = DensityMap.of(mixedLight(), MM);
    Raster red = Smoothing.gaussian(map.density()[0], MM);
    double most = 0;
    for (int y = 30 * MM; y < 62 * MM; y++) {
      most = Math.max(most, Math.abs(red.at(WIDTH / 2, y)));
    }
    assertThat(most).isLessThan(0.004);
  }

  /** The lamp's share rises from the sheet's foot to its top; a column of yellow in the middle. */
  private static StraightStrip mixedLight() {
    Random chance = new Random(11);
    double[] foot = {0.62, 0.66, 0.72};
    double[] top = {0.8, 0.74, 0.66};
    double[] yellow = {0, 0.02, 0.25};
    return painted(
        (x, y, c) -> {
          double lamp = 1 - y / HEIGHT;
          double dx = (x - WIDTH / 2.0) / (2.6 * MM);
          double dy = Math.max(0, Math.abs(y - 46.0 * MM) - 13 * MM) / (2.6 * MM);
          double dye = StrictMath.exp(-(dx * dx + dy * dy) / 2);
          return (foot[c] + lamp * (top[c] - foot[c]))
              * StrictMath.pow(10, -dye * yellow[c])
              * (1 + NOISE * chance.nextGaussian());
        });
  }

  /** Three dyes that run into one another reach nearly from rim to rim of a ribbon. */
  @Test
  void aColumnOfDyesOnARibbonIsNotTakenForThePaper() {
    DensityMap map = DensityMap.of(ribbon(), RIBBON_MM);
    for (int k = 0; k < COLUMN.length; k++) {
      int row = (int) (COLUMN_MM[k] * RIBBON_MM);
      for (int c = 0; c < 3; c++) {
        double density = Smoothing.gaussian(map.density()[c], 2).at(WIDTH / 2, row);
        assertThat(density).isCloseTo(COLUMN[k][c], within(0.08 * COLUMN[k][c] + 0.008));
      }
    }
  }

  /** A ribbon 17.6 mm wide and 160 mm long in the middle of the cells. */
  private static StraightStrip ribbon() {
    Random chance = new Random(3);
    double[] white = {0.78, 0.77, 0.72};
    StraightStrip sheet =
        painted(
            (x, y, c) -> {
              double dye = 0;
              double across = (x + 0.5 - WIDTH / 2.0) / (2.9 * RIBBON_MM);
              for (int k = 0; k < COLUMN.length; k++) {
                double along = ((y + 0.5) / RIBBON_MM - COLUMN_MM[k]) / 6.6;
                dye += COLUMN[k][c] * StrictMath.exp(-(across * across + along * along) / 2);
              }
              return white[c] * StrictMath.pow(10, -dye) * (1 + NOISE * chance.nextGaussian());
            });
    for (int y = 0; y < HEIGHT; y++) {
      for (int x = 0; x < WIDTH; x++) {
        if (Math.abs(x + 0.5 - WIDTH / 2.0) > 8.8 * RIBBON_MM) {
          sheet.paper().set(x, y, 0);
        }
      }
    }
    return sheet;
  }

  @Test
  void noiseIsThatOfTheCells() {
    DensityMap map = DensityMap.of(sheet(false, false), MM);
    // d(log10 L) = 0.4343 dL / L.
    assertThat(map.noise()[1]).isCloseTo(0.4343 * NOISE, within(0.1 * 0.4343 * NOISE));
  }

  private static double edge(int row) {
    return SHADOW + 0.12 * row;
  }

  private static StraightStrip sheet(boolean unevenLight, boolean spot) {
    Random chance = new Random(5);
    double[] white = {0.78, 0.76, 0.69};
    double[] shade = {0.6, 0.63, 0.68};
    return painted(
        (x, y, c) -> {
          double dx = (x + 0.5 - WIDTH * 0.7) / (2.2 * MM);
          double dy = (y + 0.5 - HEIGHT / 2.0) / (1.9 * MM);
          double dye = spot ? StrictMath.exp(-(dx * dx + dy * dy) / 2) : 0;
          double v = white[c];
          if (unevenLight) {
            v *= 1 - 0.35 * y / HEIGHT - 0.1 * x / WIDTH;
            v *= x < edge((int) y) ? shade[c] : 1;
          }
          return v * StrictMath.pow(10, -dye * SPOT[c]) * (1 + NOISE * chance.nextGaussian());
        });
  }

  /** The light of a cell in one channel. */
  private interface Light {
    double at(double x, double y, int channel);
  }

  private static StraightStrip painted(Light of) {
    float[][] light = new float[3][WIDTH * HEIGHT];
    for (int y = 0; y < HEIGHT; y++) {
      for (int x = 0; x < WIDTH; x++) {
        for (int c = 0; c < 3; c++) {
          light[c][y * WIDTH + x] = (float) of.at(x, y, c);
        }
      }
    }
    Raster paper = new Raster(WIDTH, HEIGHT);
    Arrays.fill(paper.cells(), 1);
    return new StraightStrip(
        frame(),
        new ColourRaster(
            new Raster(WIDTH, HEIGHT, light[0]),
            new Raster(WIDTH, HEIGHT, light[1]),
            new Raster(WIDTH, HEIGHT, light[2])),
        paper);
  }

  private static StripFrame frame() {
    double focal = 4000;
    return StripFrame.around(
        new PlaneView(WIDTH / 2.0, HEIGHT / 2.0, focal, 0, 0, 0),
        List.of(
            new PhotoPoint(0, 0),
            new PhotoPoint(WIDTH, 0),
            new PhotoPoint(WIDTH, HEIGHT),
            new PhotoPoint(0, HEIGHT)),
        1 / focal);
  }
}
