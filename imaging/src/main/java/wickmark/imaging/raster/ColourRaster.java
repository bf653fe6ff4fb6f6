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
    float scale = 1f / (255f * fx * fy);
    for (int y = 0; y < h; y++) {
      int[][] sum = new int[3][w];
      for (int j = y * factor; j < y * factor + fy; j++) {
        photo.addRow(j, fx, sum[0], sum[1], sum[2]);
      }
      for (int c = 0; c < 3; c++) {
        for (int x = 0; x < w; x++) {
          out[c][y * w + x] = sum[c][x] * scale;
        }
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
