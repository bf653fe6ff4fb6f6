package wickmark.imaging.spot;

/** Weighted least squares with amounts that are not below 0, by coordinate descent. */
final class NonNegative {
  private NonNegative() {}

  /**
   * Solves for the amounts a that best give data ≈ Σ a[j] · basis[j].
   *
   * @param basis one row for each amount
   */
  static double[] solve(double[][] basis, double[] data, double[] weight) {
    int m = basis.length;
    double[][] normal = new double[m][m];
    double[] right = new double[m];
    for (int i = 0; i < m; i++) {
      for (int k = 0; k < data.length; k++) {
        right[i] += weight[k] * basis[i][k] * data[k];
      }
      for (int j = i; j < m; j++) {
        double sum = 0;
        for (int k = 0; k < data.length; k++) {
          sum += weight[k] * basis[i][k] * basis[j][k];
        }
        normal[i][j] = sum;
        normal[j][i] = sum;
      }
      normal[i][i] += 1e-12;
    }
    double[] a = new double[m];
    for (int round = 0; round < 200; round++) {
      double change = 0;
      for (int i = 0; i < m; i++) {
        double r = right[i];
        for (int j = 0; j < m; j++) {
          r -= j == i ? 0 : normal[i][j] * a[j];
        }
        double next = Math.max(0, r / normal[i][i]);
        change = Math.max(change, Math.abs(next - a[i]));
        a[i] = next;
      }
      if (change < 1e-9) {
        break;
      }
    }
    return a;
  }
}
