package wickmark.core.uncertainty;

/**
 * A measured value with its standard uncertainty (k = 1), both in the same unit.
 *
 * @param standardUncertainty not below 0
 */
public record Measured(double value, double standardUncertainty) {

  /** A value that is not finite, or an uncertainty below 0, is refused. */
  public Measured {
    if (!Double.isFinite(value)
        || !(standardUncertainty >= 0)
        || Double.isInfinite(standardUncertainty)) {
      throw new IllegalArgumentException(
          "a measured value and its uncertainty are finite, the latter not below 0, was "
              + value
              + " with "
              + standardUncertainty);
    }
  }

  /** Returns the expanded uncertainty with coverage factor 2: about 95 % of errors lie within. */
  public double expandedUncertainty() {
    return 2 * standardUncertainty;
  }

  /**
   * Returns value and expanded uncertainty (k = 2) as people read them: {@code 34.62 ± 0.15}. The
   * uncertainty has one significant digit, two where the first is 1 or 2; the value has the same
   * number of decimals (JCGM 100:2008, 7.2.6: at most two digits).
   */
  public String text() {
    int decimals = Decimals.forUncertainty(expandedUncertainty());
    return Decimals.text(value, decimals) + " ± " + Decimals.text(expandedUncertainty(), decimals);
  }
}
