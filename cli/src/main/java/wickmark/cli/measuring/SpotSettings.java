package wickmark.cli.measuring;

import java.util.List;
import wickmark.imaging.ReadingRequest.SaidSpot;
import wickmark.imaging.photo.PhotoPoint;

/** What was said of spots, as entries of the setting {@code spots}, and back. */
final class SpotSettings {
  private static final String ADD = "add";
  private static final String MOVE = "move";
  private static final String REMOVE = "remove";

  private SpotSettings() {}

  /** What is said of a spot, as a list: the word, the lane, then the places. */
  static List<Object> of(SaidSpot spot) {
    if (spot instanceof SaidSpot.Added added) {
      return List.of(ADD, added.lane(), added.place().x(), added.place().y());
    }
    if (spot instanceof SaidSpot.Moved moved) {
      return List.of(
          MOVE,
          moved.lane(),
          moved.found().x(),
          moved.found().y(),
          moved.place().x(),
          moved.place().y());
    }
    return List.of(REMOVE, spot.place().x(), spot.place().y());
  }

  static SaidSpot from(Object value) {
    List<?> parts = CheckedSettings.asList("spots", value, -1);
    String word = parts.isEmpty() ? "" : String.valueOf(parts.get(0));
    if (word.equals(ADD) && parts.size() == 4) {
      return new SaidSpot.Added(lane(parts), place(parts, 2));
    }
    if (word.equals(MOVE) && parts.size() == 6) {
      return new SaidSpot.Moved(lane(parts), place(parts, 2), place(parts, 4));
    }
    if (word.equals(REMOVE) && parts.size() == 3) {
      return new SaidSpot.Removed(place(parts, 1));
    }
    throw new IllegalArgumentException(
        "the setting \"spots\" has an entry that is none of [\"add\", lane, x, y], [\"move\", lane,"
            + " x, y, to x, to y] and [\"remove\", x, y]");
  }

  private static String lane(List<?> parts) {
    return CheckedSettings.asText("spots", parts.get(1));
  }

  private static PhotoPoint place(List<?> parts, int at) {
    return new PhotoPoint(
        CheckedSettings.asNumber("spots", parts.get(at)),
        CheckedSettings.asNumber("spots", parts.get(at + 1)));
  }
}
