package wickmark.imaging.line;

import java.util.Arrays;
import wickmark.imaging.raster.Figure;
import wickmark.imaging.raster.Raster;

/**
 * Coloured places that come in over the first or the last row of a sheet: a finger that holds it, a
 * clip, what lies beyond a corner that is missing, a corner in other light. Dye begins at the
 * baseline, so it does not reach the end below.
 */
final class EndStains {
  /** How near the end a stain begins that reaches it: the outermost rim of paper is shaded, mm. */
  private static final double AT_END_MM = 1;

  /**
   * Least part of its box that such a thing fills: a finger does three quarters, a corner half. The
   * rims of squares of cloth beyond the paper's end fill a quarter.
   */
  private static final double SOLID = 0.4;

  private EndStains() {}

  /**
   * All other dye.
   *
   * @param dye 0 where there is none
   * @param paper 0 where there is none: where the sheet ends before the map does
   */
  static Raster removed(Raster dye, Raster paper, double cellsPerMm) {
    boolean[] atEnd = atEnd(paper, cellsPerMm);
    Raster out = dye.copy();
    for (Figure figure : Figure.in(dye)) {
      double box = figure.columns() * (double) figure.rows();
      if (figure.cells().length > SOLID * box
          && Arrays.stream(figure.cells()).anyMatch(i -> atEnd[i])) {
        Arrays.stream(figure.cells()).forEach(i -> out.cells()[i] = 0);
      }
    }
    return out;
  }

  /** Whether a cell is among its column's first or last cells of paper. */
  static boolean[] atEnd(Raster paper, double cellsPerMm) {
    int rim = (int) Math.ceil(AT_END_MM * cellsPerMm);
    boolean[] cells = new boolean[paper.cells().length];
    for (int x = 0; x < paper.width(); x++) {
      mark(cells, paper, x, 0, 1, rim);
      mark(cells, paper, x, paper.height() - 1, -1, rim);
    }
    return cells;
  }

  private static void mark(boolean[] cells, Raster paper, int x, int end, int step, int rim) {
    int y = end;
    while (y >= 0 && y < paper.height() && paper.at(x, y) == 0) {
      y += step;
    }
    for (int k = 0; k < rim && y >= 0 && y < paper.height(); k++, y += step) {
      cells[y * paper.width() + x] = true;
    }
  }
}
