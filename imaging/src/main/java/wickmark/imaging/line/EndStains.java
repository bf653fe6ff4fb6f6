package wickmark.imaging.line;

import java.util.ArrayDeque;
import java.util.Deque;
import wickmark.imaging.raster.Raster;

/**
 * Coloured places that come in over the first or the last row of a sheet: a finger that holds it, a
 * clip, what lies beyond a corner that is missing, a corner in other light. Dye begins at the
 * baseline, so it does not reach the end below.
 */
final class EndStains {
  /** How near the end a stain begins that reaches it: the outermost rim of paper is shaded, mm. */
  private static final double AT_END_MM = 1;

  private final Raster stains;

  private EndStains(Raster dye) {
    this.stains = dye.copy();
  }

  /**
   * All other dye.
   *
   * @param dye 0 where there is none
   * @param paper 0 where there is none: where the sheet ends before the map does
   */
  static Raster removed(Raster dye, Raster paper, double cellsPerMm) {
    EndStains ends = new EndStains(dye);
    int rim = (int) Math.ceil(AT_END_MM * cellsPerMm);
    for (int x = 0; x < dye.width(); x++) {
      ends.removeFrom(x, 0, 1, paper, rim);
      ends.removeFrom(x, dye.height() - 1, -1, paper, rim);
    }
    return ends.stains;
  }

  /** Removes what lies within a column's first or last cells of paper. */
  private void removeFrom(int x, int end, int step, Raster paper, int rim) {
    int y = end;
    while (y >= 0 && y < paper.height() && paper.at(x, y) == 0) {
      y += step;
    }
    for (int k = 0; k < rim && y >= 0 && y < paper.height(); k++, y += step) {
      if (stains.at(x, y) > 0) {
        remove(x, y);
      }
    }
  }

  private void remove(int x, int y) {
    Deque<int[]> next = new ArrayDeque<>();
    next.push(new int[] {x, y});
    while (!next.isEmpty()) {
      int[] at = next.pop();
      boolean inside =
          at[0] >= 0 && at[1] >= 0 && at[0] < stains.width() && at[1] < stains.height();
      if (inside && stains.at(at[0], at[1]) > 0) {
        stains.set(at[0], at[1], 0);
        next.push(new int[] {at[0] + 1, at[1]});
        next.push(new int[] {at[0] - 1, at[1]});
        next.push(new int[] {at[0], at[1] + 1});
        next.push(new int[] {at[0], at[1] - 1});
      }
    }
  }
}
