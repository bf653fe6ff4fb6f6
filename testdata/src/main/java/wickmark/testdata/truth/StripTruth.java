package wickmark.testdata.truth;

import java.util.List;

/**
 * Everything that is known of a painted strip, in its own millimetres.
 *
 * @param lanes from the left
 */
public record StripTruth(
    SheetTruth sheet,
    SegmentMm baseline,
    FrontTruth front,
    List<LaneTruth> lanes,
    List<UnknownTruth> unknowns) {
  public StripTruth {
    lanes = List.copyOf(lanes);
    unknowns = List.copyOf(unknowns);
  }

  /** Returns the lane of that name. */
  public LaneTruth lane(String name) {
    return lanes.stream()
        .filter(lane -> lane.name().equals(name))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("no lane is called " + name));
  }
}
