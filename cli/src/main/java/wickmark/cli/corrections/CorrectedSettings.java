package wickmark.cli.corrections;

import java.util.Collection;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import wickmark.cli.measuring.MeasuringRequest;
import wickmark.cli.measuring.OptionText;
import wickmark.cli.measuring.RequestSettings;
import wickmark.imaging.ReadingRequest;
import wickmark.imaging.ReadingRequest.SaidScale;
import wickmark.imaging.ReadingRequest.SaidSpot;
import wickmark.imaging.ReadingRequest.Segment;

/** Settings that come from a file, checked for what no person would mean. */
final class CorrectedSettings {
  private static final int MOST_LANES = 60;
  private static final int MOST_SPOTS = 1000;
  private static final double LARGEST_DIFFERENCE = 100;

  /** The ways to say the scale, each by the names of its settings. */
  private static final List<Set<String>> SCALES =
      List.of(
          Set.of("dpi"),
          Set.of("stripWidth", "stripHeight"),
          Set.of("span", "spanMillimetres"),
          Set.of("printedLength"));

  private CorrectedSettings() {}

  /**
   * Returns the request that the settings make.
   *
   * @throws IllegalArgumentException if they make none, with the reason
   */
  static MeasuringRequest request(Map<String, Object> settings) {
    Set<String> unknown = new TreeSet<>(settings.keySet());
    unknown.removeAll(RequestSettings.names());
    unknown.remove("title");
    if (!unknown.isEmpty()) {
      throw new IllegalArgumentException(
          "it has a setting \"" + unknown.iterator().next() + "\" that this version does not know");
    }
    checkKinds(settings);
    MeasuringRequest request = RequestSettings.from(new LinkedHashMap<>(settings));
    checkLanes(request.reading());
    checkSegment("baseline", request.reading().lines().baseline());
    checkSegment("front", request.reading().lines().front());
    if (SCALES.stream().filter(ways -> ways.stream().anyMatch(settings::containsKey)).count() > 1) {
      throw new IllegalArgumentException("it says the scale in more than one way");
    }
    request.reading().scale().ifPresent(CorrectedSettings::checkScale);
    double rf = request.matching().toleranceRf();
    double colour = request.matching().toleranceColour();
    if (!(rf > 0 && rf <= 1 && colour > 0 && colour <= LARGEST_DIFFERENCE)) {
      throw new IllegalArgumentException("its tolerances are not above 0 or too large");
    }
    return request;
  }

  private static void checkKinds(Map<String, Object> settings) {
    if (!(settings.getOrDefault("title", "") instanceof String)) {
      throw new IllegalArgumentException("its field \"settings.title\" is no text");
    }
    if (!(settings.getOrDefault("laneCount", 1) instanceof Integer)) {
      throw new IllegalArgumentException("its field \"settings.laneCount\" is no whole number");
    }
  }

  private static void checkSegment(String name, Optional<Segment> segment) {
    if (segment.isPresent() && segment.get().from().equals(segment.get().to())) {
      throw new IllegalArgumentException(
          "its field \"settings." + name + "\" is twice the same place");
    }
  }

  private static void checkLanes(ReadingRequest said) {
    List<String> lanes = said.laneNames();
    if (lanes.size() > MOST_LANES || said.laneCount().orElse(1) > MOST_LANES) {
      throw new IllegalArgumentException("it has more than " + MOST_LANES + " lanes");
    }
    if (said.laneCount().orElse(1) < 1) {
      throw new IllegalArgumentException("it has fewer than 1 lane");
    }
    if (lanes.stream().anyMatch(String::isBlank)) {
      throw new IllegalArgumentException("a lane has no name");
    }
    if (lanes.stream().anyMatch(name -> !name.equals(name.strip()))) {
      throw new IllegalArgumentException("a lane's name begins or ends with a space");
    }
    if (!lanes.isEmpty() && said.laneCount().orElse(lanes.size()) != lanes.size()) {
      throw new IllegalArgumentException(
          "it names " + lanes.size() + " lanes and counts " + said.laneCount().getAsInt());
    }
    if (new HashSet<>(lanes).size() < lanes.size()) {
      throw new IllegalArgumentException("two lanes have the same name");
    }
    if (said.spots().size() > MOST_SPOTS) {
      throw new IllegalArgumentException("it has more than " + MOST_SPOTS + " spots");
    }
    Stream<String> ofSpots =
        said.spots().stream()
            .flatMap(
                spot ->
                    spot instanceof SaidSpot.Added added
                        ? Stream.of(added.lane())
                        : spot instanceof SaidSpot.Moved moved
                            ? Stream.of(moved.lane())
                            : Stream.empty());
    Stream.of(said.unknowns().stream(), said.lines().origins().keySet().stream(), ofSpots)
        .flatMap(names -> names)
        .sorted()
        .filter(name -> isStrange(lanes, name))
        .findFirst()
        .ifPresent(
            name -> {
              throw new IllegalArgumentException(
                  "it speaks of a lane \"" + name + "\" that is not among its lanes");
            });
  }

  private static boolean isStrange(Collection<String> lanes, String name) {
    return !lanes.isEmpty() && !lanes.contains(name);
  }

  private static void checkScale(SaidScale scale) {
    if (scale instanceof SaidScale.Print said) {
      try {
        OptionText.printedLength(said.barMm());
      } catch (IllegalArgumentException e) {
        throw new IllegalArgumentException(
            "its field \"settings.printedLength\" is no length that a bar of 100 mm is printed at",
            e);
      }
    }
    boolean sound = true;
    if (scale instanceof SaidScale.Dpi said) {
      sound = said.dpi() > 0;
    } else if (scale instanceof SaidScale.StripWidth said) {
      sound = said.mm() > 0;
    } else if (scale instanceof SaidScale.StripHeight said) {
      sound = said.mm() > 0;
    } else if (scale instanceof SaidScale.StripSize said) {
      sound = said.widthMm() > 0 && said.heightMm() > 0;
    } else if (scale instanceof SaidScale.Span said) {
      sound = said.mm() > 0 && !said.from().equals(said.to());
    }
    if (!sound) {
      throw new IllegalArgumentException("its scale is not above 0");
    }
  }
}
