package wickmark.cli.hand;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalInt;

/** Which column holds what, by the names in the header row. */
final class Columns {
  /** What a column may hold. */
  enum Content {
    LANE,
    SPOT,
    DISTANCE,
    FRONT,
    RF,
    READER
  }

  private final Map<Content, Integer> places = new EnumMap<>(Content.class);
  private final Map<Content, LengthUnit> units = new EnumMap<>(Content.class);
  private final List<String> unused = new ArrayList<>();
  private final int width;

  private Columns(int width) {
    this.width = width;
  }

  static Columns of(List<String> header) {
    Columns columns = new Columns(header.size());
    for (int i = 0; i < header.size(); i++) {
      columns.take(header.get(i), i);
    }
    return columns;
  }

  private void take(String name, int place) {
    String plain = name.toLowerCase(Locale.ROOT).replaceAll("[^a-z]", "");
    Content content =
        switch (plain) {
          case "lane" -> Content.LANE;
          case "spot" -> Content.SPOT;
          case "distance", "distancemm", "distancecm" -> Content.DISTANCE;
          case "front", "frontmm", "frontcm" -> Content.FRONT;
          case "rf" -> Content.RF;
          case "reader" -> Content.READER;
          default -> null;
        };
    if (content == null || places.containsKey(content)) {
      if (!name.isBlank()) {
        unused.add(name.strip());
      }
      return;
    }
    places.put(content, place);
    units.put(content, plain.endsWith("cm") ? LengthUnit.CENTIMETRE : LengthUnit.MILLIMETRE);
  }

  boolean isHeader() {
    return places.containsKey(Content.LANE) && places.containsKey(Content.SPOT);
  }

  boolean hasNumbers() {
    return places.containsKey(Content.DISTANCE)
        || places.containsKey(Content.FRONT)
        || places.containsKey(Content.RF);
  }

  boolean has(Content content) {
    return places.containsKey(content);
  }

  int known() {
    return places.size();
  }

  /** Names of columns that are not used, in order. */
  List<String> unused() {
    return List.copyOf(unused);
  }

  int width() {
    return width;
  }

  OptionalInt place(Content content) {
    Integer place = places.get(content);
    return place == null ? OptionalInt.empty() : OptionalInt.of(place);
  }

  /** The unit that the column's name states; millimetres where it states none. */
  LengthUnit unit(Content content) {
    return units.getOrDefault(content, LengthUnit.MILLIMETRE);
  }

  /** Returns the cell of a row without spaces around it; empty where the row is too short. */
  String cell(Content content, List<String> cells) {
    OptionalInt place = place(content);
    return place.isPresent() && place.getAsInt() < cells.size()
        ? cells.get(place.getAsInt()).replace('\u00A0', ' ').strip()
        : "";
  }
}
