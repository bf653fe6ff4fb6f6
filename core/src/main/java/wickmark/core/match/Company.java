package wickmark.core.match;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * The constant company of a reference's dyes: in the unknown they are all paler or all stronger
 * than in the reference, by about one factor, which its strongest spot gives.
 *
 * @param anchor the strongest spot's pair; empty if there is none
 */
record Company(Optional<SpotPair> anchor) {

  /**
   * Standard deviation of the logarithm of how much paler one dye is in the unknown than another of
   * the same reference: dyes of one sample are not always in the same proportion, and their spots
   * spread differently. A factor of two.
   */
  static final double SPREAD = 0.7;

  /** The greatest cost: a dye may also come from another reference of the set. */
  private static final double MOST = 3;

  private static final double TENTH = 10;

  private static final double LEAST_ABSORBANCE = 1e-3;

  static Company of(List<SpotPair> pairs) {
    return new Company(
        pairs.stream().max(Comparator.comparingDouble(pair -> pair.reference().peakAbsorbance())));
  }

  /** How much paler the reference's dyes are in the unknown; 1 if that is not known. */
  double dilution() {
    return anchor.map(Company::ratio).orElse(1.0);
  }

  boolean isAnchor(SpotPair pair) {
    return anchor.filter(pair::equals).isPresent();
  }

  /** Cost of a pair whose dye is out of proportion to the strongest's. */
  double cost(SpotPair pair) {
    if (isAnchor(pair)) {
      return 0;
    }
    double off = StrictMath.log(ratio(pair) / dilution()) / SPREAD;
    return Math.min(MOST, off * off / 4);
  }

  /**
   * Says whether the reference can give only a small part of the unknown's spot, less than a tenth:
   * then the spot must be explained by something else.
   */
  boolean givesLittleOf(SpotPair pair) {
    return !isAnchor(pair) && ratio(pair) > TENTH * dilution();
  }

  private static double ratio(SpotPair pair) {
    return Math.max(LEAST_ABSORBANCE, pair.unknown().peakAbsorbance())
        / Math.max(LEAST_ABSORBANCE, pair.reference().peakAbsorbance());
  }
}
