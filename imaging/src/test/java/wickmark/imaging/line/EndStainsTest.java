package wickmark.imaging.line;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import org.junit.jupiter.api.Test;
import wickmark.imaging.raster.Raster;

class EndStainsTest {
  private static final int WIDTH = 240;
  private static final int HEIGHT = 400;
  private static final double MM = 4;

  private final Raster dye = new Raster(WIDTH, HEIGHT);
  private final Raster paper = new Raster(WIDTH, HEIGHT);

  EndStainsTest() {
    Arrays.fill(paper.cells(), 1);
  }

  /** Stains the cells of a disk of a radius, and not those of a smaller one. */
  private void ring(double x, double y, double radius, double hollow) {
    for (int row = 0; row < HEIGHT; row++) {
      for (int column = 0; column < WIDTH; column++) {
        double away = Math.hypot(column + 0.5 - x, row + 0.5 - y);
        if (away < radius && away >= hollow) {
          dye.set(column, row, 0.3f);
        }
      }
    }
  }

  private float sum() {
    Raster left = EndStains.removed(dye, paper, MM);
    float sum = 0;
    for (float cell : left.cells()) {
      sum += cell > 0 ? 1 : 0;
    }
    return sum;
  }

  @Test
  void aFingerOverTheEndIsGone() {
    ring(150, HEIGHT, 30, 0);
    assertThat(sum()).isZero();
  }

  @Test
  void overTheOtherEndToo() {
    ring(10, 0, 30, 0);
    assertThat(sum()).isZero();
  }

  @Test
  void aSpotOnTheSheetStays() {
    ring(150, 200, 12, 0);
    assertThat(sum()).isGreaterThan(400);
  }

  /** Of a square of cloth only the rim seems stained: its middle is taken for a shadow. */
  @Test
  void theRimOfAThingBeyondThePaperStays() {
    ring(120, HEIGHT, 60, 54);
    assertThat(sum()).isGreaterThan(800);
  }
}
