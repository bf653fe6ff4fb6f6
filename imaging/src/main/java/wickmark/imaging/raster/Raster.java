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

  /** Bilinear value at a place. */
  public double sample(double x, double y) {
    double cx = Math.min(Math.max(x - 0.5, 0), width - 1);
    double cy = Math.min(Math.max(y - 0.5, 0), height - 1);
    int x0 = Math.min((int) cx, Math.max(0, width - 2));
    int y0 = Math.min((int) cy, Math.max(0, height - 2));
    int x1 = Math.min(x0 + 1, width - 1);
    int y1 = Math.min(y0 + 1, height - 1);
    double fx = cx - x0;
    double fy = cy - y0;
    double upper = cells[y0 * width + x0] * (1 - fx) + cells[y0 * width + x1] * fx;
    double lower = cells[y1 * width + x0] * (1 - fx) + cells[y1 * width + x1] * fx;
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
