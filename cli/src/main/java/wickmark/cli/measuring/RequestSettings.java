package wickmark.cli.measuring;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import wickmark.imaging.ReadingRequest;
import wickmark.imaging.ReadingRequest.Area;
import wickmark.imaging.ReadingRequest.SaidLines;
import wickmark.imaging.ReadingRequest.SaidScale;
import wickmark.imaging.ReadingRequest.SaidSpot;
import wickmark.imaging.ReadingRequest.SaidStrip;
import wickmark.imaging.ReadingRequest.Segment;
import wickmark.imaging.photo.PhotoPoint;

/**
 * What was said, as the {@code settings} of a record, and back: strings, numbers and lists of them,
 * each under the name of its option. Of the picture only what was said is there; how spots are
 * measured and compared is always there, for it always has a say.
 */
public final class RequestSettings {
  private static final String ADD = "add";
  private static final String MOVE = "move";
  private static final String REMOVE = "remove";

  private static final Set<String> NAMES =
      Set.of(
          "lanes",
          "unknown",
          "laneCount",
          "origin",
          "bottom",
          "corners",
          "baseline",
          "front",
          "ignore",
          "spots",
          "dpi",
          "stripWidth",
          "stripHeight",
          "printedLength",
          "span",
          "spanMillimetres",
          "spotCentre",
          "toleranceRf",
          "toleranceColour");

  private RequestSettings() {}

  /** Returns the names that settings can have. */
  public static Set<String> names() {
    return NAMES;
  }

  /** Returns the settings in a fixed order. */
  public static Map<String, Object> of(MeasuringRequest request) {
    Map<String, Object> settings = ofReading(request.reading());
    settings.put("spotCentre", request.centre().word());
    settings.put("toleranceRf", request.matching().toleranceRf());
    settings.put("toleranceColour", request.matching().toleranceColour());
    return settings;
  }

  private static Map<String, Object> ofReading(ReadingRequest said) {
    Map<String, Object> settings = new LinkedHashMap<>();
    putList(settings, "lanes", said.laneNames());
    putList(settings, "unknown", List.copyOf(new TreeSet<>(said.unknowns())));
    said.laneCount().ifPresent(count -> settings.put("laneCount", count));
    List<List<Object>> origins = new ArrayList<>();
    new TreeMap<>(said.lines().origins())
        .forEach((name, at) -> origins.add(List.of(name, at.x(), at.y())));
    putList(settings, "origin", origins);
    said.strip().bottom().ifPresent(end -> settings.put("bottom", OptionText.of(end)));
    putList(
        settings,
        "corners",
        said.strip().corners().stream().map(p -> List.of(p.x(), p.y())).toList());
    said.lines().baseline().ifPresent(s -> settings.put("baseline", numbers(s.from(), s.to())));
    said.lines().front().ifPresent(s -> settings.put("front", numbers(s.from(), s.to())));
    putList(
        settings,
        "ignore",
        said.strip().ignored().stream().map(a -> numbers(a.from(), a.to())).toList());
    putList(settings, "spots", said.spots().stream().map(RequestSettings::spot).toList());
    said.scale().ifPresent(scale -> putScale(settings, scale));
    return settings;
  }

