package wickmark.imaging.paper;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import org.junit.jupiter.api.Test;
import wickmark.imaging.raster.Raster;

class EdgePeelTest {
  private static final int WIDTH = 160;
  private static final int HEIGHT = 240;
  private static final double CELLS_PER_MM = 8;

  private final Raster density = new Raster(WIDTH, HEIGHT);

  private Raster peeled() {
    Raster paper = new Raster(WIDTH, HEIGHT);
    Arrays.fill(paper.cells(), 1);
    return EdgePeel.peel(
        new Raster[] {density, new Raster(WIDTH, HEIGHT), new Raster(WIDTH, HEIGHT)},
        paper,
        CELLS_PER_MM);
  }

  private void stain(int x0, int x1, int y0, int y1) {
    for (int y = y0; y < y1; y++) {
      for (int x = x0; x < x1; x++) {
        density.set(x, y, 0.5f);
      }
    }
  }

  @Test
  void takesOffTheDeskAndTheBlurBehindIt() {
    stain(0, 6, 80, 140);

    Raster paper = peeled();

    assertThat(paper.at(5, 110)).isZero();
    assertThat(paper.at(8, 110)).isZero();
    assertThat(paper.at(12, 110)).isEqualTo(1);
    assertThat(paper.at(5, 40)).isEqualTo(1);
  }

  @Test
  void leavesALineThatBeginsAtTheEdge() {
    stain(0, 40, 100, 104);

    Raster paper = peeled();

    for (int x = 10; x < 40; x++) {
      assertThat(paper.at(x, 102)).isEqualTo(1);
    }
  }

  @Test
  void leavesBlankPaperWhole() {
    assertThat(peeled().cells()).containsOnly(1f);
  }
}
