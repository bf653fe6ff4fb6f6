package wickmark.imaging.raster;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

class FigureTest {
  /** 1 where the drawing has a letter. */
  private static Raster mask(String... rows) {
    Raster mask = new Raster(rows[0].length(), rows.length);
    for (int y = 0; y < rows.length; y++) {
      for (int x = 0; x < rows[y].length(); x++) {
        mask.set(x, y, rows[y].charAt(x) == '.' ? 0 : 1);
      }
    }
    return mask;
  }

  private static Raster all(Raster like) {
    Raster ground = new Raster(like.width(), like.height());
    Arrays.fill(ground.cells(), 1);
    return ground;
  }

  @Test
  void whatTouchesOnlyAtACornerIsApart() {
    List<Figure> figures = Figure.in(mask("aa..", "aa..", "..bb", "..b."));

    assertThat(figures).hasSize(2);
    assertThat(figures.get(0).cells()).containsExactlyInAnyOrder(0, 1, 4, 5);
    assertThat(figures.get(1).left()).isEqualTo(2);
    assertThat(figures.get(1).bottom()).isEqualTo(3);
    assertThat(figures.get(1).columns()).isEqualTo(2);
  }

  @Test
  void aRingHasWhatItSurroundsWithin() {
    Raster ring = mask("......", ".####.", ".#..#.", ".####.", "......");
    assertThat(Figure.in(ring).get(0).within(all(ring)).cells())
        .containsExactlyInAnyOrder(2 * 6 + 2, 2 * 6 + 3);
  }

  @Test
  void anOpenRingHasNothingWithin() {
    Raster open = mask("......", ".####.", ".#..#.", ".##.#.", "......");
    assertThat(Figure.in(open).get(0).within(all(open)).cells()).isEmpty();
  }

  @Test
  void theGroundsEndClosesARing() {
    Raster half = mask("......", "##....", "..#...", "##....", "......");
    Raster joined = mask("......", "###...", "..#...", "###...", "......");
    assertThat(Figure.in(joined).get(0).within(all(joined)).cells())
        .containsExactlyInAnyOrder(2 * 6, 2 * 6 + 1);
    assertThat(Figure.in(half).get(0).within(all(half)).cells()).isEmpty();
  }
}
