package wickmark.cli.calibration;

/**
 * Pairs things of two rows in their order, as many as possible, and of those pairings takes that
 * with the least sum of distances: a dynamic programme over both rows.
 */
final class OrderedPairing {
  private OrderedPairing() {}

  /** How far the first row's i-th thing is from the second's j-th. */
  @FunctionalInterface
  interface Distance {
    double between(int i, int j);
  }

  /** For each of n things the index of its pair among m, or −1; none is farther than the reach. */
  static int[] of(int n, int m, Distance distance, double reach) {
    double[][] best = new double[n + 1][m + 1];
    double[][] worth = new double[n][m];
    for (int i = n - 1; i >= 0; i--) {
      for (int j = m - 1; j >= 0; j--) {
        double apart = distance.between(i, j);
        // More than any sum of the distances of what is paired at all.
        worth[i][j] = apart > reach ? 0 : n + 1 - apart / reach;
        best[i][j] =
            Math.max(worth[i][j] + best[i + 1][j + 1], Math.max(best[i + 1][j], best[i][j + 1]));
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
}
