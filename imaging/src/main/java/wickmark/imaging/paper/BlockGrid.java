package wickmark.imaging.paper;

import wickmark.imaging.raster.DriftingSelection;
import wickmark.imaging.raster.Raster;

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
    DriftingSelection selection = new DriftingSelection();
    float[] cells = in.cells();
    float[] on = paper.cells();
    float[] values = new float[side * side];
    for (int row = 0; row < rows; row++) {
      int bottom = Math.min(height, (row + 1) * side);
      for (int column = 0; column < columns; column++) {
        int right = Math.min(width, (column + 1) * side);
        int n = 0;
        for (int y = row * side; y < bottom; y++) {
          int to = y * width + right;
          for (int at = y * width + column * side; at < to; at++) {
            if (on[at] > 0) {
              values[n++] = cells[at];
            }
          }
        }
        if (n > 0) {
          out.set(column, row, selection.nth(values, n, (int) Math.min(n - 1, q * n)));
        }
      }
    }
    return out;
  }

  /** Spreads block values over the cells, linearly between the blocks' centres. */
  Raster spread(Raster blocks) {
    Raster out = new Raster(width, height);
    float[] in = blocks.cells();
    Between[] across = new Between[width];
    for (int x = 0; x < width; x++) {
      across[x] = new Between(x, columns);
    }
    for (int y = 0; y < height; y++) {
      Between row = new Between(y, rows);
      int above = row.first * columns;
      int below = row.second * columns;
      for (int x = 0; x < width; x++) {
        Between column = across[x];
        double fx = column.part;
        double upper = in[above + column.first] * (1 - fx) + in[above + column.second] * fx;
        double lower = in[below + column.first] * (1 - fx) + in[below + column.second] * fx;
        out.set(x, y, (float) (upper * (1 - row.part) + lower * row.part));
      }
    }
    return out;
  }

  /** The two blocks between whose centres a cell lies, and how far on from the first. */
  private final class Between {
    final int first;
    final int second;
    final double part;

    Between(int cell, int blocks) {
      double at = Math.min(Math.max((cell + 0.5) / side - 0.5, 0), blocks - 1);
      this.first = Math.min((int) at, Math.max(0, blocks - 2));
      this.second = Math.min(first + 1, blocks - 1);
      this.part = at - first;
    }
  }

  /** The first of from, from + step, … that is not negative. */
  static int firstFrom(int from, int step) {
    return from >= 0 ? from : from + (-from + step - 1) / step * step;
  }
}
