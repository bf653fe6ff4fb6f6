package wickmark.imaging.raster;

import java.util.Arrays;

/**
 * {@link SquareMorphology} of cells that are 0 or 1: it is enough to count those around, which
 * takes no comparison. Columns are counted side by side, row by row, as they lie in memory.
 */
public final class MaskMorphology {
  private MaskMorphology() {}

  /** 1 where any of the cells so far to each side is. */
  public static Raster dilated(Raster mask, int radius) {
    return spread(mask, radius, 1);
  }

  /** 1 where all of the cells so far to each side are. */
  public static Raster eroded(Raster mask, int radius) {
    return spread(mask, radius, 0);
  }

  /** Gaps narrower than the square filled up. */
  public static Raster closed(Raster mask, int radius) {
    return eroded(dilated(mask, radius), radius);
  }

  /** Where any cell so far to each side has a value there is that value, else the other. */
  private static Raster spread(Raster mask, int radius, int value) {
    int w = mask.width();
    int h = mask.height();
    byte[] across = new byte[w * h];
    for (int row = 0; row < w * h; row += w) {
      across(mask.cells(), row, w, radius, value, across);
    }
    Raster out = new Raster(w, h);
    Arrays.fill(out.cells(), 1 - value);
    int[] count = new int[w];
    for (int y = -radius; y < h; y++) {
      if (y + radius < h) {
        count(across, (y + radius) * w, 1, count);
      }
      if (y - radius > 0) {
        count(across, (y - radius - 1) * w, -1, count);
      }
      for (int x = 0; y >= 0 && x < w; x++) {
        if (count[x] > 0) {
          out.cells()[y * w + x] = value;
        }
      }
    }
    return out;
  }

  private static void across(float[] cells, int row, int w, int radius, int value, byte[] across) {
    int count = 0;
    for (int x = -radius; x < w; x++) {
      if (x + radius < w && cells[row + x + radius] == value) {
        count++;
      }
      if (x - radius > 0 && cells[row + x - radius - 1] == value) {
        count--;
      }
      if (x >= 0 && count > 0) {
        across[row + x] = 1;
      }
    }
  }

  private static void count(byte[] seen, int row, int sign, int[] count) {
    for (int x = 0; x < count.length; x++) {
      count[x] += sign * seen[row + x];
    }
  }
}
