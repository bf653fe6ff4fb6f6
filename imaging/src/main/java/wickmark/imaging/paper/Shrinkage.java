package wickmark.imaging.paper;

import wickmark.imaging.raster.Raster;

/** Takes a margin off a mask. */
final class Shrinkage {
  private Shrinkage() {}

  /**
   * Keeps the cells that lie farther than the margin (in cells, along rows and columns) from any
   * cell that is 0 and from the raster's border.
   */
  static Raster awayFromEdge(Raster mask, double margin) {
    int m = (int) Math.ceil(margin);
    return erodedDown(erodedAcross(mask, m), m);
  }

  private static Raster erodedAcross(Raster in, int margin) {
    int w = in.width();
    Raster out = new Raster(w, in.height());
    for (int row = 0; row < in.cells().length; row += w) {
      int run = 0;
      for (int x = 0; x < w; x++) {
        run = in.cells()[row + x] > 0 ? run + 1 : 0;
        if (run > 2 * margin) {
          out.cells()[row + x - margin] = 1;
        }
      }
    }
    return out;
  }

  /** All columns side by side, row by row, as they lie in memory. */
  private static Raster erodedDown(Raster in, int margin) {
    int w = in.width();
    Raster out = new Raster(w, in.height());
    int[] run = new int[w];
    for (int row = 0; row < in.cells().length; row += w) {
      for (int x = 0; x < w; x++) {
        run[x] = in.cells()[row + x] > 0 ? run[x] + 1 : 0;
        if (run[x] > 2 * margin) {
          out.cells()[row + x - margin * w] = 1;
        }
      }
    }
    return out;
  }
}
