package wickmark.cli.calibration;

import java.util.List;

/** Pairs a lane's true spots with those found: as many as possible, then as close as possible. */
final class SpotPairing {
  /** Greatest distance in Rf of a pair. */
  private static final double REACH = 0.06;

  private SpotPairing() {}

  /**
   * For each true spot the index of the one found, or −1. Both lists ascend, so pairs do not cross
   * and a dynamic programme over both finds the best.
   */
  static int[] of(List<Double> truth, List<Double> found) {
    int n = truth.size();
    int m = found.size();
    double[][] best = new double[n + 1][m + 1];
    for (int i = n - 1; i >= 0; i--) {
      for (int j = m - 1; j >= 0; j--) {
        best[i][j] = Math.max(best[i + 1][j], best[i][j + 1]);
        best[i][j] = Math.max(best[i][j], worth(truth.get(i), found.get(j)) + best[i + 1][j + 1]);
      }
    }
    int[] pair = new int[n];
    int j = 0;
    for (int i = 0; i < n; i++) {
      pair[i] = -1;
      while (j < m && best[i][j] == best[i][j + 1] && best[i][j] > best[i + 1][j]) {
        j++;
      }
      if (j < m && best[i][j] > best[i + 1][j]) {
        pair[i] = j++;
      }
    }
    return pair;
  }

  /** More than any sum of distances for a pair, less its distance; 0 for none. */
  private static double worth(double truth, double found) {
    double apart = Math.abs(truth - found);
    return apart > REACH ? 0 : 1 - apart;
  }
}
