package wickmark.imaging.raster;

/**
 * A grid of numbers, rows from the top. Sampling takes places with (0, 0) at the outer corner of
 * the first cell; outside, the nearest cell counts.
 */
public final class Raster {
  private final int width;
  private final int height;
  private final float[] cells;

  /** A raster of zeros. */
  public Raster(int width, int height) {
    this(width, height, new float[width * height]);
  }

  /** Takes the cells without copying. */
  public Raster(int width, int height, float[] cells) {
    if (width < 1 || height < 1 || cells.length != width * height) {
      throw new IllegalArgumentException(
          "a raster of " + width + " x " + height + " cells got " + cells.length);
    }
    this.width = width;
    this.height = height;
    this.cells = cells;
  }

  public int width() {
    return width;
  }

  public int height() {
    return height;
  }

  /** The cells themselves, rows from the top: for loops that must be fast. */
  public float[] cells() {
    return cells;
  }

  public float at(int column, int row) {
    return cells[row * width + column];
  }

  public void set(int column, int row, float value) {
    cells[row * width + column] = value;
  }

  /** Whether the place lies on the grid. */
  public boolean contains(double x, double y) {
    return x >= 0 && y >= 0 && x <= width && y <= height;
  }

  /**
   * Returns a place, or 0 or the last one where it lies beyond them. Java's quick compiler makes
   * calls of Math.min and Math.max, and this is done for every place that is sampled.
   */
  public static double within(double place, double last) {
    return place < 0 ? 0 : place > last ? last : place;
  }

  /** Bilinear value at a place. */
  public double sample(double x, double y) {
    double cx = within(x - 0.5, width - 1);
    double cy = within(y - 0.5, height - 1);
    int x0 = Math.min((int) cx, Math.max(0, width - 2));
    int y0 = Math.min((int) cy, Math.max(0, height - 2));
    return between(
        y0 * width + x0, Math.min(1, width - 1), height > 1 ? width : 0, cx - x0, cy - y0);
  }

  /**
   * Bilinear value between four cells.
   *
   * @param at index of the upper left one
   * @param right how many cells on the one beside it is
   * @param below how many cells on the one below it is
   * @param fx share of those on the right
   * @param fy share of those below
   */
  double between(int at, int right, int below, double fx, double fy) {
    double upper = cells[at] * (1 - fx) + cells[at + right] * fx;
    double lower = cells[at + below] * (1 - fx) + cells[at + below + right] * fx;
    return upper * (1 - fy) + lower * fy;
  }

  /** The grid turned a quarter clockwise: the left column becomes the first row. */
  public Raster turned() {
    Raster out = new Raster(/* width= */ height, /* height= */ width);
    for (int y = 0; y < height; y++) {
      for (int x = 0; x < width; x++) {
        out.cells[x * height + (height - 1 - y)] = cells[y * width + x];
      }
    }
    return out;
  }

  /** A part of it: so many columns and rows from a left column and a top row on. */
  public Raster part(int left, int top, int columns, int rows) {
    Raster out = new Raster(columns, rows);
    for (int y = 0; y < rows; y++) {
      System.arraycopy(cells, (top + y) * width + left, out.cells, y * columns, columns);
    }
    return out;
  }

  public Raster copy() {
    return new Raster(width, height, cells.clone());
  }
}
