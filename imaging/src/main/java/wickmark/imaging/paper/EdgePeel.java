package wickmark.imaging.paper;

import wickmark.imaging.raster.Raster;

/**
 * Takes off the paper what is seen of the desk at its edge: hand-cut and cockled edges do not keep
 * to the smooth outline. Going inwards from the mask's edge, cells belong to the desk as long as
 * they are stained; then a little more for the blur. A line drawn to the edge stays.
 */
final class EdgePeel {
  /** How far inwards the desk may reach, mm. */
  private static final double DEEPEST_MM = 2.2;

  /** Density from which a cell at the edge is not blank paper. */
  private static final float STAINED = 0.05f;

  private static final double BLUR_MM = 0.4;

  /** Pencil that begins at the edge is stained, too, but no wider than this along it, mm. */
  private static final double STROKE_MM = 1.4;

  /** How deep so narrow a part of the desk may reach into a ragged edge, mm. */
  private static final double TOOTH_MM = 0.6;

  private EdgePeel() {}

  static Raster peel(Raster[] density, Raster paper, double cellsPerMm) {
    Raster out = paper.copy();
    int w = paper.width();
    int h = paper.height();
    side(density, paper, out, cellsPerMm, new Side(0, w, 1, h, w));
    side(density, paper, out, cellsPerMm, new Side(w - 1, w, -1, h, w));
    side(density, paper, out, cellsPerMm, new Side(0, 1, w, w, h));
    side(density, paper, out, cellsPerMm, new Side((h - 1) * w, 1, -w, w, h));
    return out;
  }

  /**
   * A side of the map.
   *
   * @param start index of its first cell
   * @param along to the next cell of the side
   * @param inwards to the next cell away from the side
   * @param length of the side, cells
   * @param depth of the map, cells
   */
  private record Side(int start, int along, int inwards, int length, int depth) {
    int cell(int at, int deep) {
      return start + at * along + deep * inwards;
    }
  }

  private static void side(
      Raster[] density, Raster paper, Raster out, double cellsPerMm, Side side) {
    int deepest = (int) Math.ceil(DEEPEST_MM * cellsPerMm);
    int blur = (int) Math.ceil(BLUR_MM * cellsPerMm);
    int[] first = new int[side.length];
    int[] stain = new int[side.length];
    for (int at = 0; at < side.length; at++) {
      int i = 0;
      while (i < side.depth && paper.cells()[side.cell(at, i)] == 0) {
        i++;
      }
      first[at] = i;
      while (i < side.depth && i - first[at] < deepest && stained(density, side.cell(at, i))) {
        i++;
      }
      stain[at] = i - first[at];
    }
    int[] wide = opened(stain, (int) Math.ceil(STROKE_MM * cellsPerMm / 2));
    int tooth = (int) Math.ceil(TOOTH_MM * cellsPerMm);
    for (int at = 0; at < side.length; at++) {
      int desk = Math.min(stain[at], wide[at] + tooth);
      int to = desk == 0 ? 0 : Math.min(side.depth, first[at] + desk + blur);
      for (int k = first[at]; k < to; k++) {
        out.cells()[side.cell(at, k)] = 0;
      }
    }
  }

  /** Morphological opening: what is no wider than twice the reach is taken off. */
  private static int[] opened(int[] values, int reach) {
    int[] least = new int[values.length];
    int[] opened = new int[values.length];
    for (int i = 0; i < values.length; i++) {
      least[i] = values[i];
      for (int k = Math.max(0, i - reach); k <= Math.min(values.length - 1, i + reach); k++) {
        least[i] = Math.min(least[i], values[k]);
      }
    }
    for (int i = 0; i < values.length; i++) {
      for (int k = Math.max(0, i - reach); k <= Math.min(values.length - 1, i + reach); k++) {
        opened[i] = Math.max(opened[i], least[k]);
      }
    }
    return opened;
  }

  private static boolean stained(Raster[] density, int i) {
    return Math.max(density[0].cells()[i], Math.max(density[1].cells()[i], density[2].cells()[i]))
        > STAINED;
  }
}
