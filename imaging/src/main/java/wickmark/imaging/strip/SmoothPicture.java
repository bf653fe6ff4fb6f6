package wickmark.imaging.strip;

import java.util.function.UnaryOperator;
import wickmark.imaging.photo.Photo;
import wickmark.imaging.raster.ColourRaster;

/**
 * A photo shrunken and smoothed, of which only those tiles are worked out that are looked at: the
 * sides of sheets take a small part of it. Not for several threads.
 */
final class SmoothPicture {
  /** Side of a tile, cells. */
  private static final int TILE = 64;

  /** How far a tile reaches into the next: places lie between its last cells and the next's. */
  private static final int OVERLAP = 1;

  private final Photo photo;
  private final int factor;
  private final UnaryOperator<ColourRaster> filter;
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
    this(photo, factor, in -> in.blurred(sigma), (int) Math.ceil(5 * sigma));
  }

  private SmoothPicture(Photo photo, int factor, UnaryOperator<ColourRaster> filter, int margin) {
    this.photo = photo;
    this.factor = factor;
    this.filter = filter;
    this.margin = margin;
    this.width = ColourRaster.shrunk(photo.widthPx(), factor);
    this.height = ColourRaster.shrunk(photo.heightPx(), factor);
    this.tiles = new ColourRaster[(height - 1) / TILE + 1][(width - 1) / TILE + 1];
  }

  /** The same without what is dark and thin, as printed lines are. */
  static SmoothPicture withoutLines(Photo photo, int factor, double sigma) {
    return new SmoothPicture(
        photo,
        factor,
        in -> PrintedLines.filled(in).blurred(sigma),
        (int) Math.ceil(5 * sigma) + PrintedLines.MARGIN);
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
    return (int) Math.min(Math.max(place - 0.5, 0), cells - 1) / TILE;
  }

  /** Smooths a tile with so much around it that its cells are those of the whole picture. */
  private ColourRaster tile(int left, int top) {
    int right = Math.min(width, left + TILE + OVERLAP);
    int bottom = Math.min(height, top + TILE + OVERLAP);
    int fromX = Math.max(0, left - margin);
    int fromY = Math.max(0, top - margin);
    int w = Math.min(width, right + margin) - fromX;
    int h = Math.min(height, bottom + margin) - fromY;
    return filter
        .apply(ColourRaster.shrink(photo, factor, fromX, fromY, w, h))
        .part(left - fromX, top - fromY, right - left, bottom - top);
  }
}
