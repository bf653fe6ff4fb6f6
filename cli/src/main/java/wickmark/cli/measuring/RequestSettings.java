package wickmark.cli.measuring;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import wickmark.imaging.ReadingRequest;
import wickmark.imaging.ReadingRequest.Area;
import wickmark.imaging.ReadingRequest.SaidLines;
import wickmark.imaging.ReadingRequest.SaidStrip;
import wickmark.imaging.photo.PhotoPoint;

/**
 * What was said, as the {@code settings} of a record, and back: strings, numbers and lists of them,
 * each under the name of its option. Of the picture only what was said is there; how spots are
 * measured and compared is always there, for it always has a say.
 */
public final class RequestSettings {
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
    putList(settings, "spots", said.spots().stream().map(SpotSettings::of).toList());
    said.scale().ifPresent(scale -> ScaleSettings.put(settings, scale));
    return settings;
  }

  private static void putList(Map<String, Object> settings, String name, List<?> values) {
    if (!values.isEmpty()) {
      settings.put(name, values);
    }
  }

  static List<Double> numbers(PhotoPoint from, PhotoPoint to) {
    return List.of(from.x(), from.y(), to.x(), to.y());
  }

  /**
   * Returns what was said; the usual for what a record does not say.
   *
   * @throws IllegalArgumentException if a setting of one of these names holds something else
   */
  public static MeasuringRequest from(Map<String, Object> settings) {
    CheckedSettings s = new CheckedSettings(settings);
    MeasuringRequest usual = MeasuringRequest.of(reading(s));
    return usual
        .withCentre(s.text("spotCentre").map(OptionText::spotCentre).orElse(usual.centre()))
        .withTolerances(
            s.number("toleranceRf").orElse(usual.matching().toleranceRf()),
            s.number("toleranceColour").orElse(usual.matching().toleranceColour()));
  }

  private static ReadingRequest reading(CheckedSettings s) {
    OptionalDouble count = s.number("laneCount");
    return new ReadingRequest(
        s.texts("lanes"),
        new LinkedHashSet<>(s.texts("unknown")),
        count.isPresent() ? OptionalInt.of((int) count.getAsDouble()) : OptionalInt.empty(),
        ScaleSettings.from(s),
        new SaidStrip(
            s.list("corners").stream().map(CheckedSettings::asPoint).toList(),
            s.text("bottom").map(OptionText::bottom),
            s.list("ignore").stream()
                .map(value -> CheckedSettings.asSegment("ignore", value))
                .map(segment -> new Area(segment.from(), segment.to()))
                .toList()),
        new SaidLines(s.segment("baseline"), s.segment("front"), origins(s)),
        s.list("spots").stream().map(SpotSettings::from).toList());
  }

  private static Map<String, PhotoPoint> origins(CheckedSettings s) {
    Map<String, PhotoPoint> origins = new LinkedHashMap<>();
    for (Object entry : s.list("origin")) {
      List<?> origin = CheckedSettings.asList("origin", entry, 3);
      origins.put(
          CheckedSettings.asText("origin", origin.get(0)),
          new PhotoPoint(
              CheckedSettings.asNumber("origin", origin.get(1)),
              CheckedSettings.asNumber("origin", origin.get(2))));
    }
    return origins;
  }
}
