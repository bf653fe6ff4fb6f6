package wickmark.testdata.scene;

import java.util.stream.IntStream;

/** Blurs a canvas in linear light. */
final class Blur {
  private Blur() {}

  /** Returns the canvas blurred by a gaussian. */
  static Canvas gaussian(Canvas from, double sigmaPx) {
    if (sigmaPx < 0.05) {
      return from;
    }
    int reach = (int) Math.ceil(3 * sigmaPx);
    float[] kernel = new float[2 * reach + 1];
    double sum = 0;
    for (int i = -reach; i <= reach; i++) {
      double weight = StrictMath.exp(-i * i / (2 * sigmaPx * sigmaPx));
      kernel[i + reach] = (float) weight;
      sum += weight;
    }
    for (int i = 0; i < kernel.length; i++) {
      kernel[i] = (float) (kernel[i] / sum);
    }
    return along(along(from, kernel, reach, true), kernel, reach, false);
  }

  private static Canvas along(Canvas from, float[] kernel, int reach, boolean across) {
    Canvas to = new Canvas(from.widthPx, from.heightPx);
    int limit = across ? from.widthPx : from.heightPx;
    IntStream.range(0, from.heightPx)
        .parallel()
        .forEach(
            y -> {
              float[] row = new float[3 * from.widthPx];
              for (int k = -reach; k <= reach; k++) {
                float weight = kernel[k + reach];
                int other = across ? y : Math.max(0, Math.min(limit - 1, y + k));
                int start = 3 * other * from.widthPx;
                if (across) {
                  shifted(from.rgb, start, row, k, weight, limit);
                } else {
                  for (int i = 0; i < row.length; i++) {
                    row[i] += weight * from.rgb[start + i];
                  }
                }
              }
              System.arraycopy(row, 0, to.rgb, 3 * y * from.widthPx, row.length);
            });
    return to;
  }

  private static void shifted(
      float[] from, int start, float[] row, int shift, float weight, int width) {
    for (int x = 0; x < width; x++) {
      int other = start + 3 * Math.max(0, Math.min(width - 1, x + shift));
      row[3 * x] += weight * from[other];
      row[3 * x + 1] += weight * from[other + 1];
      row[3 * x + 2] += weight * from[other + 2];
    }
  }

  /** Returns the canvas smeared along a straight line. */
  static Canvas motion(Canvas from, double lengthPx, double angleDeg) {
    if (lengthPx < 0.1) {
      return from;
    }
    int steps = (int) Math.ceil(2 * lengthPx) + 1;
    double cos = StrictMath.cos(StrictMath.toRadians(angleDeg));
    double sin = StrictMath.sin(StrictMath.toRadians(angleDeg));
    Canvas to = new Canvas(from.widthPx, from.heightPx);
    IntStream.range(0, from.heightPx)
        .parallel()
        .forEach(
            y -> {
              for (int step = 0; step < steps; step++) {
                double off = lengthPx * (step / (steps - 1.0) - 0.5);
                shiftedRow(from, to, y, (float) (off * cos), (float) (off * sin), 1f / steps);
              }
            });
    return to;
  }

  private static void shiftedRow(Canvas from, Canvas to, int y, float dx, float dy, float weight) {
    float v = Math.max(0, Math.min(from.heightPx - 1.001f, y + dy));
    int row = (int) v;
    float down = v - row;
    int next = Math.min(from.heightPx - 1, row + 1);
    for (int x = 0; x < from.widthPx; x++) {
      float u = Math.max(0, Math.min(from.widthPx - 1.001f, x + dx));
      int column = (int) u;
      float right = u - column;
      int step = column + 1 < from.widthPx ? 3 : 0;
      int a = 3 * (row * from.widthPx + column);
      int b = 3 * (next * from.widthPx + column);
      int t = 3 * (y * from.widthPx + x);
      for (int c = 0; c < 3; c++) {
        float high = from.rgb[a + c] + right * (from.rgb[a + step + c] - from.rgb[a + c]);
        float low = from.rgb[b + c] + right * (from.rgb[b + step + c] - from.rgb[b + c]);
        to.rgb[t + c] += weight * (high + down * (low - high));
      }
    }
  }
}
