package wickmark.core.match;

import java.util.Arrays;

/**
 * The cheapest one-to-one assignment of rows to columns (the Hungarian method with potentials; time
 * grows with the cube of the size). Of equally cheap ones the same is always chosen.
 */
final class CheapestAssignment {
  private CheapestAssignment() {}

  /**
   * Returns the column of each row.
   *
   * @param costs finite; each row as long as there are columns, and not fewer columns than rows
   */
  static int[] columns(double[][] costs) {
    int rows = costs.length;
    int columns = rows == 0 ? 0 : costs[0].length;
    double[] rowPotential = new double[rows + 1];
    double[] columnPotential = new double[columns + 1];
    int[] rowOf = new int[columns + 1];
    for (int row = 1; row <= rows; row++) {
      rowOf[0] = row;
      augment(costs, rowPotential, columnPotential, rowOf);
    }
    int[] result = new int[rows];
    for (int column = 1; column <= columns; column++) {
      if (rowOf[column] > 0) {
        result[rowOf[column] - 1] = column - 1;
      }
    }
    return result;
  }

  /**
   * Finds a place for the row that waits in {@code rowOf[0]}, moving others where that is cheaper.
   */
  private static void augment(
      double[][] costs, double[] rowPotential, double[] columnPotential, int[] rowOf) {
    int columns = rowOf.length - 1;
    double[] slack = new double[columns + 1];
    int[] cameFrom = new int[columns + 1];
    boolean[] done = new boolean[columns + 1];
    Arrays.fill(slack, Double.POSITIVE_INFINITY);
    int column = 0;
    do {
      done[column] = true;
      int row = rowOf[column];
      int next = 0;
      double step = Double.POSITIVE_INFINITY;
      for (int j = 1; j <= columns; j++) {
        if (done[j]) {
          continue;
        }
        double reduced = costs[row - 1][j - 1] - rowPotential[row] - columnPotential[j];
        if (reduced < slack[j]) {
          slack[j] = reduced;
          cameFrom[j] = column;
        }
        if (slack[j] < step) {
          step = slack[j];
          next = j;
        }
      }
      for (int j = 0; j <= columns; j++) {
        if (done[j]) {
          rowPotential[rowOf[j]] += step;
          columnPotential[j] -= step;
        } else {
          slack[j] -= step;
        }
      }
      column = next;
    } while (rowOf[column] != 0);
    while (column != 0) {
      rowOf[column] = rowOf[cameFrom[column]];
      column = cameFrom[column];
    }
  }
}
