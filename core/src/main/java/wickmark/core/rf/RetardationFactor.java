package wickmark.core.rf;

import java.math.BigDecimal;
import wickmark.core.uncertainty.Decimals;

/**
 * Retardation factor R<sub>F</sub> of a spot: distance moved by the spot's centre over the distance
 * moved by the solvent front, both from the baseline.
 *
 * <ul>
 *   <li>It has no unit and lies between 0 (a spot still on the baseline) and 1 (a spot on the
 *       front), both included;
 *   <li>a value outside is refused, not clamped.
 * </ul>
 *
 * <p>Reference: IUPAC, Nomenclature for chromatography (1993), Pure Appl. Chem. 65, 819, p. 845;
 * Gold Book R05353.
 *
 * @param standardUncertainty k = 1, not below 0
 */
public record RetardationFactor(double value, double standardUncertainty) {

  /** The number of decimals that the trade prints. */
  public static final int DECIMALS = 2;

  /** Written so that NaN is refused too. */
  public RetardationFactor {
    if (!(value >= 0 && value <= 1)) {
      throw new IllegalArgumentException("Rf must lie between 0 and 1, was " + value);
    }
    if (!(standardUncertainty >= 0)) {
      throw new IllegalArgumentException(
          "the uncertainty of Rf must not be below 0, was " + standardUncertainty);
    }
  }

  /**
   * Returns the factor as it is printed: two decimals, rounded half-up. A value below 1 that would
   * round to 1.00 is followed by a word, as only a spot on the front has Rf 1.
   */
  public String text() {
    return withWord(Decimals.text(value, DECIMALS), value < 1);
  }

  /**
   * Returns the Rf of two distances as it is printed, rounded once from the exact decimal quotient.
   *
   * @param spot distance of the spot's centre from the baseline, not below 0
   * @param front distance of the front from the baseline in the same unit, above 0 and not below
   *     {@code spot}
   */
  public static String text(BigDecimal spot, BigDecimal front) {
    if (front.signum() <= 0 || spot.signum() < 0 || spot.compareTo(front) > 0) {
      throw new IllegalArgumentException(
          "Rf must lie between 0 and 1, was " + spot + " / " + front);
    }
    BigDecimal printed = Decimals.quotient(spot, front, DECIMALS);
    return withWord(printed.toPlainString(), spot.compareTo(front) < 0);
  }

  /** Returns value and expanded uncertainty (k = 2) to the digits that the uncertainty allows. */
  public String textWithUncertainty() {
    double expanded = 2 * standardUncertainty;
    int decimals = Math.max(DECIMALS, Decimals.forUncertainty(expanded));
    return withWord(Decimals.text(value, decimals), value < 1)
        + " ± "
        + Decimals.text(expanded, decimals);
  }

  private static String withWord(String printed, boolean belowOne) {
    return belowOne && printed.startsWith("1") ? printed + " (just below 1)" : printed;
  }
}
