package wickmark.imaging.raster;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import org.junit.jupiter.api.Test;

class SquareMorphologyTest {
  private static final int WIDTH = 23;
  private static final int HEIGHT = 17;

  private final Raster chance = new Raster(WIDTH, HEIGHT);

  SquareMorphologyTest() {
    Random random = new Random(3);
    for (int i = 0; i < chance.cells().length; i++) {
      chance.cells()[i] = random.nextInt(40);
    }
  }

  /** By its definition, cell by cell. */
  private static Raster extreme(Raster in, int radius, int sign) {
    Raster out = in.copy();
    for (int y = 0; y < HEIGHT; y++) {
      for (int x = 0; x < WIDTH; x++) {
        for (int j = Math.max(0, y - radius); j <= Math.min(HEIGHT - 1, y + radius); j++) {
          for (int i = Math.max(0, x - radius); i <= Math.min(WIDTH - 1, x + radius); i++) {
            if (sign * in.at(i, j) > sign * out.at(x, y)) {
              out.set(x, y, in.at(i, j));
            }
          }
        }
      }
    }
    return out;
  }

  @Test
  void isAsItIsDefined() {
    for (int radius : new int[] {0, 1, 3, 30}) {
      Raster least = extreme(chance, radius, -1);
      Raster most = extreme(chance, radius, 1);
      assertThat(SquareMorphology.eroded(chance, radius).cells()).isEqualTo(least.cells());
      assertThat(SquareMorphology.dilated(chance, radius).cells()).isEqualTo(most.cells());
      assertThat(SquareMorphology.opened(chance, radius).cells())
          .isEqualTo(extreme(least, radius, 1).cells());
      assertThat(SquareMorphology.closed(chance, radius).cells())
          .isEqualTo(extreme(most, radius, -1).cells());
    }
  }
}
