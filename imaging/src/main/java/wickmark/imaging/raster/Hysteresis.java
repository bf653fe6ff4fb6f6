package wickmark.imaging.raster;

/**
 * Threshold with two levels: what passes the lower and hangs together with what passes the upper.
 */
public final class Hysteresis {
  private Hysteresis() {}

  /**
   * Returns 1 where it holds, else 0.
   *
   * @param upper what a figure passes somewhere
   * @param lower what it passes everywhere
   */
  public static Raster above(Raster in, double upper, double lower) {
    int w = in.width();
    int h = in.height();
    Raster mask = new Raster(w, h);
    int[] stack = new int[w * h];
    int top = 0;
    for (int i = 0; i < w * h; i++) {
      if (in.cells()[i] >= upper && mask.cells()[i] == 0) {
        mask.cells()[i] = 1;
        stack[top++] = i;
        while (top > 0) {
          int at = stack[--top];
          int x = at % w;
          int y = at / w;
          top = push(in, mask, lower, stack, top, x > 0 ? at - 1 : -1);
          top = push(in, mask, lower, stack, top, x < w - 1 ? at + 1 : -1);
          top = push(in, mask, lower, stack, top, y > 0 ? at - w : -1);
          top = push(in, mask, lower, stack, top, y < h - 1 ? at + w : -1);
        }
      }
    }
    return mask;
  }

  private static int push(Raster in, Raster mask, double lower, int[] stack, int top, int i) {
    if (i < 0 || mask.cells()[i] > 0 || in.cells()[i] < lower) {
      return top;
    }
    mask.cells()[i] = 1;
    stack[top] = i;
    return top + 1;
  }
}
