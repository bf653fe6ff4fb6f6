package wickmark.imaging.lane;

import java.util.function.IntToDoubleFunction;
import wickmark.imaging.line.FittedLine;
import wickmark.imaging.paper.DensityMap;
import wickmark.imaging.raster.Raster;

/**
 * Takes the baseline and the front line out of the density: across the line's width each column is
 * bridged straight from one side to the other, so that dye under the line stays.
 */
final class LineRemoval {
  /** Half the width of what is bridged, mm: a blunt pencil's line, or the wake of a tide mark. */
  private static final double HALF_MM = 0.9;

  /** Rows averaged on either side, mm. */
  private static final double FOOT_MM = 0.5;

  private LineRemoval() {}

  static Raster[] remove(DensityMap map, FittedLine baseline, FittedLine front) {
    Raster[] out = new Raster[3];
    for (int c = 0; c < 3; c++) {
      out[c] = map.density()[c].copy();
    }
    bridge(out, x -> front.at(x + 0.5), map.cellsPerMm());
    bridge(out, x -> baseline.at(x + 0.5), map.cellsPerMm());
    return out;
  }

  /**
   * Takes out one line.
   *
   * @param density the channels; they are changed
   * @param row of the line in a column
   * @param mm cells per (nominal) millimetre
   */
  static void bridge(Raster[] density, IntToDoubleFunction row, double mm) {
    for (Raster channel : density) {
      bridge(channel, row, mm);
    }
  }

  private static void bridge(Raster density, IntToDoubleFunction row, double mm) {
    int half = (int) Math.ceil(HALF_MM * mm);
    int foot = (int) Math.max(1, Math.round(FOOT_MM * mm));
    for (int x = 0; x < density.width(); x++) {
      int at = (int) Math.floor(row.applyAsDouble(x));
      int from = at - half;
      int to = at + half;
      if (from - foot < 0 || to + foot >= density.height()) {
        continue;
      }
      double above = 0;
      double below = 0;
      for (int k = 1; k <= foot; k++) {
        above += density.at(x, from - k) / foot;
        below += density.at(x, to + k) / foot;
      }
      for (int y = from; y <= to; y++) {
        double bridge = above + (below - above) * (y - from + 1) / (to - from + 2.0);
        density.set(x, y, (float) Math.min(density.at(x, y), bridge));
      }
    }
  }
}
