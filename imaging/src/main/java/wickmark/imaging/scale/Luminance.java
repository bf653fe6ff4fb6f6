package wickmark.imaging.scale;

import java.util.Arrays;
import wickmark.imaging.photo.Photo;
import wickmark.imaging.raster.Raster;

/** A grey view of a photo, 0 to 255, reduced by a whole factor with box averages. */
final class Luminance {
  private final Photo photo;
  private final double factor;
  private final int width;
  private final int height;
  private final float[] plane;

  private Luminance(Photo photo, double factor, float[] plane) {
    this.photo = photo;
    this.factor = factor;
    this.width = (int) (photo.widthPx() / factor);
    this.height = (int) (photo.heightPx() / factor);
    this.plane = plane;
  }

  /** Returns the reduced view, worked out pixel by pixel when asked: for small parts of a photo. */
  static Luminance lazy(Photo photo, int factor) {
    return new Luminance(photo, factor, new float[0]);
  }

  /** Returns the view reduced by {@code factor}, at least 1, in memory. */
  static Luminance reduced(Photo photo, int factor) {
    int width = photo.widthPx() / factor;
    int height = photo.heightPx() / factor;
    float[] plane = new float[width * height];
    int[][] sum = new int[3][width];
    for (int y = 0; y < height; y++) {
      for (int[] channel : sum) {
        Arrays.fill(channel, 0);
      }
      for (int j = y * factor; j < (y + 1) * factor; j++) {
        photo.addRow(0, j, factor, sum[0], sum[1], sum[2]);
      }
      for (int x = 0; x < width; x++) {
        int grey = sum[0][x] + 2 * sum[1][x] + sum[2][x];
        plane[y * width + x] = grey / (4f * factor * factor);
      }
    }
    return new Luminance(photo, factor, plane);
  }

  /** Returns this view enlarged by two, values between pixels being interpolated. */
  Luminance doubled() {
    float[] twice = new float[4 * width * height];
    for (int y = 0; y < 2 * height; y++) {
      for (int x = 0; x < 2 * width; x++) {
        twice[2 * y * width + x] = (float) at((x + 0.5) / 2, (y + 0.5) / 2);
      }
    }
    return new Luminance(photo, factor / 2, twice);
  }

  /** Returns this view, which must be in memory, reduced by two once more. */
  Luminance halved() {
    int w = width / 2;
    int h = height / 2;
    float[] half = new float[w * h];
    for (int y = 0; y < h; y++) {
      for (int x = 0; x < w; x++) {
        int at = 2 * y * width + 2 * x;
        half[y * w + x] =
            (plane[at] + plane[at + 1] + plane[at + width] + plane[at + width + 1]) / 4;
      }
    }
    return new Luminance(photo, 2 * factor, half);
  }

  private static float box(Photo photo, int x, int y, int factor) {
    int sum = 0;
    for (int j = y * factor; j < (y + 1) * factor; j++) {
      for (int i = x * factor; i < (x + 1) * factor; i++) {
        int rgb = photo.rgb(i, j);
        sum += (rgb >> 16) + 2 * (rgb >> 8 & 0xff) + (rgb & 0xff);
      }
    }
    return sum / (4f * factor * factor);
  }

  /** Returns the photo pixels per pixel of this view. */
  double factor() {
    return factor;
  }

  int width() {
    return width;
  }

  int height() {
    return height;
  }

  /** The pixels of a view that is in memory, rows from the top: for loops that must be fast. */
  float[] pixels() {
    return plane;
  }

  float pixel(int x, int y) {
    return plane.length > 0 ? plane[y * width + x] : box(photo, x, y, (int) factor);
  }

  /** Returns the value at a place between pixels (bilinear); outside, that of the nearest edge. */
  double at(double x, double y) {
    double px = Raster.within(x - 0.5, width - 1.001);
    double py = Raster.within(y - 0.5, height - 1.001);
    int ix = (int) px;
    int iy = (int) py;
    double fx = px - ix;
    double fy = py - iy;
    if (plane.length > 0) {
      int i = iy * width + ix;
      double upper = plane[i] * (1 - fx) + plane[i + 1] * fx;
      double lower = plane[i + width] * (1 - fx) + plane[i + width + 1] * fx;
      return upper * (1 - fy) + lower * fy;
    }
    double top = pixel(ix, iy) * (1 - fx) + pixel(ix + 1, iy) * fx;
    double bottom = pixel(ix, iy + 1) * (1 - fx) + pixel(ix + 1, iy + 1) * fx;
    return top * (1 - fy) + bottom * fy;
  }

  boolean contains(double x, double y, double marginPx) {
    return x >= marginPx && y >= marginPx && x <= width - marginPx && y <= height - marginPx;
  }
}
