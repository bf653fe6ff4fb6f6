package wickmark.imaging.paper;

import wickmark.imaging.raster.Raster;

/**
 * Takes off the paper what is seen of the desk at its edge: hand-cut and cockled edges do not keep
 * to the smooth outline. Going inwards from the mask's edge, cells belong to the desk as long as
 * they are stained; then a little more for the blur.
 */
final class EdgePeel {
  /** How far inwards the desk may reach, mm. */
  private static final double DEEPEST_MM = 2.2;

  /** Density from which a cell at the edge is not blank paper. */
  private static final float STAINED = 0.05f;

  private static final double BLUR_MM = 0.4;

  private EdgePeel() {}

  static Raster peel(Raster[] density, Raster paper, double cellsPerMm) {
    Raster out = paper.copy();
    int deepest = (int) Math.ceil(DEEPEST_MM * cellsPerMm);
    int blur = (int) Math.ceil(BLUR_MM * cellsPerMm);
    int w = paper.width();
    int h = paper.height();
    for (int y = 0; y < h; y++) {
      walk(density, paper, out, y * w, 1, w, deepest, blur);
      walk(density, paper, out, y * w + w - 1, -1, w, deepest, blur);
    }
    for (int x = 0; x < w; x++) {
      walk(density, paper, out, x, w, h, deepest, blur);
      walk(density, paper, out, (h - 1) * w + x, -w, h, deepest, blur);
    }
    return out;
  }

  private static void walk(
      Raster[] density,
      Raster paper,
      Raster out,
      int start,
      int step,
      int count,
      int deepest,
      int blur) {
    int i = 0;
    while (i < count && paper.cells()[start + i * step] == 0) {
      i++;
    }
    int first = i;
    while (i < count && i - first < deepest && stained(density, start + i * step)) {
      i++;
    }
    if (i == first) {
      return;
    }
    int to = Math.min(count, i + blur);
    for (int k = first; k < to; k++) {
      out.cells()[start + k * step] = 0;
    }
  }

  private static boolean stained(Raster[] density, int i) {
    return Math.max(density[0].cells()[i], Math.max(density[1].cells()[i], density[2].cells()[i]))
        > STAINED;
  }
}
