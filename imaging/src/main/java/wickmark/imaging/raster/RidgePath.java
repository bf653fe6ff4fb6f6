package wickmark.imaging.raster;

/** The smooth path along a ridge, by dynamic programming. */
public final class RidgePath {
  private RidgePath() {}

  /**
   * Returns the row of the path in each column: that of the greatest gain in all, less what its
   * steps cost.
   *
   * @param gain by column and by row
   * @param steepest most rows from one column to the next
   * @param stepCost what each of them costs
   */
  public static int[] strongest(double[][] gain, int steepest, double stepCost) {
    int columns = gain.length;
    int rows = gain[0].length;
    double[][] total = new double[columns][rows];
    int[][] from = new int[columns][rows];
    total[0] = gain[0].clone();
    for (int x = 1; x < columns; x++) {
      for (int y = 0; y < rows; y++) {
        double best = Double.NEGATIVE_INFINITY;
        for (int j = Math.max(0, y - steepest); j <= Math.min(rows - 1, y + steepest); j++) {
          double value = total[x - 1][j] - stepCost * Math.abs(j - y);
          if (value > best) {
            best = value;
            from[x][y] = j;
          }
        }
        total[x][y] = best + gain[x][y];
      }
    }
    int at = 0;
    for (int y = 1; y < rows; y++) {
      at = total[columns - 1][y] > total[columns - 1][at] ? y : at;
    }
    int[] path = new int[columns];
    for (int x = columns - 1; x >= 0; x--) {
      path[x] = at;
      at = from[x][at];
    }
    return path;
  }
}