  /** What is said of a spot, as a list: the word, the lane, then the places. */
  private static List<Object> spot(SaidSpot spot) {
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

  private static SaidSpot asSpot(Object value) {
    List<?> parts = Settings.asList("spots", value, -1);
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
    return Settings.asText("spots", parts.get(1));
  }

  private static PhotoPoint place(List<?> parts, int at) {
    return new PhotoPoint(
        Settings.asNumber("spots", parts.get(at)), Settings.asNumber("spots", parts.get(at + 1)));
  }

  private static void putScale(Map<String, Object> settings, SaidScale scale) {
    if (scale instanceof SaidScale.Dpi said) {
      settings.put("dpi", said.dpi());
    } else if (scale instanceof SaidScale.StripWidth said) {
      settings.put("stripWidth", said.mm());
    } else if (scale instanceof SaidScale.StripHeight said) {
      settings.put("stripHeight", said.mm());
    } else if (scale instanceof SaidScale.StripSize said) {
      settings.put("stripWidth", said.widthMm());
      settings.put("stripHeight", said.heightMm());
    } else if (scale instanceof SaidScale.Print said) {
      settings.put("printedLength", said.barMm());
    } else if (scale instanceof SaidScale.Span said) {
      settings.put("span", numbers(said.from(), said.to()));
      settings.put("spanMillimetres", said.mm());
    }
  }

  private static void putList(Map<String, Object> settings, String name, List<?> values) {
    if (!values.isEmpty()) {
      settings.put(name, values);
    }
  }

  private static List<Double> numbers(PhotoPoint from, PhotoPoint to) {
    return List.of(from.x(), from.y(), to.x(), to.y());
  }

  /**
   * Returns what was said; the usual for what a record does not say.
   *
   * @throws IllegalArgumentException if a setting of one of these names holds something else
   */
  public static MeasuringRequest from(Map<String, Object> settings) {
    Settings s = new Settings(settings);
    MeasuringRequest usual = MeasuringRequest.of(reading(s));
    return usual
        .withCentre(s.text("spotCentre").map(OptionText::spotCentre).orElse(usual.centre()))
        .withTolerances(
            s.number("toleranceRf").orElse(usual.matching().toleranceRf()),
            s.number("toleranceColour").orElse(usual.matching().toleranceColour()));
  }

  private static ReadingRequest reading(Settings s) {
    OptionalDouble count = s.number("laneCount");
    return new ReadingRequest(
        s.texts("lanes"),
        new LinkedHashSet<>(s.texts("unknown")),
        count.isPresent() ? OptionalInt.of((int) count.getAsDouble()) : OptionalInt.empty(),
        scale(s),
        new SaidStrip(
            s.list("corners").stream().map(Settings::asPoint).toList(),
            s.text("bottom").map(OptionText::bottom),
            s.list("ignore").stream()
                .map(value -> Settings.asSegment("ignore", value))
                .map(segment -> new Area(segment.from(), segment.to()))
                .toList()),
        new SaidLines(s.segment("baseline"), s.segment("front"), origins(s)),
        s.list("spots").stream().map(RequestSettings::asSpot).toList());
  }

  private static Map<String, PhotoPoint> origins(Settings s) {
    Map<String, PhotoPoint> origins = new LinkedHashMap<>();
    for (Object entry : s.list("origin")) {
      List<?> origin = Settings.asList("origin", entry, 3);
      origins.put(
          Settings.asText("origin", origin.get(0)),
          new PhotoPoint(
              Settings.asNumber("origin", origin.get(1)),
              Settings.asNumber("origin", origin.get(2))));
    }
    return origins;
  }

  private static Optional<SaidScale> scale(Settings s) {
    OptionalDouble dpi = s.number("dpi");
    if (dpi.isPresent()) {
      return Optional.of(new SaidScale.Dpi(dpi.getAsDouble()));
    }
    OptionalDouble width = s.number("stripWidth");
    OptionalDouble height = s.number("stripHeight");
    if (width.isPresent() && height.isPresent()) {
      return Optional.of(new SaidScale.StripSize(width.getAsDouble(), height.getAsDouble()));
    }
    if (width.isPresent()) {
      return Optional.of(new SaidScale.StripWidth(width.getAsDouble()));
    }
    if (height.isPresent()) {
      return Optional.of(new SaidScale.StripHeight(height.getAsDouble()));
    }
    OptionalDouble printed = s.number("printedLength");
    if (printed.isPresent()) {
      return Optional.of(new SaidScale.Print(printed.getAsDouble()));
    }
    Optional<Segment> span = s.segment("span");
    OptionalDouble millimetres = s.number("spanMillimetres");
    if (span.isPresent() != millimetres.isPresent()) {
      throw new IllegalArgumentException(
          "the settings \"span\" and \"spanMillimetres\" are not both there");
    }
    return span.map(ends -> new SaidScale.Span(ends.from(), ends.to(), millimetres.getAsDouble()));
  }

  /** Settings by name, each checked for its kind. */
  private record Settings(Map<String, Object> values) {
    List<?> list(String name) {
      @Nullable Object value = values.get(name);
      return value == null ? List.of() : asList(name, value, -1);
    }

    List<String> texts(String name) {
      return list(name).stream().map(value -> asText(name, value)).toList();
    }

    OptionalDouble number(String name) {
      @Nullable Object value = values.get(name);
      return value == null ? OptionalDouble.empty() : OptionalDouble.of(asNumber(name, value));
    }

    Optional<String> text(String name) {
      return Optional.ofNullable(values.get(name)).map(String::valueOf);
    }

    Optional<Segment> segment(String name) {
      return Optional.ofNullable(values.get(name)).map(value -> asSegment(name, value));
    }

    static List<?> asList(String name, Object value, int size) {
      if (value instanceof List<?> list && (size < 0 || list.size() == size)) {
        return list;
      }
      throw new IllegalArgumentException("the setting \"" + name + "\" is not a list as expected");
    }

    static String asText(String name, @Nullable Object value) {
      if (value instanceof String text) {
        return text;
      }
      throw new IllegalArgumentException("the setting \"" + name + "\" has a name that is no text");
    }

    static double asNumber(String name, @Nullable Object value) {
      if (value instanceof Number number) {
        return number.doubleValue();
      }
      throw new IllegalArgumentException("the setting \"" + name + "\" is not a number");
    }

    static PhotoPoint asPoint(Object value) {
      List<?> two = asList("corners", value, 2);
      return new PhotoPoint(asNumber("corners", two.get(0)), asNumber("corners", two.get(1)));
    }

    static Segment asSegment(String name, Object value) {
      List<?> four = asList(name, value, 4);
      return new Segment(
          new PhotoPoint(asNumber(name, four.get(0)), asNumber(name, four.get(1))),
          new PhotoPoint(asNumber(name, four.get(2)), asNumber(name, four.get(3))));
    }
  }
}
