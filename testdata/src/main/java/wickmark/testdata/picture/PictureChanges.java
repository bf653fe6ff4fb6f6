package wickmark.testdata.picture;

import java.util.Arrays;
import wickmark.testdata.colour.SrgbCurve;

/** What may happen to a picture before it is measured, without the strip in it being another. */
public final class PictureChanges {
  private PictureChanges() {}

  /** Saved again as a JPEG of some quality, 1 to 100. */
  public static Picture savedAgain(Picture picture, int quality) {
    return PictureFile.decoded(PictureFile.jpeg(picture, quality, PictureTags.none()));
  }

  /** As with so many stops more light (IEC 61966-2-1 decoded, multiplied, coded again). */
  public static Picture brighter(Picture picture, double stops) {
    double gain = StrictMath.pow(2, stops);
    byte[] rgb = picture.rgb();
    byte[] coded = new byte[256];
    for (int v = 0; v < 256; v++) {
      double light = Math.min(1, gain * SrgbCurve.decode8(v));
      coded[v] = (byte) Math.round(255 * SrgbCurve.encode(light));
    }
    for (int i = 0; i < rgb.length; i++) {
      rgb[i] = coded[rgb[i] & 0xff];
    }
    return new Picture(picture.widthPx(), picture.heightPx(), rgb);
  }

  /** Resampled with a tent as wide as the coarser of both grids, as picture programs do. */
  public static Picture scaled(Picture picture, double factor) {
    int width = (int) Math.round(factor * picture.widthPx());
    int height = (int) Math.round(factor * picture.heightPx());
    double[][] across = weights(picture.widthPx(), width);
    double[][] down = weights(picture.heightPx(), height);
    double[] rows = new double[3 * width * picture.heightPx()];
    for (int y = 0; y < picture.heightPx(); y++) {
      for (int x = 0; x < width; x++) {
        int from = (int) across[x][0];
        for (int k = 1; k < across[x].length; k++) {
          for (int c = 0; c < 3; c++) {
            rows[3 * (y * width + x) + c] += across[x][k] * picture.value(from + k - 1, y, c);
          }
        }
      }
    }
    byte[] rgb = new byte[3 * width * height];
    for (int y = 0; y < height; y++) {
      int from = (int) down[y][0];
      for (int i = 0; i < 3 * width; i++) {
        double sum = 0;
        for (int k = 1; k < down[y].length; k++) {
          sum += down[y][k] * rows[3 * width * (from + k - 1) + i];
        }
        rgb[3 * width * y + i] = (byte) Math.round(sum);
      }
    }
    return new Picture(width, height, rgb);
  }

  /** For each new place the first old one, and the weights of it and those after it. */
  private static double[][] weights(int before, int after) {
    double step = (double) before / after;
    double reach = Math.max(1, step);
    double[][] weights = new double[after][];
    for (int i = 0; i < after; i++) {
      double middle = (i + 0.5) * step - 0.5;
      int from = Math.max(0, (int) Math.ceil(middle - reach));
      int to = Math.min(before - 1, (int) Math.floor(middle + reach));
      double[] w = new double[to - from + 2];
      for (int k = from; k <= to; k++) {
        w[k - from + 1] = Math.max(0, 1 - Math.abs(k - middle) / reach);
      }
      double total = Arrays.stream(w).sum();
      for (int k = 1; k < w.length; k++) {
        w[k] /= total;
      }
      w[0] = from;
      weights[i] = w;
    }
    return weights;
  }
}
