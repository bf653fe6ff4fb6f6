package wickmark.cli.hand;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Which column holds what, by the names in the header row. */
final class Columns {
  /** What a column may hold. */
  enum Content {
    LANE("lane"),
    SPOT("spot"),
    DISTANCE("distance_mm"),
    FRONT("front_mm"),
    RF("rf"),
    READER("reader");

    private final String documented;

    Content(String documented) {
      this.documented = documented;
    }
  }

  private static final Pattern QUOTED = Pattern.compile("[“”„‟«»‘’](.*)[“”‟«»‘’]");

  private final Map<Content, Integer> places = new EnumMap<>(Content.class);
  private final Map<Content, LengthUnit> units = new EnumMap<>(Content.class);
  private final List<String> unused = new ArrayList<>();
  private final List<String> understood = new ArrayList<>();
  private final int width;

  private Columns(int width) {
    this.width = width;
  }

  static Columns of(List<String> header) {
    return of(header, List.of());
  }

  /**
   * Reads names of columns.
   *
   * @param above row above the names, in which one cell may stand over several columns
   */
  static Columns of(List<String> header, List<String> above) {
    Columns columns = new Columns(header.size());
    List<String> over = spread(above, header.size());
    for (boolean asDocumented : new boolean[] {true, false}) {
      for (int i = 0; i < header.size(); i++) {
        if (!columns.places.containsValue(i)) {
          columns.take(header.get(i), over.get(i), i, asDocumented);
        }
      }
    }
    for (int i = 0; i < header.size(); i++) {
      if (!columns.places.containsValue(i) && !header.get(i).isBlank()) {
        columns.unused.add(header.get(i).strip());
      }
    }
    return columns;
  }

  /** Cells that were merged hold their text in the first of them; a title over all is no name. */
  private static List<String> spread(List<String> above, int width) {
    List<String> over = new ArrayList<>();
    String last = "";
    for (int i = 0; i < width; i++) {
      String cell = i < above.size() ? above.get(i).strip() : "";
      last = cell.isEmpty() ? last : cell;
      over.add(last);
    }
    boolean isTitle = over.isEmpty() || !over.get(0).isEmpty();
    over.replaceAll(text -> isTitle ? "" : text);
    return over;
  }

  private void take(String name, String over, int place, boolean asDocumented) {
    ColumnName own = ColumnName.of(name);
    ColumnName both = ColumnName.of(over + " " + name);
    boolean isOwn = own.content().filter(content -> !places.containsKey(content)).isPresent();
    ColumnName meant = isOwn ? own : both;
    if (name.isBlank()
        || meant.content().isEmpty()
        || (asDocumented && !meant.isAsDocumented())
        || places.containsKey(meant.content().get())) {
      return;
    }
    Content content = meant.content().get();
    places.put(content, place);
    Optional<LengthUnit> unit = own.unit().or(both::unit);
    units.put(content, unit.orElse(LengthUnit.MILLIMETRE));
    if (!meant.isAsDocumented()) {
      String whole = isOwn ? name : over + " " + name;
      understood.add("\"" + NumberCell.shortened(whole.strip()) + "\" as " + content.documented);
    }
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

  /** What was read out of names that are not those of the documentation. */
  List<String> understood() {
    return List.copyOf(understood);
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

  /**
   * Returns the cell of a row without spaces and typographers' quotation marks around it; empty
   * where the row is too short.
   */
  String cell(Content content, List<String> cells) {
    OptionalInt place = place(content);
    return place.isPresent() && place.getAsInt() < cells.size()
        ? bare(cells.get(place.getAsInt()))
        : "";
  }

  static String bare(String cell) {
    String stripped = cell.replace('\u00A0', ' ').replace('\u202F', ' ').strip();
    Matcher quoted = QUOTED.matcher(stripped);
    return quoted.matches() ? quoted.group(1).strip() : stripped;
  }
}
