package wickmark.imaging.line;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import wickmark.imaging.paper.DensityMap;
import wickmark.imaging.raster.Raster;
import wickmark.imaging.raster.Smoothing;

/** A pencil line painted slanting across a sheet of 60 x 30 mm, of known course. */
class LineRefinerTest {
  private static final int MM = 8;
  private static final int WIDTH = 60 * MM;
  private static final int HEIGHT = 30 * MM;
  private static final double SLOPE = StrictMath.tan(StrictMath.toRadians(2));

  @Test
  void aSlantedPencilLineIsFoundToAPartOfACell() {
    FittedLine line = LineRefiner.refine(map(false), coarse());
    for (double x = 2 * MM; x <= WIDTH - 2 * MM; x += MM) {
      assertThat(line.at(x)).isCloseTo(row(x), within(0.05 * MM));
      assertThat(line.uncertaintyAt(x)).isLessThan(0.05 * MM);
    }
    assertThat(line.slope()).isCloseTo(SLOPE, within(0.001));
    assertThat(line.seenShare()).isGreaterThan(0.9);
  }

  @Test
  void writingThatCrossesItDoesNotMoveIt() {
    FittedLine line = LineRefiner.refine(map(true), coarse());
    for (double x = 2 * MM; x <= WIDTH - 2 * MM; x += MM) {
      assertThat(line.at(x)).isCloseTo(row(x), within(0.05 * MM));
    }
  }

  @Test
  void aTideMarkThatIsSeenInHalfOfTheWidthIsNone() {
    FittedLine throughout = LineRefiner.refine(tide(WIDTH), coarse(LineKind.TIDE_MARK));
    FittedLine nowhere = LineRefiner.refine(tide(0), coarse(LineKind.TIDE_MARK));

    assertThat(throughout.certainty()).isEqualTo(0.9);
    assertThat(nowhere.certainty()).isLessThan(0.2);
  }

  @Test
  void whatLiesOverATideMarkIsNotHeldAgainstIt() {
    DensityMap map = tide(WIDTH);
    for (int x = 0; x < 0.4 * WIDTH; x++) {
      for (int y = 0; y < HEIGHT; y++) {
        map.paper().set(x, y, 0);
      }
    }

    FittedLine line = LineRefiner.refine(map, coarse(LineKind.TIDE_MARK));

    assertThat(line.certainty()).isEqualTo(0.9);
    assertThat(line.seenShare()).isLessThan(0.65);
  }

  private static double row(double column) {
    return 14.3 * MM + SLOPE * (column - WIDTH / 2.0);
  }

  /** The search gives the course to a third of a millimetre. */
  private static Layout.LinePath coarse() {
    return coarse(LineKind.PENCIL);
  }

  private static Layout.LinePath coarse(LineKind kind) {
    List<Double> x = new ArrayList<>();
    List<Double> y = new ArrayList<>();
    for (int i = 0; i <= 10; i++) {
      x.add(i / 10.0);
      y.add((row(i * WIDTH / 10.0) + (i % 2 == 0 ? 0.33 : -0.33) * MM) / HEIGHT);
    }
    return new Layout.LinePath(kind, x, y, 0.9);
  }

  /** A line of 0.12 in density and 0.5 mm in width, broken up by the paper's grain. */
  private static DensityMap map(boolean writing) {
    Random chance = new Random(9);
    Raster density = new Raster(WIDTH, HEIGHT);
    for (int x = 0; x < WIDTH; x++) {
      double dark = 0.12 * (0.5 + chance.nextDouble());
      for (int y = 0; y < HEIGHT; y++) {
        double z = (y + 0.5 - row(x + 0.5)) / (0.21 * MM);
        double d = dark * StrictMath.exp(-z * z / 2);
        boolean stroke = writing && x / MM % 15 == 7 && Math.abs(y - row(x) - 1.5 * MM) < 2 * MM;
        d += (stroke ? 0.3 : 0) + 0.012 * chance.nextGaussian();
        density.set(x, y, (float) d);
      }
    }
    Raster paper = new Raster(WIDTH, HEIGHT);
    Arrays.fill(paper.cells(), 1);
    return new DensityMap(
        new Raster[] {density, density.copy(), density.copy()},
        paper,
        new Raster(WIDTH, HEIGHT),
        MM,
        new double[] {0.012, 0.012, 0.012});
  }

  /** A brownish mark, 0.03 deep in blue and 0.7 mm wide, in the first columns of grained paper. */
  private static DensityMap tide(int columns) {
    Random chance = new Random(4);
    double[] brown = {0.012, 0.02, 0.03};
    Raster[] density = new Raster[3];
    for (int c = 0; c < 3; c++) {
      Raster grain = new Raster(WIDTH, HEIGHT);
      for (int i = 0; i < grain.cells().length; i++) {
        grain.cells()[i] = (float) (0.05 * chance.nextGaussian());
      }
      density[c] = Smoothing.gaussian(grain, 0.2 * MM);
      for (int x = 0; x < columns; x++) {
        for (int y = 0; y < HEIGHT; y++) {
          double z = (y + 0.5 - row(x + 0.5)) / (0.3 * MM);
          double d = brown[c] * StrictMath.exp(-z * z / 2);
          density[c].set(x, y, (float) (density[c].at(x, y) + d));
        }
      }
    }
    Raster paper = new Raster(WIDTH, HEIGHT);
    Arrays.fill(paper.cells(), 1);
    return new DensityMap(
        density, paper, new Raster(WIDTH, HEIGHT), MM, new double[] {0.01, 0.01, 0.01});
  }
}
