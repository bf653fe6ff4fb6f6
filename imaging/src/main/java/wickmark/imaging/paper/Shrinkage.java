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
    Raster rows = erode(mask, m, true);
    return erode(rows, m, false);
  }

  private static Raster erode(Raster in, int margin, boolean alongRows) {
    int w = in.width();
    int h = in.height();
    Raster out = new Raster(w, h);
    int lines = alongRows ? h : w;
    int length = alongRows ? w : h;
    for (int line = 0; line < lines; line++) {
      int run = 0;
      for (int i = 0; i < length; i++) {
        int index = alongRows ? line * w + i : i * w + line;
        run = in.cells()[index] > 0 ? run + 1 : 0;
        if (run > 2 * margin) {
          int middle = i - margin;
          out.cells()[alongRows ? line * w + middle : middle * w + line] = 1;
        }
      }
    }
    return out;
  }
}
