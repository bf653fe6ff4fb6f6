package wickmark.imaging.raster;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;

class RidgePathTest {
  private static final int COLUMNS = 6;
  private static final int ROWS = 5;
  private static final double COST = 0.2;

  private static double best(double[][] gain, int x, int y, int steepest) {
    double best = Double.NEGATIVE_INFINITY;
    for (int j = 0; x + 1 < COLUMNS && j < ROWS; j++) {
      if (Math.abs(j - y) <= steepest) {
        best = Math.max(best, best(gain, x + 1, j, steepest) - COST * Math.abs(j - y));
      }
    }
    return gain[x][y] + (x + 1 < COLUMNS ? best : 0);
  }

  /** Against all paths that there are. */
  @Test
  void noPathGainsMore() {
    Random chance = new Random(17);
    for (int round = 0; round < 50; round++) {
      double[][] gain = new double[COLUMNS][ROWS];
      for (double[] column : gain) {
        for (int y = 0; y < ROWS; y++) {
          column[y] = chance.nextDouble();
        }
      }
      int steepest = 1 + round % 3;
      double most = Double.NEGATIVE_INFINITY;
      for (int y = 0; y < ROWS; y++) {
        most = Math.max(most, best(gain, 0, y, steepest));
      }

      int[] path = RidgePath.strongest(gain, steepest, COST);

      double sum = gain[0][path[0]];
      for (int x = 1; x < COLUMNS; x++) {
        int step = Math.abs(path[x] - path[x - 1]);
        assertThat(step).isLessThanOrEqualTo(steepest);
        sum += gain[x][path[x]] - COST * step;
      }
      assertThat(sum).isCloseTo(most, within(1e-9));
    }
  }
}
