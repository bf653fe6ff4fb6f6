package wickmark.core.match;

import java.util.Set;
import wickmark.core.chromatogram.Spot;
import wickmark.core.chromatogram.SpotFlag;
import wickmark.core.colour.LabColour;
import wickmark.core.rf.RetardationFactor;

/**
 * What tells one spot from another.
 *
 * @param number 1 is the one nearest the front
 * @param rf with its standard uncertainty within the lane
 * @param colour with the paper as white
 * @param peakAbsorbance greatest absorbance above the paper
 * @param halfHeight half of its visible extent along the lane, over the front's distance
 * @param confidence how sure it is that there is a spot, 0 to 1
 */
record SpotSignature(
    int number,
    RetardationFactor rf,
    LabColour colour,
    double peakAbsorbance,
    double halfHeight,
    Set<SpotFlag> flags,
    double confidence) {

  /** Rf below which a spot that touches the baseline has not moved. */
  private static final double ORIGIN = 0.03;

  /** Keeps a copy of the flags. */
  SpotSignature {
    flags = Set.copyOf(flags);
  }

  /** Returns what tells a measured spot from others. */
  static SpotSignature of(Spot spot, double frontDistance) {
    return new SpotSignature(
        spot.number(),
        spot.rf(),
        spot.evidence().look().colour(),
        spot.evidence().look().peakAbsorbance(),
        (spot.distances().top() - spot.distances().bottom()) / 2 / frontDistance,
        spot.evidence().flags(),
        spot.evidence().confidence());
  }

  /**
   * Says whether this is dye that has not left its origin, which every sample may leave there: it
   * is flagged so, or reaches down to the baseline with its centre hardly above.
   */
  boolean isResidue() {
    return flags.contains(SpotFlag.AT_ORIGIN) || (rf.value() < ORIGIN && rf.value() <= halfHeight);
  }
}
