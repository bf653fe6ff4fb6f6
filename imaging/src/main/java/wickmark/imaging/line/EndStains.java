package wickmark.imaging.line;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import wickmark.imaging.raster.Raster;

/** Coloured places that reach the first or the last row of a sheet. */
final class EndStains {
  /** How near the end a stain begins that reaches it: the outermost rim of paper is shaded, mm. */
  private static final double AT_END_MM = 1;

  private final List<Stain> atFirst;
  private final List<Stain> atLast;

  /** A stain's rows and the dye that it would be. */
  private record Stain(int firstRow, int lastRow, double dye) {}

  private EndStains(List<Stain> atFirst, List<Stain> atLast) {
    this.atFirst = atFirst;
    this.atLast = atLast;
  }

  /**
   * Finds them.
   *
   * @param dye 0 where there is none
   * @param paper 0 where there is none: where the sheet ends before the map does
   */
  static EndStains of(Raster dye, Raster paper, double cellsPerMm) {
    int rim = (int) Math.ceil(AT_END_MM * cellsPerMm);
    return new EndStains(stains(dye, paper, rim, 1), stains(dye, paper, rim, -1));
  }

  /** Those within a rim of the end from which rows are counted with this step. */
  private static List<Stain> stains(Raster dye, Raster paper, int rim, int step) {
    boolean[] seen = new boolean[dye.cells().length];
    List<Stain> stains = new ArrayList<>();
    for (int x = 0; x < dye.width(); x++) {
      int y = step > 0 ? 0 : dye.height() - 1;
      while (y >= 0 && y < dye.height() && paper.at(x, y) == 0) {
        y += step;
      }
      for (int k = 0; k < rim && y >= 0 && y < dye.height(); k++, y += step) {
        if (dye.at(x, y) > 0 && !seen[y * dye.width() + x]) {
          stains.add(stain(dye, seen, y * dye.width() + x));
        }
      }
    }
    return stains;
  }

  private static Stain stain(Raster dye, boolean[] seen, int start) {
    Deque<Integer> next = new ArrayDeque<>(List.of(start));
    seen[start] = true;
    int first = dye.height();
    int last = 0;
    double sum = 0;
    while (!next.isEmpty()) {
      int cell = next.pop();
      int x = cell % dye.width();
      int y = cell / dye.width();
      first = Math.min(first, y);
      last = Math.max(last, y);
      sum += dye.cells()[cell];
      for (int[] step : new int[][] {{1, 0}, {-1, 0}, {0, 1}, {0, -1}}) {
        int nx = x + step[0];
        int ny = y + step[1];
        boolean inside = nx >= 0 && ny >= 0 && nx < dye.width() && ny < dye.height();
        if (inside && !seen[ny * dye.width() + nx] && dye.at(nx, ny) > 0) {
          seen[ny * dye.width() + nx] = true;
          next.push(ny * dye.width() + nx);
        }
      }
    }
    return new Stain(first, last, sum);
  }

  /**
   * The dye of those that lie wholly on the far side of a line and reach the end there.
   *
   * @param towards 1 for the first row's end, −1 for the last row's
   * @param margin of the line, which is no far side, cells
   */
  double beyond(CrossLine line, int towards, double margin) {
    double sum = 0;
    for (Stain stain : towards > 0 ? atFirst : atLast) {
      boolean beyond =
          towards > 0
              ? stain.lastRow < line.level() - margin
              : stain.firstRow > line.level() + margin;
      sum += beyond ? stain.dye : 0;
    }
    return sum;
  }
}
