package wickmark.imaging.spot;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.Random;
import org.junit.jupiter.api.Test;
import wickmark.imaging.raster.Raster;

/** A figure of 6 mm by 6 mm on grained paper, all of which is asked about. */
class StrokesTest {
  private static final int MM = 8;
  private static final int SIZE = 6 * MM;
  private static final double[] GREY = {1, 1, 1};
  private static final double[] PINK = {0.2, 1, 0.6};

  private final Raster[] density = {grain(1), grain(2), grain(3)};

  @Test
  void pencilLinesWithPaperBetweenThemAreWriting() {
    lines(GREY);

    assertThat(areStrokes()).isTrue();
  }

  @Test
  void aSpotOfGreyDyeIsNone() {
    spot(GREY);

    assertThat(areStrokes()).isFalse();
  }

  @Test
  void aFaintOneWithAPencilledRingIsNone() {
    spot(GREY);
    ring();

    assertThat(areStrokes()).isFalse();
  }

  @Test
  void streaksOfADyeAreNone() {
    lines(PINK);

    assertThat(areStrokes()).isFalse();
  }

  private boolean areStrokes() {
    boolean[] cells = new boolean[SIZE * SIZE];
    Arrays.fill(cells, true);
    return Strokes.are(density, cells, MM);
  }

  private static Raster grain(long seed) {
    Random random = new Random(seed);
    Raster raster = new Raster(SIZE, SIZE);
    for (int i = 0; i < raster.cells().length; i++) {
      raster.cells()[i] = (float) (0.01 * random.nextGaussian());
    }
    return raster;
  }

  /** Three lines of a pencil of 0.4 mm, 2 mm apart. */
  private void lines(double[] colour) {
    for (int x = 0; x < SIZE; x++) {
      double off = (x + 0.5) / MM % 2 - 1;
      for (int y = 0; y < SIZE; y++) {
        add(x, y, colour, 0.15 * StrictMath.exp(-off * off / (2 * 0.17 * 0.17)));
      }
    }
  }

  private void spot(double[] colour) {
    for (int x = 0; x < SIZE; x++) {
      for (int y = 0; y < SIZE; y++) {
        double off = Math.hypot((x + 0.5) / MM - 3, (y + 0.5) / MM - 3) / 1.4;
        add(x, y, colour, 0.08 * StrictMath.exp(-off * off / 2));
      }
    }
  }

  private void ring() {
    for (int x = 0; x < SIZE; x++) {
      for (int y = 0; y < SIZE; y++) {
        double off = Math.hypot((x + 0.5) / MM - 3, (y + 0.5) / MM - 3) - 2.4;
        add(x, y, GREY, 0.08 * StrictMath.exp(-off * off / (2 * 0.17 * 0.17)));
      }
    }
  }

  private void add(int x, int y, double[] colour, double height) {
    for (int c = 0; c < 3; c++) {
      density[c].set(x, y, density[c].at(x, y) + (float) (colour[c] * height));
    }
  }
}
