package wickmark.core.match;

import java.util.Optional;
import wickmark.core.colour.DyeAbsorbance;

/**
 * A spot of the unknown that is two spots of references run into one: absorbances add up, so its
 * colour is a mixture of theirs, and its centre lies between theirs according to their parts.
 *
 * @param colourDifference CIEDE2000 between the spot and the best mixture, at like strength
 * @param rfDeviations off the centre expected, over its standard uncertainty
 * @param colourDeviations the colour difference over its standard uncertainty
 */
record Blend(
    SpotSignature unknown,
    SpotSignature first,
    SpotSignature second,
    double colourDifference,
    double rfDeviations,
    double colourDeviations) {

  /** Cost of two spots running into one where both could be seen: one case in twelve. */
  private static final double RUN_TOGETHER = 2.5;

  /** A dye with a smaller part than this does not show in the mixture. */
  private static final double LEAST_PART = 0.15;

  /** Two spots further apart than this part of the blend's height are seen as two. */
  private static final double MOST_APART = 0.8;

  /**
   * Uncertainty of the centre as a part of the distance between the two: parts are only guessed.
   */
  private static final double CENTRE = 0.25;

  /** Colours of a mixture are as uncertain as those of spots that overlap. */
  private static final double COLOUR = 2;

  /** Says whether a spot of this Rf lies within a spot of the unknown. */
  static boolean mayHide(SpotSignature reference, SpotSignature unknown) {
    return Math.abs(reference.rf().value() - unknown.rf().value()) <= unknown.halfHeight();
  }

  /** Returns the blend of two reference spots in one of the unknown, if it can be one. */
  static Optional<Blend> of(
      SpotSignature unknown, SpotSignature first, SpotSignature second, MatchSettings settings) {
    double apart = Math.abs(first.rf().value() - second.rf().value());
    DyeAbsorbance p = DyeAbsorbance.of(first.colour());
    DyeAbsorbance q = DyeAbsorbance.of(second.colour());
    if (apart > MOST_APART * 2 * unknown.halfHeight() || p.isBlank() || q.isBlank()) {
      return Optional.empty();
    }
    DyeMixture mixture = mixture(unknown, first, second, settings);
    if (Math.min(mixture.firstPart(), mixture.secondPart()) < LEAST_PART) {
      return Optional.empty();
    }
    double centre =
        mixture.firstPart() * first.rf().value() + mixture.secondPart() * second.rf().value();
    double own = unknown.rf().standardUncertainty();
    double uncertainty =
        StrictMath.sqrt(
            settings.repeatability() * settings.repeatability()
                + own * own
                + CENTRE * CENTRE * apart * apart);
    double colour =
        DyeAbsorbance.differenceAtLikeStrength(unknown.colour(), mixture.sum().toLab()).value();
    Blend blend =
        new Blend(
            unknown,
            first,
            second,
            colour,
            Math.abs(unknown.rf().value() - centre) / uncertainty,
            colour / (COLOUR * settings.toleranceColour() / 2));
    return blend.deviationCost() <= SpotPair.LIMIT ? Optional.of(blend) : Optional.empty();
  }

  /** Two spots of one dye share by their depth, as their colours cannot tell. */
  private static DyeMixture mixture(
      SpotSignature unknown, SpotSignature first, SpotSignature second, MatchSettings settings) {
    DyeAbsorbance p = DyeAbsorbance.of(first.colour());
    double apart = DyeAbsorbance.differenceAtLikeStrength(first.colour(), second.colour()).value();
    if (apart <= settings.toleranceColour() / 2) {
      double part = first.peakAbsorbance() / (first.peakAbsorbance() + second.peakAbsorbance());
      return new DyeMixture(part, 1 - part, p);
    }
    return DyeMixture.of(DyeAbsorbance.of(unknown.colour()), p, DyeAbsorbance.of(second.colour()));
  }

  boolean has(SpotSignature reference) {
    return first.equals(reference) || second.equals(reference);
  }

  private double deviationCost() {
    return (rfDeviations * rfDeviations + colourDeviations * colourDeviations) / 2;
  }

  double cost() {
    return RUN_TOGETHER + deviationCost();
  }
}
