package wickmark.imaging.raster;

/**
 * Grey-scale morphology by a square around each cell, cut off where the raster ends. Each row and
 * column takes one pass: a queue keeps what may yet be the extreme of a window.
 */
public final class SquareMorphology {
  private SquareMorphology() {}

  /** The least value of the 2 · radius + 1 cells to each side. */
  public static Raster eroded(Raster in, int radius) {
    return extreme(in, radius, -1);
  }

  /** The greatest value of the 2 · radius + 1 cells to each side. */
  public static Raster dilated(Raster in, int radius) {
    return extreme(in, radius, 1);
  }

  /** What is higher than all around and narrower than the square taken off. */
  public static Raster opened(Raster in, int radius) {
    return dilated(eroded(in, radius), radius);
  }

  /** What is lower than all around and narrower than the square filled up. */
  public static Raster closed(Raster in, int radius) {
    return eroded(dilated(in, radius), radius);
  }

  private static Raster extreme(Raster in, int radius, int sign) {
    int w = in.width();
    int h = in.height();
    float[] rows = new float[w * h];
    float[] out = new float[w * h];
    int[] queue = new int[Math.max(w, h)];
    for (int y = 0; y < h; y++) {
      along(in.cells(), rows, y * w, 1, w, radius, sign, queue);
    }
    for (int x = 0; x < w; x++) {
      along(rows, out, x, w, h, radius, sign, queue);
    }
    return new Raster(w, h, out);
  }

  private static void along(
      float[] in, float[] out, int start, int step, int count, int radius, int sign, int[] queue) {
    int first = 0;
    int last = -1;
    for (int i = 0; i < count + radius; i++) {
      if (i < count) {
        float value = sign * in[start + i * step];
        while (last >= first && sign * in[start + queue[last] * step] <= value) {
          last--;
        }
        last++;
        queue[last] = i;
      }
      int middle = i - radius;
      if (middle >= 0) {
        while (queue[first] < middle - radius) {
          first++;
        }
        out[start + middle * step] = in[start + queue[first] * step];
      }
    }
  }
}
