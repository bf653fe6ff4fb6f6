package wickmark.core.chromatogram;

import java.util.List;

/**
 * What was found on one strip, as places along its lanes.
 *
 * @param lengthsAreMillimetres whether the unit of all lengths is the millimetre; otherwise it is
 *     some unknown unit, and only Rf can be given
 * @param uncertainties what all lanes share
 * @param lanes from left to right
 */
public record StripEvidence(
    boolean lengthsAreMillimetres, SharedUncertainties uncertainties, List<LaneEvidence> lanes) {

  /** Keeps a copy of the list. */
  public StripEvidence {
    lanes = List.copyOf(lanes);
  }

  /**
   * Standard uncertainties (k = 1) that all lanes share.
   *
   * @param relativeScale of the scale over the scale; cancels in Rf; 0 where there is no scale
   * @param straightening what perspective and lens have left, without unit: the error of a distance
   *     d in a lane with front distance L is q·d·(1 − d/L), and q has this uncertainty
   * @param flatness of a place halfway between baseline and front against both, because the paper
   *     does not lie flat, in the strip's unit of length
   */
  public record SharedUncertainties(double relativeScale, double straightening, double flatness) {

    /** A value below 0 or not finite is refused. */
    public SharedUncertainties {
      if (!(relativeScale >= 0 && straightening >= 0 && flatness >= 0)
          || !Double.isFinite(relativeScale + straightening + flatness)) {
        throw new IllegalArgumentException(
            "uncertainties are finite and not below 0, was "
                + relativeScale
                + ", "
                + straightening
                + ", "
                + flatness);
      }
    }
  }
}
