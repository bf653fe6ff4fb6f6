package wickmark.core.chromatogram;

import java.util.List;
import wickmark.core.uncertainty.Measured;

/**
 * One sample's path.
 *
 * @param frontDistance from the baseline, in the strip's unit of length
 * @param spots from the front down
 * @param leftOut the places in {@link LaneEvidence#spots} of what lies wholly beyond the lines and
 *     is no spot of this lane
 */
public record Lane(
    String name, LaneRole role, Measured frontDistance, List<Spot> spots, List<Integer> leftOut) {

  /** Keeps copies of the lists. */
  public Lane {
    spots = List.copyOf(spots);
    leftOut = List.copyOf(leftOut);
  }
}
