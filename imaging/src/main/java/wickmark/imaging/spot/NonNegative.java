package wickmark.imaging.spot;

/** Weighted least squares with amounts that are not below 0, by coordinate descent. */
final class NonNegative {
  private final double[][] weighted;
  private final double[][] normal;

  /**
   * Takes what several data have in common.
   *
   * @param basis one row for each amount
   */
  NonNegative(double[][] basis, double[] weight) {
    int m = basis.length;
    this.weighted = new double[m][weight.length];
    this.normal = new double[m][m];
    for (int i = 0; i < m; i++) {
      for (int k = 0; k < weight.length; k++) {
        weighted[i][k] = weight[k] * basis[i][k];
      }
      for (int j = i; j < m; j++) {
        double sum = dot(weighted[i], basis[j]);
        normal[i][j] = sum;
        normal[j][i] = sum;
      }
      normal[i][i] += 1e-12;
    }
  }

  private static double dot(double[] a, double[] b) {
    double sum = 0;
    for (int k = 0; k < a.length; k++) {
      sum += a[k] * b[k];
    }
    return sum;
  }

  /** Solves for the amounts a that best give data ≈ Σ a[j] · basis[j]. */
  double[] solve(double[] data) {
    int m = normal.length;
    double[] right = new double[m];
    for (int i = 0; i < m; i++) {
      right[i] = dot(weighted[i], data);
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
