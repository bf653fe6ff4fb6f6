package wickmark.cli.corrections;

import java.util.Collection;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import wickmark.cli.measuring.MeasuringRequest;
import wickmark.cli.measuring.RequestSettings;
import wickmark.imaging.ReadingRequest;
import wickmark.imaging.ReadingRequest.SaidScale;
import wickmark.imaging.ReadingRequest.SaidSpot;

/** Settings that come from a file, checked for what no person would mean. */
final class CorrectedSettings {
  private static final int MOST_LANES = 60;
  private static final int MOST_SPOTS = 1000;
  private static final double LARGEST_DIFFERENCE = 100;

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
    MeasuringRequest request = RequestSettings.from(new LinkedHashMap<>(settings));
    checkLanes(request.reading());
    request.reading().scale().ifPresent(CorrectedSettings::checkScale);
    double rf = request.matching().toleranceRf();
    double colour = request.matching().toleranceColour();
    if (!(rf > 0 && rf <= 1 && colour > 0 && colour <= LARGEST_DIFFERENCE)) {
      throw new IllegalArgumentException("its tolerances are not above 0 or too large");
    }
    return request;
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
