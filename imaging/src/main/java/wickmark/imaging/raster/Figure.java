package wickmark.imaging.raster;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Cells of a mask that hang together, side by side.
 *
 * @param cells their indices
 * @param left the first column
 * @param right the last column
 * @param top the first row
 * @param bottom the last row
 */
public record Figure(int[] cells, int left, int right, int top, int bottom) {
  /** All figures of the cells above 0, in the order of their first cells. */
  public static List<Figure> in(Raster mask) {
    List<Figure> figures = new ArrayList<>();
    boolean[] seen = new boolean[mask.cells().length];
    for (int i = 0; i < seen.length; i++) {
      if (mask.cells()[i] > 0 && !seen[i]) {
        figures.add(from(mask, seen, i));
      }
    }
    return figures;
  }

  private static Figure from(Raster mask, boolean[] seen, int start) {
    int w = mask.width();
    int left = start % w;
    int right = left;
    int top = start / w;
    int bottom = top;
    int[] cells = new int[64];
    cells[0] = start;
    seen[start] = true;
    int n = 1;
    for (int k = 0; k < n; k++) {
      int at = cells[k];
      int x = at % w;
      int y = at / w;
      left = Math.min(left, x);
      right = Math.max(right, x);
      top = Math.min(top, y);
      bottom = Math.max(bottom, y);
      if (n + 4 > cells.length) {
        cells = Arrays.copyOf(cells, 2 * cells.length);
      }
      n = reach(mask, seen, cells, n, x > 0 ? at - 1 : -1);
      n = reach(mask, seen, cells, n, x < w - 1 ? at + 1 : -1);
      n = reach(mask, seen, cells, n, at - w);
      n = reach(mask, seen, cells, n, at + w);
    }
    return new Figure(Arrays.copyOf(cells, n), left, right, top, bottom);
  }

  private static int reach(Raster mask, boolean[] seen, int[] cells, int n, int i) {
    if (i < 0 || i >= seen.length || seen[i] || !(mask.cells()[i] > 0)) {
      return n;
    }
    seen[i] = true;
    cells[n] = i;
    return n + 1;
  }

  public int columns() {
    return right - left + 1;
  }

  public int rows() {
    return bottom - top + 1;
  }

  /**
   * What the figure surrounds: the other cells from which no way leads out past it.
   *
   * @param ground above 0 where ways may lead: its end is a wall
   */
  public Figure within(Raster ground) {
    int w = ground.width();
    Raster open = new Raster(columns() + 2, rows() + 2);
    for (int y = 0; y < open.height(); y++) {
      for (int x = 0; x < open.width(); x++) {
        int px = left - 1 + x;
        int py = top - 1 + y;
        boolean on = px >= 0 && px < w && py >= 0 && py < ground.height();
        open.set(x, y, on && ground.at(px, py) > 0 ? 1 : 0);
      }
    }
    for (int i : cells) {
      open.set(i % w - left + 1, i / w - top + 1, 0);
    }
    int[] inside = new int[open.cells().length];
    int n = 0;
    for (Figure part : in(open)) {
      boolean leadsOut =
          part.left == 0
              || part.top == 0
              || part.right == open.width() - 1
              || part.bottom == open.height() - 1;
      if (!leadsOut) {
        for (int i : part.cells) {
          inside[n++] = (i / open.width() - 1 + top) * w + i % open.width() - 1 + left;
        }
      }
    }
    return new Figure(Arrays.copyOf(inside, n), left, right, top, bottom);
  }
}
