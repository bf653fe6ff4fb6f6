package wickmark.core.match;

import wickmark.core.chromatogram.SpotFlag;
import wickmark.core.colour.ColourName;
import wickmark.core.colour.DyeAbsorbance;

/**
 * A spot of the unknown and a spot of a reference, taken for the same dye.
 *
 * @param rfDifference unknown minus reference
 * @param colourDifference CIEDE2000 at like strength
 * @param rfDeviations the difference in Rf over its standard uncertainty, not below 0
 * @param colourDeviations the difference in colour over its standard uncertainty
 */
record SpotPair(
    SpotSignature unknown,
    SpotSignature reference,
    double rfDifference,
    double colourDifference,
    double rfDeviations,
    double colourDeviations) {

  /**
   * Cost above which two spots are not the same dye: that of a spot which no reference explains. It
   * is the logarithm of how much better a fitting pair is than two spots thrown at random: Rf over
   * 0 to 1 against a bell of 0.012 (factor 33) and one of about twelve tellable colours.
   */
  static final double LIMIT = 6;

  /** By how much an overlapping spot's colour is less certain. */
  private static final double OVERLAP_COLOUR = 2;

  /**
   * Part of its half height by which the centre of a spot may lie elsewhere than that of the same
   * dye in another lane, if another spot presses against it or if it tails: tails grow with the
   * amount of dye.
   */
  private static final double UNEVEN_SHIFT = 0.15;

  static SpotPair of(SpotSignature unknown, SpotSignature reference, MatchSettings settings) {
    double difference = unknown.rf().value() - reference.rf().value();
    boolean overlapped = overlapped(unknown) || overlapped(reference);
    double variance = settings.repeatability() * settings.repeatability();
    for (SpotSignature spot : new SpotSignature[] {unknown, reference}) {
      double own = spot.rf().standardUncertainty();
      double shift = isUneven(spot) ? UNEVEN_SHIFT * spot.halfHeight() : 0;
      variance += own * own + shift * shift;
    }
    double colour =
        DyeAbsorbance.differenceAtLikeStrength(unknown.colour(), reference.colour()).value();
    double colourUncertainty = settings.toleranceColour() / 2 * (overlapped ? OVERLAP_COLOUR : 1);
    return new SpotPair(
        unknown,
        reference,
        difference,
        colour,
        StrictMath.abs(difference) / StrictMath.sqrt(variance),
        colour / colourUncertainty);
  }

  private static boolean overlapped(SpotSignature spot) {
    return spot.flags().contains(SpotFlag.OVERLAPPED);
  }

  private static boolean isUneven(SpotSignature spot) {
    return overlapped(spot) || spot.flags().contains(SpotFlag.TAILING);
  }

  double cost() {
    return (rfDeviations * rfDeviations + colourDeviations * colourDeviations) / 2;
  }

  boolean fits() {
    return cost() <= LIMIT;
  }

  boolean fitsInRf() {
    return rfDeviations * rfDeviations / 2 <= LIMIT;
  }

  boolean fitsInColour() {
    return colourDeviations * colourDeviations / 2 <= LIMIT;
  }

  /** Says whether a person would call both by the same colour, too. */
  boolean isOfOneName() {
    return fitsInColour() && ColourName.of(unknown.colour()) == ColourName.of(reference.colour());
  }
}
