package wickmark.core.match;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;

class CheapestAssignmentTest {

  // Worked by hand: rows to columns 2, 1, 3 at a cost of 1 + 2 + 2.
  @Test
  void isTheCheapestOfASmallTable() {
    double[][] costs = {{4, 1, 3}, {2, 0, 5}, {3, 2, 2}};

    assertThat(CheapestAssignment.columns(costs)).containsExactly(1, 0, 2);
  }

  @Test
  void isAsCheapAsTryingAll() {
    Random random = new Random(7);
    for (int trial = 0; trial < 200; trial++) {
      double[][] costs = new double[4][6];
      for (double[] row : costs) {
        for (int j = 0; j < row.length; j++) {
          row[j] = random.nextInt(20);
        }
      }
      double cost = 0;
      int[] columns = CheapestAssignment.columns(costs);
      for (int i = 0; i < columns.length; i++) {
        cost += costs[i][columns[i]];
      }
      assertThat(columns).doesNotHaveDuplicates();
      assertThat(cost).isCloseTo(cheapest(costs, 0, 0), within(1e-9));
    }
  }

  @Test
  void ofNothingIsNothing() {
    assertThat(CheapestAssignment.columns(new double[0][0])).isEmpty();
  }

  private static double cheapest(double[][] costs, int row, int taken) {
    if (row == costs.length) {
      return 0;
    }
    double best = Double.POSITIVE_INFINITY;
    for (int column = 0; column < costs[row].length; column++) {
      if ((taken >> column & 1) == 0) {
        best = Math.min(best, costs[row][column] + cheapest(costs, row + 1, taken | 1 << column));
      }
    }
    return best;
  }
}
