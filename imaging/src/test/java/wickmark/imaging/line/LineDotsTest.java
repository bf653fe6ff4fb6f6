package wickmark.imaging.line;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import org.junit.jupiter.api.Test;
import wickmark.imaging.paper.DensityMap;
import wickmark.imaging.raster.Raster;

/** A pencilled line across 60 mm, with something on it about its middle. */
class LineDotsTest {
  private static final int WIDTH = 300;
  private static final int HEIGHT = 100;
  private static final double MM = 5;
  private static final int ROW = 50;
  private static final int BINS = 12;

  private final Raster grey = new Raster(WIDTH, HEIGHT);

  LineDotsTest() {
    darken(0, WIDTH, 0.15f);
  }

  private void darken(int from, int to, float density) {
    for (int x = from; x < to; x++) {
      for (int y = ROW - 1; y <= ROW + 1; y++) {
        grey.set(x, y, grey.at(x, y) + density);
      }
    }
  }

  /** About the middle of the line, so many millimetres of it. */
  private void darken(double mm, float density) {
    darken((int) (WIDTH / 2 - mm * MM / 2), (int) (WIDTH / 2 + mm * MM / 2), density);
  }

  private long dots() {
    Raster paper = new Raster(WIDTH, HEIGHT);
    Arrays.fill(paper.cells(), 1);
    DensityMap map =
        new DensityMap(
            new Raster[] {grey, grey, grey},
            paper,
            new Raster(WIDTH, HEIGHT),
            MM,
            new double[] {0.01, 0.01, 0.01});
    double[] x = new double[BINS];
    double[] y = new double[BINS];
    for (int b = 0; b < BINS; b++) {
      x[b] = (b + 0.5) * WIDTH / BINS;
      y[b] = ROW + 0.5;
    }
    double[] contrast = new double[BINS];
    Arrays.fill(contrast, 0.15);
    boolean[] bins = new LineDots(map).bins(new CrossLine(LineKind.PENCIL, x, y, contrast, 0.01));
    long dots = 0;
    for (boolean dotted : bins) {
      dots += dotted ? 1 : 0;
    }
    return dots;
  }

  @Test
  void anEvenLineHasNone() {
    assertThat(dots()).isZero();
  }

  @Test
  void aDotIsOne() {
    darken(2, 0.3f);
    assertThat(dots()).isEqualTo(1);
  }

  /** What ran out of a sample lies about it, paler. */
  @Test
  void aDotInWhatRanOutOfItIsOne() {
    darken(2, 0.5f);
    darken(5, 0.15f);
    assertThat(dots()).isEqualTo(1);
  }

  @Test
  void aSpotAcrossTheLineIsNone() {
    darken(5, 0.3f);
    assertThat(dots()).isZero();
  }
}
