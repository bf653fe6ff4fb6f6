package wickmark.imaging.line;

import wickmark.imaging.raster.Raster;

/** Running sums down the columns of a raster: what a part of a column holds in one step. */
final class ColumnSums {
  private final int width;
  private final double[] above;

  ColumnSums(Raster raster) {
    this.width = raster.width();
    this.above = new double[width * (raster.height() + 1)];
    float[] cells = raster.cells();
    for (int i = 0; i < cells.length; i++) {
      above[i + width] = above[i] + cells[i];
    }
  }

  /** The sum of a column's cells from a row to before another; 0 where that one comes first. */
  double between(int column, int from, int to) {
    return to <= from ? 0 : above[to * width + column] - above[from * width + column];
  }
}
