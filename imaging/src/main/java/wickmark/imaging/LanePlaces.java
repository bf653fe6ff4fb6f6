package wickmark.imaging;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import wickmark.imaging.lane.LaneTrack;
import wickmark.imaging.straight.PaperShape;
import wickmark.imaging.straight.StripFrame;

/** Lanes whose origins the person says, in place of those found. */
final class LanePlaces {
  private final List<String> names;
  private final Map<String, Double> columns = new LinkedHashMap<>();
  private final double width;

  /** Takes the names, from the left, and the places said on one strip. */
  LanePlaces(ReadingRequest request, PaperShape shape, StripFrame frame) {
    this.names = request.laneNames();
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
    return lanes.isEmpty() ? Optional.empty() : Optional.of(bounded(lanes));
  }

  /** The lanes found, with those moved whose origin is said. */
  List<LaneTrack> moved(List<LaneTrack> found) {
    if (columns.isEmpty()) {
      return found;
    }
    List<LaneTrack> lanes = new ArrayList<>();
    for (int k = 0; k < found.size(); k++) {
      Double said = columns.get(name(k));
      lanes.add(said == null ? found.get(k) : LaneTrack.said(said));
    }
    return bounded(lanes);
  }

  /** Stain belongs to the lane whose origin is nearer. */
  private List<LaneTrack> bounded(List<LaneTrack> lanes) {
    List<LaneTrack> out = new ArrayList<>();
    for (int k = 0; k < lanes.size(); k++) {
      LaneTrack lane = lanes.get(k);
      double left = k == 0 ? 0 : (lanes.get(k - 1).originX() + lane.originX()) / 2;
      double right =
          k == lanes.size() - 1 ? width : (lane.originX() + lanes.get(k + 1).originX()) / 2;
      out.add(lane.between(left, right));
    }
    return out;
  }

  /** Whether the lanes lie in the order of their names. */
  static boolean inOrder(List<LaneTrack> lanes) {
    for (int k = 1; k < lanes.size(); k++) {
      if (lanes.get(k).originX() <= lanes.get(k - 1).originX()) {
        return false;
      }
    }
    return true;
  }
}
