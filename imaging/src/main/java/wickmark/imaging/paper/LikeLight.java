package wickmark.imaging.paper;

import wickmark.imaging.raster.Raster;

/**
 * Means over the blocks around, weighted by nearness (a Gaussian) and by likeness of light, so that
 * the edge of a shadow stays an edge.
 */
final class LikeLight {
  /** Densities that differ by this much are across the edge of a shadow. */
  static final double SHADOW_STEP = 0.03;

  private final float[] guide;
  private final float[] weight;
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
    this.guide = guide.cells();
    this.weight = weight.cells();
    this.width = guide.width();
    this.height = guide.height();
    this.step = step;
    this.carry = carry;
    this.radius = (int) Math.ceil(2.6 * sigma * mm);
    this.near = new double[2 * radius * radius + 1];
    for (int i = 0; i < near.length; i++) {
      near[i] = StrictMath.exp(-i / (2 * sigma * mm * sigma * mm));
    }
  }

  /** Returns the mean of each raster; a cell's own value where nothing that counts is near. */
  Raster[] means(Raster... in) {
    Raster[] out = new Raster[in.length];
    for (int c = 0; c < in.length; c++) {
      out[c] = in[c].copy();
    }
    double[] sum = new double[in.length];
    for (int y = 0; y < height; y++) {
      for (int x = 0; x < width; x++) {
        double total = sums(in, x, y, true, sum);
        double least = 1e-3;
        if (!(total > least)) {
          total = sums(in, x, y, false, sum);
          least = 1e-6;
        }
        for (int c = 0; c < in.length && total > least; c++) {
          out[c].set(x, y, (float) (sum[c] / total));
        }
      }
    }
    return out;
  }

  /** Fills in the weighted sums of the rasters and returns that of the weights. */
  private double sums(Raster[] in, int x, int y, boolean likeOnly, double[] sum) {
    java.util.Arrays.fill(sum, 0);
    double total = 0;
    double here = guide[y * width + x];
    int left = PaperBackground.firstFrom(x - radius, step);
    int right = Math.min(width - 1, x + radius);
    int bottom = Math.min(height - 1, y + radius);
    for (int j = PaperBackground.firstFrom(y - radius, step); j <= bottom; j += step) {
      for (int i = left; i <= right; i += step) {
        int at = j * width + i;
        if (weight[at] == 0) {
          continue;
        }
        double w = near[(i - x) * (i - x) + (j - y) * (j - y)];
        double apart = guide[at] - here;
        if (likeOnly) {
          double d = apart / SHADOW_STEP;
          w /= 1 + d * d * d * d;
        }
        total += w;
        for (int c = 0; c < in.length; c++) {
          sum[c] += w * (in[c].cells()[at] - carry * apart);
        }
      }
    }
    return total;
  }
}
