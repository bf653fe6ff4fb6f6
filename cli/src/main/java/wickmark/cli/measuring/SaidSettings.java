package wickmark.cli.measuring;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.jspecify.annotations.Nullable;
import wickmark.imaging.photo.PhotoPoint;

/**
 * What was said, as the {@code settings} of a record, and back: strings, numbers and lists of them,
 * each under the name of its option. Only what was said is there.
 */
public final class SaidSettings {
  private SaidSettings() {}

  /** Returns the settings in a fixed order. */
  public static Map<String, Object> of(Said said) {
    Map<String, Object> settings = new LinkedHashMap<>();
    SaidLanes lanes = said.lanes();
    putList(settings, "lanes", lanes.names());
    putList(settings, "unknown", lanes.unknowns());
    lanes.count().ifPresent(count -> settings.put("laneCount", count));
    List<List<Object>> origins = new ArrayList<>();
    lanes.origins().forEach((name, at) -> origins.add(List.of(name, at.x(), at.y())));
    putList(settings, "origin", origins);
    SaidPlaces places = said.places();
    places.bottom().ifPresent(end -> settings.put("bottom", OptionText.of(end)));
    putList(
        settings, "corners", places.corners().stream().map(p -> List.of(p.x(), p.y())).toList());
    places.baseline().ifPresent(line -> settings.put("baseline", numbers(line)));
    places.front().ifPresent(line -> settings.put("front", numbers(line)));
    putList(settings, "ignore", places.ignored().stream().map(SaidSettings::numbers).toList());
    said.scale().ifPresent(scale -> putScale(settings, scale));
    return settings;
  }

  private static void putScale(Map<String, Object> settings, SaidScale scale) {
    if (scale instanceof SaidScale.DotsPerInch said) {
      settings.put("dpi", said.dpi());
    } else if (scale instanceof SaidScale.StripSize said) {
      said.widthMm().ifPresent(mm -> settings.put("stripWidth", mm));
      said.heightMm().ifPresent(mm -> settings.put("stripHeight", mm));
    } else if (scale instanceof SaidScale.Span said) {
      settings.put("span", numbers(said.between()));
      settings.put("spanMillimetres", said.millimetres());
    }
  }

  private static void putList(Map<String, Object> settings, String name, List<?> values) {
    if (!values.isEmpty()) {
      settings.put(name, values);
    }
  }

  private static List<Double> numbers(PhotoLine line) {
    return List.of(line.from().x(), line.from().y(), line.to().x(), line.to().y());
  }

  /**
   * Returns what was said.
   *
   * @throws IllegalArgumentException if a setting of one of these names holds something else
   */
  public static Said from(Map<String, Object> settings) {
    Settings s = new Settings(settings);
    Map<String, PhotoPoint> origins = new LinkedHashMap<>();
    for (Object entry : s.list("origin")) {
      List<?> origin = Settings.asList("origin", entry, 3);
      origins.put(
          String.valueOf(origin.get(0)),
          new PhotoPoint(
              Settings.asNumber("origin", origin.get(1)),
              Settings.asNumber("origin", origin.get(2))));
    }
    SaidLanes lanes =
        new SaidLanes(
            s.list("lanes").stream().map(String::valueOf).toList(),
            s.list("unknown").stream().map(String::valueOf).toList(),
            s.number("laneCount").isPresent()
                ? OptionalInt.of((int) s.number("laneCount").getAsDouble())
                : OptionalInt.empty(),
            origins);
    SaidPlaces places =
        new SaidPlaces(
            s.text("bottom").map(OptionText::bottomEnd),
            s.list("corners").stream().map(Settings::asPoint).toList(),
            s.line("baseline"),
            s.line("front"),
            s.list("ignore").stream().map(line -> Settings.asLine("ignore", line)).toList());
    return new Said(lanes, places, scale(s));
  }

  private static Optional<SaidScale> scale(Settings s) {
    OptionalDouble dpi = s.number("dpi");
    if (dpi.isPresent()) {
      return Optional.of(new SaidScale.DotsPerInch(dpi.getAsDouble()));
    }
    OptionalDouble width = s.number("stripWidth");
    OptionalDouble height = s.number("stripHeight");
    if (width.isPresent() || height.isPresent()) {
      return Optional.of(new SaidScale.StripSize(width, height));
    }
    OptionalDouble millimetres = s.number("spanMillimetres");
    return s.line("span").map(line -> new SaidScale.Span(line, millimetres.orElse(0)));
  }

  /** Settings by name, each checked for its kind. */
  private record Settings(Map<String, Object> values) {
    List<?> list(String name) {
      @Nullable Object value = values.get(name);
      return value == null ? List.of() : asList(name, value, -1);
    }

    OptionalDouble number(String name) {
      @Nullable Object value = values.get(name);
      return value == null ? OptionalDouble.empty() : OptionalDouble.of(asNumber(name, value));
    }

    Optional<String> text(String name) {
      return Optional.ofNullable(values.get(name)).map(String::valueOf);
    }

    Optional<PhotoLine> line(String name) {
      return Optional.ofNullable(values.get(name)).map(value -> asLine(name, value));
    }

    static List<?> asList(String name, Object value, int size) {
      if (value instanceof List<?> list && (size < 0 || list.size() == size)) {
        return list;
      }
      throw new IllegalArgumentException("the setting \"" + name + "\" is not a list as expected");
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

    static PhotoLine asLine(String name, Object value) {
      List<?> four = asList(name, value, 4);
      return new PhotoLine(
          new PhotoPoint(asNumber(name, four.get(0)), asNumber(name, four.get(1))),
          new PhotoPoint(asNumber(name, four.get(2)), asNumber(name, four.get(3))));
    }
  }
}
