package wickmark.core.chromatogram;

import java.util.List;

/**
 * What was found in one lane.
 *
 * @param baseline where the baseline crosses the lane
 * @param front where the front crosses the lane
 * @param spots in any order
 */
public record LaneEvidence(
    String name, LaneRole role, Place baseline, Place front, List<SpotEvidence> spots) {

  /** A front that is not above the baseline is refused. */
  public LaneEvidence {
    if (!(front.along() > baseline.along())) {
      throw new IllegalArgumentException(
          "the front of lane "
              + name
              + " must lie above its baseline, was "
              + front.along()
              + " and "
              + baseline.along());
    }
    spots = List.copyOf(spots);
  }
}
