package wickmark.imaging.raster;

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
    int w = Math.max(1, photo.widthPx() / factor);
    int h = Math.max(1, photo.heightPx() / factor);
    float[][] out = new float[3][w * h];
    int fx = Math.min(factor, photo.widthPx());
    int fy = Math.min(factor, photo.heightPx());
    for (int y = 0; y < h; y++) {
      for (int x = 0; x < w; x++) {
        int r = 0;
        int g = 0;
        int b = 0;
        for (int j = y * factor; j < y * factor + fy; j++) {
          for (int i = x * factor; i < x * factor + fx; i++) {
            r += photo.red(i, j);
            g += photo.green(i, j);
            b += photo.blue(i, j);
          }
        }
        float scale = 1f / (255f * fx * fy);
        out[0][y * w + x] = r * scale;
        out[1][y * w + x] = g * scale;
        out[2][y * w + x] = b * scale;
      }
    }
    return new ColourRaster(
        new Raster(w, h, out[0]), new Raster(w, h, out[1]), new Raster(w, h, out[2]));
  }

  /** The same, each channel blurred. */
  public ColourRaster blurred(double sigma) {
    return new ColourRaster(
        Smoothing.gaussian(red, sigma),
        Smoothing.gaussian(green, sigma),
        Smoothing.gaussian(blue, sigma));
  }
}
