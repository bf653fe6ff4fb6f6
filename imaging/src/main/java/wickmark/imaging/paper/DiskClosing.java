package wickmark.imaging.paper;

import wickmark.imaging.raster.Raster;

/**
 * The grey-scale closing of mathematical morphology by a disk: what is darker than all around and
 * narrower than the disk is filled up.
 */
final class DiskClosing {
  private final Raster valid;
  private final int radius;

  private DiskClosing(Raster valid, int radius) {
    this.valid = valid;
    this.radius = radius;
  }

  /**
   * Closes.
   *
   * @param valid 1 where a place counts
   * @param radius of the disk, places
   */
  static Raster of(Raster in, Raster valid, int radius) {
    DiskClosing disk = new DiskClosing(valid, radius);
    return disk.extreme(disk.extreme(in, 1), -1);
  }

  /** The greatest value (sign 1) or the least (sign −1) of the valid places in a disk around. */
  private Raster extreme(Raster in, int sign) {
    int w = in.width();
    int h = in.height();
    float[] signed = new float[w * h];
    for (int i = 0; i < signed.length; i++) {
      signed[i] = valid.cells()[i] > 0 ? sign * in.cells()[i] : Float.NEGATIVE_INFINITY;
    }
    float[][] across = greatestAcross(signed, w, radius);
    Raster out = in.copy();
    float[] best = new float[w];
    for (int y = 0; y < h; y++) {
      for (int x = 0; x < w; x++) {
        best[x] = sign * in.cells()[y * w + x];
      }
      for (int row = Math.max(0, y - radius); row <= Math.min(h - 1, y + radius); row++) {
        float[] span = across[(int) Math.sqrt(radius * radius - (row - y) * (row - y))];
        for (int x = 0; x < w; x++) {
          best[x] = Math.max(best[x], span[row * w + x]);
        }
      }
      for (int x = 0; x < w; x++) {
        out.cells()[y * w + x] = sign * best[x];
      }
    }
    return out;
  }

  /** For each reach up to a radius the greatest value so far to both sides in the row. */
  private static float[][] greatestAcross(float[] values, int w, int radius) {
    float[][] greatest = new float[radius + 1][];
    greatest[0] = values;
    for (int reach = 1; reach <= radius; reach++) {
      float[] wider = greatest[reach - 1].clone();
      for (int row = 0; row < values.length; row += w) {
        for (int x = reach; x < w; x++) {
          wider[row + x] = Math.max(wider[row + x], values[row + x - reach]);
        }
        for (int x = 0; x < w - reach; x++) {
          wider[row + x] = Math.max(wider[row + x], values[row + x + reach]);
        }
      }
      greatest[reach] = wider;
    }
    return greatest;
  }
}
