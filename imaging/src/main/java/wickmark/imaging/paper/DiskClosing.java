package wickmark.imaging.paper;

import wickmark.imaging.raster.Raster;

/**
 * The grey-scale closing of mathematical morphology by a disk: what is darker than all around and
 * narrower than the disk is filled up.
 *
 * <p>Half a radius beyond the border of what counts, the values at the border go on. A shadow whose
 * edge meets the paper's at an acute angle has a tip that no disk on the paper reaches, and it
 * would be filled up like a spot; what is dark along the border alone is narrower than that, and
 * filled.
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
    int margin = radius / 2;
    Raster wider = new Raster(in.width() + 2 * margin, in.height() + 2 * margin);
    Raster counts = new Raster(wider.width(), wider.height());
    copyInto(in, margin, wider);
    copyInto(valid, margin, counts);
    for (int step = 0; step < margin; step++) {
      goOn(wider, counts);
    }
    DiskClosing disk = new DiskClosing(counts, radius);
    return disk.extreme(disk.extreme(wider, 1), -1).part(margin, margin, in.width(), in.height());
  }

  private static void copyInto(Raster in, int margin, Raster out) {
    for (int y = 0; y < in.height(); y++) {
      int row = y * in.width();
      int to = (y + margin) * out.width() + margin;
      System.arraycopy(in.cells(), row, out.cells(), to, in.width());
    }
  }

  /** Each place beside what counts takes the mean of its neighbours there, and counts as well. */
  private static void goOn(Raster in, Raster counts) {
    float[] before = counts.cells().clone();
    int w = in.width();
    for (int i = 0; i < before.length; i++) {
      if (before[i] > 0) {
        continue;
      }
      float sum = 0;
      int n = 0;
      for (int at : new int[] {i % w > 0 ? i - 1 : -1, i % w < w - 1 ? i + 1 : -1, i - w, i + w}) {
        if (at >= 0 && at < before.length && before[at] > 0) {
          sum += in.cells()[at];
          n++;
        }
      }
      if (n > 0) {
        in.cells()[i] = sum / n;
        counts.cells()[i] = 1;
      }
    }
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
