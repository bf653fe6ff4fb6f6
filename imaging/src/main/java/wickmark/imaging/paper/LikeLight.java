package wickmark.imaging.paper;

import java.util.Arrays;
import java.util.stream.IntStream;
import wickmark.imaging.raster.Raster;

/**
 * Means over the blocks around, weighted by nearness (a Gaussian) and by likeness of light, so that
 * the edge of a shadow stays an edge.
 */
final class LikeLight {
  /** Densities that differ by this much are across the edge of a shadow. */
  static final double SHADOW_STEP = 0.03;

  private final double[] guide;

  /** 1 for the blocks that count, 0 for the others. */
  private final double[] counts;

  private final int width;
  private final int height;
  private final int step;
  private final int carry;
  private final int radius;

  /** Weights by nearness, for each squared distance. */
  private final double[] near;

  /**
   * Takes what is common to several means.
   *
   * @param guide how the light falls, log light
   * @param weight 0 for the blocks that do not count
   * @param sigma of the Gaussian, mm
   * @param mm blocks per millimetre
   * @param step from block to block of those that are looked at
   * @param carry 1 to carry over the ratio to the guide, 0 to carry over the values themselves
   */
  LikeLight(Raster guide, Raster weight, double sigma, double mm, int step, int carry) {
    this.guide = doubles(guide);
    this.counts = doubles(weight);
    for (int i = 0; i < counts.length; i++) {
      counts[i] = counts[i] == 0 ? 0 : 1;
    }
    this.width = guide.width();
    this.height = guide.height();
    this.step = step;
    this.carry = carry;
    this.radius = step * (int) Math.ceil(2.6 * sigma * mm / step);
    this.near = new double[2 * radius * radius + 1];
    for (int i = 0; i < near.length; i++) {
      near[i] = StrictMath.exp(-i / (2 * sigma * mm * sigma * mm));
    }
  }

  private static double[] doubles(Raster raster) {
    double[] out = new double[raster.cells().length];
    for (int i = 0; i < out.length; i++) {
      out[i] = raster.cells()[i];
    }
    return out;
  }

  /**
   * Returns the mean of each raster.
   *
   * @param otherwise the values where nothing that counts is near
   */
  Raster[] means(Raster[] otherwise, Raster... in) {
    double[][] value = new double[in.length][];
    Raster[] out = new Raster[in.length];
    for (int c = 0; c < in.length; c++) {
      value[c] = doubles(in[c]);
      out[c] = otherwise[c].copy();
    }
    double[] total = new double[guide.length];
    double[][] sum = new double[in.length][guide.length];
    IntStream.range(0, height).parallel().forEach(y -> addLikeLight(y, value, total, sum));
    double[] own = new double[in.length];
    for (int i = 0; i < total.length; i++) {
      if (total[i] > 1e-3) {
        for (int c = 0; c < in.length; c++) {
          out[c].cells()[i] = (float) (sum[c][i] / total[i]);
        }
        continue;
      }
      double anyLight = sumsOfAnyLight(value, i % width, i / width, own);
      for (int c = 0; c < in.length && anyLight > 1e-6; c++) {
        out[c].cells()[i] = (float) (own[c] / anyLight);
      }
    }
    return out;
  }

  /**
   * Adds up weights and weighted values for the cells of a row. It takes one neighbour of a whole
   * row at a time, without a branch, so that Java's compiler uses the processor's wide registers.
   */
  private void addLikeLight(int y, double[][] value, double[] total, double[][] sum) {
    double[] weight = new double[width];
    double[] apart = new double[width];
    int here = y * width;
    int bottom = Math.min(height - 1, y + radius);
    for (int j = BlockGrid.firstFrom(y - radius, step); j <= bottom; j += step) {
      for (int dx = -radius; dx <= radius; dx += step) {
        int there = j * width + dx;
        int from = Math.max(0, -dx);
        int to = Math.min(width, width - dx);
        weigh(here, there, from, to, near[dx * dx + (j - y) * (j - y)], weight, apart);
        for (int x = from; x < to; x++) {
          total[here + x] += weight[x];
        }
        for (int c = 0; c < value.length; c++) {
          add(value[c], sum[c], here, there, from, to, weight, apart);
        }
      }
    }
  }

  private void weigh(
      int here, int there, int from, int to, double near, double[] weight, double[] apart) {
    for (int x = from; x < to; x++) {
      double a = guide[there + x] - guide[here + x];
      double d = a * (1 / SHADOW_STEP);
      apart[x] = a;
      weight[x] = counts[there + x] * near / (1 + d * d * d * d);
    }
  }

  private void add(
      double[] value,
      double[] sum,
      int here,
      int there,
      int from,
      int to,
      double[] weight,
      double[] apart) {
    for (int x = from; x < to; x++) {
      sum[here + x] += weight[x] * (value[there + x] - carry * apart[x]);
    }
  }

  /** Fills in a cell's weighted sums, however the light falls, and returns that of the weights. */
  private double sumsOfAnyLight(double[][] value, int x, int y, double[] sum) {
    Arrays.fill(sum, 0);
    double total = 0;
    double here = guide[y * width + x];
    int left = BlockGrid.firstFrom(x - radius, step);
    int right = Math.min(width - 1, x + radius);
    int bottom = Math.min(height - 1, y + radius);
    for (int j = BlockGrid.firstFrom(y - radius, step); j <= bottom; j += step) {
      for (int i = left; i <= right; i += step) {
        int at = j * width + i;
        double w = counts[at] * near[(i - x) * (i - x) + (j - y) * (j - y)];
        total += w;
        for (int c = 0; c < value.length; c++) {
          sum[c] += w * (value[c][at] - carry * (guide[at] - here));
        }
      }
    }
    return total;
  }
}
