package wickmark.imaging.raster;

/** Low-pass filters. */
public final class Smoothing {
  private Smoothing() {}

  /**
   * Gaussian blur.
   *
   * @param sigma standard deviation in cells; 0 or less gives a copy
   */
  public static Raster gaussian(Raster in, double sigma) {
    if (!(sigma > 0)) {
      return in.copy();
    }
    return new Raster(
        in.width(), in.height(), GaussianBlur.of(in.cells(), in.width(), in.height(), sigma));
  }

  /**
   * Gaussian mean of the cells with weight, ignoring the others.
   *
   * @param weight 0 to 1 for each cell
   * @return the mean, and the cell's own value where no weight is near
   */
  public static Raster weightedGaussian(Raster in, Raster weight, double sigma) {
    Raster product = new Raster(in.width(), in.height());
    for (int i = 0; i < product.cells().length; i++) {
      product.cells()[i] = in.cells()[i] * weight.cells()[i];
    }
    Raster top = gaussian(product, sigma);
    Raster bottom = gaussian(weight, sigma);
    for (int i = 0; i < product.cells().length; i++) {
      float w = bottom.cells()[i];
      product.cells()[i] = w > 1e-4f ? top.cells()[i] / w : in.cells()[i];
    }
    return product;
  }

  /** Mean over a square of 2 · radius + 1 cells, in double sums so that threads change nothing. */
  public static Raster box(Raster in, int radius) {
    int w = in.width();
    int h = in.height();
    float[] across = new float[w * h];
    float[] out = new float[w * h];
    for (int y = 0; y < h; y++) {
      runningMean(in.cells(), across, y * w, 1, w, radius);
    }
    for (int x = 0; x < w; x++) {
      runningMean(across, out, x, w, h, radius);
    }
    return new Raster(w, h, out);
  }

  private static void runningMean(
      float[] in, float[] out, int start, int step, int count, int radius) {
    double sum = 0;
    int left = 0;
    int right = -1;
    for (int i = 0; i < count; i++) {
      int to = Math.min(count - 1, i + radius);
      while (right < to) {
        right++;
        sum += in[start + right * step];
      }
      int from = Math.max(0, i - radius);
      while (left < from) {
        sum -= in[start + left * step];
        left++;
      }
      out[start + i * step] = (float) (sum / (right - left + 1));
    }
  }
}
