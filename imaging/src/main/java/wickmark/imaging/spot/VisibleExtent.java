package wickmark.imaging.spot;

import java.util.ArrayList;
import java.util.List;
import wickmark.imaging.raster.Raster;

/** The part of a spot that is seen: what hangs together with its densest place above a density. */
final class VisibleExtent {
  private VisibleExtent() {}

  static boolean[] around(Raster density, int densest, double level) {
    int w = density.width();
    int h = density.height();
    boolean[] in = new boolean[w * h];
    int[] stack = new int[w * h];
    int top = 0;
    in[densest] = true;
    stack[top++] = densest;
    while (top > 0) {
      int at = stack[--top];
      int x = at % w;
      int[] next = {x > 0 ? at - 1 : -1, x < w - 1 ? at + 1 : -1, at - w, at + w};
      for (int i : next) {
        if (i >= 0 && i < in.length && !in[i] && density.cells()[i] >= level) {
          in[i] = true;
          stack[top++] = i;
        }
      }
    }
    return in;
  }

  /**
   * The smallest box around an extent.
   *
   * @param width cells in a row of the extent
   * @param left column of its first cell on the map
   * @param top row of its first cell on the map
   */
  static SpotRegion.Box box(boolean[] in, int width, int left, int top) {
    int height = in.length / width;
    int x0 = width;
    int x1 = -1;
    int y0 = height;
    int y1 = -1;
    for (int i = 0; i < in.length; i++) {
      if (in[i]) {
        x0 = Math.min(x0, i % width);
        x1 = Math.max(x1, i % width);
        y0 = Math.min(y0, i / width);
        y1 = Math.max(y1, i / width);
      }
    }
    return new SpotRegion.Box(left + x0, left + x1 + 1.0, top + y0, top + y1 + 1.0);
  }

  /**
   * The extent's hull as seen from its rows: left rims downwards, right rims upwards, every few
   * rows, {x, y} each.
   */
  static List<double[]> outline(boolean[] in, int width, int height, int left, int top) {
    List<double[]> leftRim = new ArrayList<>();
    List<double[]> rightRim = new ArrayList<>();
    int step = Math.max(1, height / 24);
    for (int y = 0; y < height; y++) {
      int from = -1;
      int to = -1;
      for (int x = 0; x < width; x++) {
        if (in[y * width + x]) {
          from = from < 0 ? x : from;
          to = x;
        }
      }
      boolean edge = from >= 0 && (isFirst(in, width, y) || isLast(in, width, height, y));
      if (from >= 0 && (y % step == 0 || edge)) {
        leftRim.add(new double[] {left + from, top + y + 0.5});
        rightRim.add(new double[] {left + to + 1.0, top + y + 0.5});
      }
    }
    List<double[]> outline = new ArrayList<>(leftRim);
    for (int i = rightRim.size() - 1; i >= 0; i--) {
      outline.add(rightRim.get(i));
    }
    return outline;
  }

  private static boolean isFirst(boolean[] in, int width, int y) {
    return y == 0 || emptyRow(in, width, y - 1);
  }

  private static boolean isLast(boolean[] in, int width, int height, int y) {
    return y == height - 1 || emptyRow(in, width, y + 1);
  }

  private static boolean emptyRow(boolean[] in, int width, int y) {
    for (int x = 0; x < width; x++) {
      if (in[y * width + x]) {
        return false;
      }
    }
    return true;
  }
}
