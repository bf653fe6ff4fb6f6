package wickmark.imaging.lane;

import java.util.Map;
import java.util.NavigableMap;
import java.util.OptionalDouble;
import java.util.TreeMap;

/** Origins that the person says, on the steps across the strip. */
final class SaidOrigins {
  /** By lane. */
  private final NavigableMap<Integer, Double> mm;

  /** Lanes by the step in which their origin lies. */
  private final NavigableMap<Integer, Integer> lanes = new TreeMap<>();

  private SaidOrigins(NavigableMap<Integer, Double> mm) {
    this.mm = mm;
    mm.forEach((lane, at) -> lanes.put((int) Math.floor(at / LaneEvidence.STEP_MM), lane));
  }

  /** None. */
  static SaidOrigins none() {
    return new SaidOrigins(new TreeMap<>());
  }

  /** Those said in columns of cells. */
  static SaidOrigins of(SaidLanes said, double cellsPerMm) {
    NavigableMap<Integer, Double> mm = new TreeMap<>();
    said.origins().forEach((lane, column) -> mm.put(lane, column / cellsPerMm));
    return new SaidOrigins(mm);
  }

  /** Whether a stretch can be the lane of this number: it holds its origin and no other's. */
  boolean allows(int lane, int from, int to) {
    if (lanes.isEmpty()) {
      return true;
    }
    NavigableMap<Integer, Integer> inside = lanes.subMap(from, true, to, false);
    return mm.containsKey(lane)
        ? inside.size() == 1 && inside.firstEntry().getValue() == lane
        : inside.isEmpty();
  }

  /** The place of the origin in a stretch that holds one, mm. */
  OptionalDouble in(int from, int to) {
    Map.Entry<Integer, Integer> inside = lanes.isEmpty() ? null : lanes.ceilingEntry(from);
    Double at = inside == null || inside.getKey() >= to ? null : mm.get(inside.getValue());
    return at == null ? OptionalDouble.empty() : OptionalDouble.of(at);
  }
}
