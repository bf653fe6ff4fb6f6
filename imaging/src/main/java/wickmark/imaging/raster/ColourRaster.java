package wickmark.imaging.raster;

import java.util.Arrays;
import wickmark.imaging.photo.Photo;

/** Three rasters of one size: red, green and blue. */
public record ColourRaster(Raster red, Raster green, Raster blue) {
  public ColourRaster {
    if (red.width() != green.width()
        || red.width() != blue.width()
        || red.height() != green.height()
        || red.height() != blue.height()) {
      throw new IllegalArgumentException("the three channels must have one size");
    }
  }

  public int width() {
    return red.width();
  }

  public int height() {
    return red.height();
  }

  /** Returns channel 0 (red), 1 (green) or 2 (blue). */
  public Raster channel(int index) {
    return switch (index) {
      case 0 -> red;
      case 1 -> green;
      case 2 -> blue;
      default -> throw new IllegalArgumentException("channel 0 to 2, was " + index);
    };
  }

  /**
   * Shrinks a photo by whole-number averaging.
   *
   * @param factor photo pixels per cell side, at least 1; cells beyond the last whole one are cut
   * @return sRGB values from 0 to 1
   */
  public static ColourRaster shrink(Photo photo, int factor) {
    return shrink(
        photo, factor, 0, 0, shrunk(photo.widthPx(), factor), shrunk(photo.heightPx(), factor));
  }

  /** How many cells so many pixels make when they are shrunken. */
  public static int shrunk(int pixels, int factor) {
    return Math.max(1, pixels / factor);
  }

  /**
   * The same for a part of the shrunken photo.
   *
   * @param left its first column, cells
   * @param top its first row, cells
   */
  public static ColourRaster shrink(
      Photo photo, int factor, int left, int top, int width, int height) {
    float[][] out = new float[3][width * height];
    int fx = Math.min(factor, photo.widthPx());
    int fy = Math.min(factor, photo.heightPx());
    float scale = 1f / (255f * fx * fy);
    int[][] sum = new int[3][width];
    for (int y = 0; y < height; y++) {
      for (int[] channel : sum) {
        Arrays.fill(channel, 0);
      }
      for (int j = (top + y) * factor; j < (top + y) * factor + fy; j++) {
        photo.addRow(left * factor, j, fx, sum[0], sum[1], sum[2]);
      }
      for (int c = 0; c < 3; c++) {
        for (int x = 0; x < width; x++) {
          out[c][y * width + x] = sum[c][x] * scale;
        }
      }
    }
    return new ColourRaster(
        new Raster(width, height, out[0]),
        new Raster(width, height, out[1]),
        new Raster(width, height, out[2]));
  }

  /** Fills in the bilinear values of red, green and blue at a place, as {@link Raster#sample}. */
  public void sample(double x, double y, double[] colour) {
    int w = width();
    int h = height();
    double cx = Raster.within(x - 0.5, w - 1);
    double cy = Raster.within(y - 0.5, h - 1);
    int x0 = Math.min((int) cx, Math.max(0, w - 2));
    int y0 = Math.min((int) cy, Math.max(0, h - 2));
    double fx = cx - x0;
    double fy = cy - y0;
    int at = y0 * w + x0;
    int right = Math.min(1, w - 1);
    int below = h > 1 ? w : 0;
    colour[0] = red.between(at, right, below, fx, fy);
    colour[1] = green.between(at, right, below, fx, fy);
    colour[2] = blue.between(at, right, below, fx, fy);
  }

  /** A part of it: so many columns and rows from a left column and a top row on. */
  public ColourRaster part(int left, int top, int width, int height) {
    return new ColourRaster(
        red.part(left, top, width, height),
        green.part(left, top, width, height),
        blue.part(left, top, width, height));
  }

  /** The same, each channel blurred. */
  public ColourRaster blurred(double sigma) {
    return new ColourRaster(
        Smoothing.gaussian(red, sigma),
        Smoothing.gaussian(green, sigma),
        Smoothing.gaussian(blue, sigma));
  }
}
