package wickmark.imaging.paper;

import wickmark.imaging.raster.Raster;
import wickmark.imaging.raster.Selection;

/** The strip in blocks of about a millimetre, for what varies slowly. */
final class BlockGrid {
  final int side;
  final int columns;
  final int rows;
  private final int width;
  private final int height;

  BlockGrid(int width, int height, int side) {
    this.width = width;
    this.height = height;
    this.side = side;
    this.columns = Math.max(1, (width + side - 1) / side);
    this.rows = Math.max(1, (height + side - 1) / side);
  }

  /** Share of each block that lies on paper. */
  Raster cover(Raster paper) {
    Raster out = new Raster(columns, rows);
    for (int y = 0; y < height; y++) {
      for (int x = 0; x < width; x++) {
        out.cells()[y / side * columns + x / side] += paper.at(x, y) / (side * side);
      }
    }
    return out;
  }

  /** A quantile (0 to 1) of the cells on paper in each block; 0 where there is no paper. */
  Raster quantile(Raster in, Raster paper, double q) {
    Raster out = new Raster(columns, rows);
    double[] values = new double[side * side];
    for (int row = 0; row < rows; row++) {
      for (int column = 0; column < columns; column++) {
        int n = 0;
        for (int y = row * side; y < Math.min(height, (row + 1) * side); y++) {
          for (int x = column * side; x < Math.min(width, (column + 1) * side); x++) {
            if (paper.at(x, y) > 0) {
              values[n++] = in.at(x, y);
            }
          }
        }
        if (n > 0) {
          out.set(column, row, (float) Selection.nth(values, n, (int) Math.min(n - 1, q * n)));
        }
      }
    }
    return out;
  }

  /** Spreads block values over the cells, linearly between the blocks' centres. */
  Raster spread(Raster blocks) {
    Raster out = new Raster(width, height);
    for (int y = 0; y < height; y++) {
      for (int x = 0; x < width; x++) {
        out.set(x, y, (float) blocks.sample((x + 0.5) / side, (y + 0.5) / side));
      }
    }
    return out;
  }
}
