package wickmark.imaging;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.TreeMap;
import java.util.stream.IntStream;
import wickmark.imaging.lane.LaneTrack;
import wickmark.imaging.lane.SaidLanes;
import wickmark.imaging.straight.PaperShape;
import wickmark.imaging.straight.StripFrame;

/** Lanes whose origins the person says. */
final class LanePlaces {
  private final List<String> names;
  private final OptionalInt count;
  private final Map<String, Double> columns = new LinkedHashMap<>();
  private final double width;
  private final double cellsPerMm;

  /** Takes the names, from the left, and the places said on one strip. */
  LanePlaces(ReadingRequest request, PaperShape shape, StripFrame frame, double cellsPerMm) {
    this.names = request.laneNames();
    this.count = request.lanes();
    this.cellsPerMm = cellsPerMm;
    this.width = frame.width();
    request
        .lines()
        .origins()
        .forEach(
            (name, place) -> {
              if (shape.contains(place)) {
                columns.put(name, frame.fromPhoto(place)[0]);
              }
            });
  }

  /** Columns of the origins that lie on this strip, by lane. */
  Map<String, Double> columns() {
    return Map.copyOf(columns);
  }

  private String name(int lane) {
    return lane < names.size() ? names.get(lane) : Integer.toString(lane + 1);
  }

  /** The lanes' names: as said, else 1, 2, 3 and so on. */
  List<String> names(int lanes) {
    return IntStream.range(0, lanes).mapToObj(this::name).toList();
  }

  /** All lanes, where the origin of each named one is said: there is nothing left to search. */
  Optional<List<LaneTrack>> all() {
    List<LaneTrack> lanes = new ArrayList<>();
    for (String name : names) {
      Double said = columns.get(name);
      if (said == null) {
        return Optional.empty();
      }
      lanes.add(LaneTrack.said(said));
    }
    return lanes.isEmpty() ? Optional.empty() : Optional.of(LaneTrack.bounded(lanes, width));
  }

  /** What is said for the search of the others. */
  SaidLanes said() {
    return new SaidLanes(count, byNumber());
  }

  /** Whether the origins that were said lie in the order of the lanes' names, and apart. */
  boolean areInOrder() {
    double before = Double.NEGATIVE_INFINITY;
    for (double column : byNumber().values()) {
      if (column <= before + SaidLanes.LEAST_APART_MM * cellsPerMm) {
        return false;
      }
      before = column;
    }
    return true;
  }

  private NavigableMap<Integer, Double> byNumber() {
    NavigableMap<Integer, Double> origins = new TreeMap<>();
    for (int lane = 0; lane < count.orElse(SaidLanes.MOST); lane++) {
      Double column = columns.get(name(lane));
      if (column != null) {
        origins.put(lane, column);
      }
    }
    return origins;
  }
}
