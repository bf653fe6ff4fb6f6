package wickmark.core.match;

/**
 * Settings of {@link Identification}.
 *
 * @param toleranceRf how far apart two spots of one dye in two lanes of one sheet may lie in Rf, as
 *     an expanded uncertainty (k = 2), above 0. Default 0.02: the difference that practice accepts
 *     between lanes of one sheet is 0.01 to 0.02 (from memory of guidance for high-performance
 *     plates; no published figure for paper was found). The uncertainty of each spot comes on top
 * @param toleranceColour how far apart their colours may lie at like strength, in CIEDE2000, as an
 *     expanded uncertainty (k = 2), above 0. Default 4: observers accept 1.8 as the same colour and
 *     speak of two colours above 5 (J. Dent. 42(6), 2014, 637-644); a camera adds its own error
 * @param detectionLimit peak absorbance below which a spot is more likely missed than seen, above 0
 */
public record MatchSettings(double toleranceRf, double toleranceColour, double detectionLimit) {

  /** Tolerances that are not above 0 are refused. */
  public MatchSettings {
    if (!(toleranceRf > 0 && toleranceColour > 0 && detectionLimit > 0)) {
      throw new IllegalArgumentException(
          "tolerances are above 0, was "
              + toleranceRf
              + ", "
              + toleranceColour
              + ", "
              + detectionLimit);
    }
  }

  /** Returns the settings for lanes of one sheet, seen by a phone or a scanner. */
  public static MatchSettings defaults() {
    return new MatchSettings(0.02, 4, 0.06);
  }

  /** Standard deviation of the difference in Rf of one dye in two lanes, beside the measuring. */
  double repeatability() {
    return toleranceRf / 2;
  }
}
