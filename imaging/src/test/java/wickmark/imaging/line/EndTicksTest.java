package wickmark.imaging.line;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import wickmark.imaging.paper.DensityMap;
import wickmark.imaging.raster.Raster;

/** Strips of 60 mm by 120 mm with a baseline, noise, and marks where a front would be. */
class EndTicksTest {
  private static final double CELLS_PER_MM = 5;
  private static final int WIDTH = 300;
  private static final int HEIGHT = 600;
  private static final double PENCIL = 0.15;
  private static final double FRONT_LEFT = 60;
  private static final double FRONT_RIGHT = 72;

  private final Raster density = noise();

  private static Raster noise() {
    Random random = new Random(5);
    Raster raster = new Raster(WIDTH, HEIGHT);
    for (int i = 0; i < raster.cells().length; i++) {
      raster.cells()[i] = (float) (0.008 * random.nextGaussian());
    }
    return raster;
  }

  /** A pencil stroke of 0.4 mm along the line between the front's two ends. */
  private void stroke(double fromMm, double toMm, double left, double right) {
    for (int x = (int) (fromMm * CELLS_PER_MM); x < toMm * CELLS_PER_MM && x < WIDTH; x++) {
      double at = left + (right - left) * x / WIDTH;
      for (int y = (int) at - 4; y <= at + 4; y++) {
        double off = (y + 0.5 - at) / 1.2;
        density.cells()[y * WIDTH + x] += (float) (PENCIL * StrictMath.exp(-off * off / 2));
      }
    }
  }

  private List<CrossLine> ticks() {
    stroke(0, 60, 500, 500);
    Raster paper = new Raster(WIDTH, HEIGHT);
    java.util.Arrays.fill(paper.cells(), 1);
    DensityMap map =
        new DensityMap(
            new Raster[] {density, density.copy(), density.copy()},
            paper,
            new Raster(WIDTH, HEIGHT),
            CELLS_PER_MM,
            new double[] {0.008, 0.008, 0.008});
    return CrossLineFinder.find(map, SmoothDensities.of(map)).stream()
        .filter(l -> l.kind() == LineKind.TICKS)
        .toList();
  }

  @Test
  void twoTicksAreOneSlantedLine() {
    stroke(0, 4, FRONT_LEFT, FRONT_RIGHT);
    stroke(56, 60, FRONT_LEFT, FRONT_RIGHT);

    List<CrossLine> found = ticks();

    assertThat(found).hasSize(1);
    assertThat(found.get(0).at(0.1 * WIDTH)).isCloseTo(61.2, within(2.0));
    assertThat(found.get(0).at(0.9 * WIDTH)).isCloseTo(70.8, within(2.0));
    assertThat(found.get(0).certainty()).isGreaterThan(0.5);
  }

  @Test
  void longTicksAreTicks() {
    stroke(0, 16, FRONT_LEFT, FRONT_RIGHT);
    stroke(44, 60, FRONT_LEFT, FRONT_RIGHT);

    List<CrossLine> found = ticks();

    assertThat(found).hasSize(1);
    assertThat(found.get(0).at(0.5 * WIDTH)).isCloseTo(66, within(2.0));
  }

  @Test
  void oneTickIsNoFront() {
    stroke(0, 4, FRONT_LEFT, FRONT_RIGHT);

    assertThat(ticks()).isEmpty();
  }

  @Test
  void ticksFarFromOneHeightAreNoFront() {
    stroke(0, 4, 60, 60);
    stroke(56, 60, 160, 160);

    assertThat(ticks()).isEmpty();
  }

  @Test
  void aLineRightAcrossIsNoPairOfTicks() {
    stroke(0, 60, FRONT_LEFT, FRONT_RIGHT);

    assertThat(ticks()).isEmpty();
  }

  @Test
  void noiseHasNone() {
    assertThat(ticks()).isEmpty();
  }
}
