package wickmark.imaging.raster;

import boofcv.factory.filter.kernel.FactoryKernelGaussian;
import boofcv.struct.convolve.Kernel1D_F32;
import java.util.Arrays;

/**
 * Gaussian blur, along the rows and then down the columns. A row is an array of its own and all of
 * it is taken at once, four weights at a time: only so does Java's compiler use the processor's
 * wide registers. Each cell's terms are added in the kernel's order, so that the result is BoofCV's
 * to the last bit (a test compares them).
 */
final class GaussianBlur {
  private final float[] kernel;
  private final int reach;
  private final int width;
  private final int height;

  private GaussianBlur(Kernel1D_F32 kernel, int width, int height) {
    this.kernel = kernel.data;
    this.reach = kernel.offset;
    this.width = width;
    this.height = height;
  }

  static float[] of(float[] cells, int width, int height, double sigma) {
    Kernel1D_F32 kernel = FactoryKernelGaussian.gaussian(Kernel1D_F32.class, sigma, -1);
    return new GaussianBlur(kernel, width, height).of(cells);
  }

  /** Rows are blurred along themselves just before they are needed; no more are kept than are. */
  private float[] of(float[] cells) {
    float[] out = new float[width * height];
    float[][] rows = new float[Math.min(height, kernel.length)][width];
    float[][] shifted = new float[4][width];
    float[] sum = new float[width];
    int done = 0;
    for (int y = 0; y < height; y++) {
      for (; done < Math.min(height, y + reach + 1); done++) {
        across(cells, done * width, rows[done % rows.length], shifted, sum);
      }
      down(rows, y, sum);
      System.arraycopy(sum, 0, out, y * width, width);
    }
    return out;
  }

  /** Blurs a row along itself. */
  private void across(float[] in, int row, float[] out, float[][] shifted, float[] sum) {
    boolean narrow = kernel.length >= width;
    int inner = narrow ? width : reach;
    int outer = narrow ? width : width - reach;
    if (!narrow) {
      inside(in, row, outer - inner, shifted, sum);
      System.arraycopy(sum, 0, out, inner, outer - inner);
    }
    for (int x = 0; x < inner; x++) {
      out[x] = atBorder(in, row, x);
    }
    for (int x = outer; x < width; x++) {
      out[x] = atBorder(in, row, x);
    }
  }

  /** Sums up, into the first cells of an array, where the kernel lies within the row. */
  private void inside(float[] in, int row, int count, float[][] shifted, float[] sum) {
    Arrays.fill(sum, 0);
    int k = 0;
    for (; k + 4 <= kernel.length; k += 4) {
      for (int i = 0; i < 4; i++) {
        System.arraycopy(in, row + k + i, shifted[i], 0, count);
      }
      addFour(shifted[0], shifted[1], shifted[2], shifted[3], k, sum, count);
    }
    for (; k < kernel.length; k++) {
      System.arraycopy(in, row + k, shifted[0], 0, count);
      addOne(shifted[0], kernel[k], sum, count);
    }
  }

  /** The mean over the part of the kernel that lies within the row. */
  private float atBorder(float[] in, int row, int x) {
    float total = 0;
    float weight = 0;
    int to = Math.min(kernel.length, width - x + reach);
    for (int k = Math.max(0, reach - x); k < to; k++) {
      weight += kernel[k];
      total += in[row + x + k - reach] * kernel[k];
    }
    return total / weight;
  }

  /** Sums up a row of the result of those around it, each in its place in the ring of rows. */
  private void down(float[][] rows, int y, float[] sum) {
    int from = Math.max(0, reach - y);
    int to = Math.min(kernel.length, height - y + reach);
    int n = rows.length;
    Arrays.fill(sum, 0);
    int k = from;
    for (; k + 4 <= to; k += 4) {
      int row = y + k - reach;
      addFour(
          rows[row % n],
          rows[(row + 1) % n],
          rows[(row + 2) % n],
          rows[(row + 3) % n],
          k,
          sum,
          width);
    }
    for (; k < to; k++) {
      addOne(rows[(y + k - reach) % n], kernel[k], sum, width);
    }
    if (kernel.length >= height || y < reach || y >= height - reach) {
      float weight = 0;
      for (int i = from; i < to; i++) {
        weight += kernel[i];
      }
      for (int x = 0; x < width; x++) {
        sum[x] /= weight;
      }
    }
  }

  /** Adds four rows with the weights from the k-th on. */
  private void addFour(
      float[] first, float[] second, float[] third, float[] fourth, int k, float[] sum, int count) {
    float a = kernel[k];
    float b = kernel[k + 1];
    float c = kernel[k + 2];
    float d = kernel[k + 3];
    for (int i = 0; i < count; i++) {
      sum[i] = sum[i] + first[i] * a + second[i] * b + third[i] * c + fourth[i] * d;
    }
  }

  private static void addOne(float[] row, float weight, float[] sum, int count) {
    for (int i = 0; i < count; i++) {
      sum[i] = sum[i] + row[i] * weight;
    }
  }
}
