package wickmark.imaging.strip;

import wickmark.imaging.photo.Photo;
import wickmark.imaging.raster.ColourRaster;
import wickmark.imaging.raster.Raster;

/**
 * A photo shrunken and smoothed, of which only those tiles are worked out that are looked at: the
 * sides of sheets take a small part of it. Not for several threads.
 */
final class SmoothPicture {
  /** Side of a tile, cells. */
  private static final int TILE = 64;

  /** Gives parts of a shrunken picture. */
  private interface Shrunken {
    ColourRaster part(int left, int top, int width, int height);
  }

  /** How far a tile reaches into the next: places lie between its last cells and the next's. */
  private static final int OVERLAP = 1;

  /** The shrunken picture, which is cut out or worked out in parts. */
  private final Shrunken picture;

  private final double sigma;
  private final int margin;
  private final int width;
  private final int height;
  private final @org.jspecify.annotations.Nullable ColourRaster[][] tiles;

  /**
   * Takes the photo.
   *
   * @param factor photo pixels per cell side, at least 1
   * @param sigma standard deviation of the Gaussian by which it is smoothed, cells
   */
  SmoothPicture(Photo photo, int factor, double sigma) {
    this(
        (left, top, w, h) -> ColourRaster.shrink(photo, factor, left, top, w, h),
        ColourRaster.shrunk(photo.widthPx(), factor),
        ColourRaster.shrunk(photo.heightPx(), factor),
        sigma);
  }

  /** Takes a photo that has been shrunken already. */
  SmoothPicture(ColourRaster shrunken, double sigma) {
    this(shrunken::part, shrunken.width(), shrunken.height(), sigma);
  }

  private SmoothPicture(Shrunken picture, int width, int height, double sigma) {
    this.picture = picture;
    this.sigma = sigma;
    this.margin = (int) Math.ceil(5 * sigma);
    this.width = width;
    this.height = height;
    this.tiles = new ColourRaster[(height - 1) / TILE + 1][(width - 1) / TILE + 1];
  }

  /**
   * Fills in red, green and blue, 0 to 1, at a place, between the cells linearly; (0, 0) is the
   * outer corner of the first cell, and outside the nearest cell counts.
   */
  void sample(double x, double y, double[] colour) {
    int column = tileOf(x, width);
    int row = tileOf(y, height);
    ColourRaster tile = tiles[row][column];
    if (tile == null) {
      tile = tile(column * TILE, row * TILE);
      tiles[row][column] = tile;
    }
    tile.sample(x - column * TILE, y - row * TILE, colour);
  }

  /** The tile of the nearest cell that begins before a place's middle. */
  private static int tileOf(double place, int cells) {
    return (int) Raster.within(place - 0.5, cells - 1) / TILE;
  }

  /** Smooths a tile with so much around it that its cells are those of the whole picture. */
  private ColourRaster tile(int left, int top) {
    int right = Math.min(width, left + TILE + OVERLAP);
    int bottom = Math.min(height, top + TILE + OVERLAP);
    int fromX = Math.max(0, left - margin);
    int fromY = Math.max(0, top - margin);
    int w = Math.min(width, right + margin) - fromX;
    int h = Math.min(height, bottom + margin) - fromY;
    return picture
        .part(fromX, fromY, w, h)
        .blurred(sigma)
        .part(left - fromX, top - fromY, right - left, bottom - top);
  }
}
