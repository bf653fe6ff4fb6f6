package wickmark.cli;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;
import wickmark.cli.measuring.OptionText;
import wickmark.imaging.photo.PhotoPoint;

/** The lanes as the person says them. */
final class LaneOptions {
  private static final int MOST_LANES = 60;

  @Option(
      names = "--lanes",
      paramLabel = "A,B,C,X",
      split = ",",
      hideParamSyntax = true,
      description =
          "The lanes' names from the left, the baseline at the bottom. Without it they are named"
              + " 1, 2, 3 and so on.")
  List<String> names = List.of();

  @Option(
      names = "--unknown",
      paramLabel = "X",
      split = ",",
      hideParamSyntax = true,
      description = "The lane to explain by the others. May be given several times.")
  List<String> unknowns = List.of();

  @Option(names = "--lane-count", paramLabel = "N", description = "The strip has N lanes.")
  @Nullable Integer count;

  @Option(
      names = "--origin",
      paramLabel = "NAME=X,Y",
      description = "Where the sample of a lane was put on. May be given several times.")
  List<String> origins = List.of();

  /** Returns the options with what a table says of one picture in place of what it says. */
  LaneOptions withThose(List<String> tableNames, List<String> tableUnknowns) {
    LaneOptions those = new LaneOptions();
    those.names = tableNames.isEmpty() ? names : tableNames;
    those.unknowns = tableUnknowns.isEmpty() ? unknowns : tableUnknowns;
    those.count = count;
    those.origins = origins;
    return those;
  }

  /**
   * Returns the names of the lanes, once all that was said of lanes fits together.
   *
   * @throws IllegalArgumentException if it does not
   */
  List<String> checkedNames() {
    List<String> lanes = names.stream().map(String::strip).toList();
    if (lanes.stream().anyMatch(String::isEmpty)) {
      throw new IllegalArgumentException("--lanes has an empty name in it");
    }
    lanes.forEach(name -> OptionText.checkVisible("--lanes", name));
    if (new HashSet<>(lanes).size() < lanes.size()) {
      throw new IllegalArgumentException("--lanes has the same name twice");
    }
    if (lanes.size() > MOST_LANES || (count != null && (count < 1 || count > MOST_LANES))) {
      throw new IllegalArgumentException("a strip has 1 to " + MOST_LANES + " lanes");
    }
    if (count != null && !lanes.isEmpty() && lanes.size() != count) {
      throw new IllegalArgumentException(
          "--lanes names " + lanes.size() + " lanes, but --lane-count says " + count);
    }
    List<String> mentioned = new ArrayList<>(unknowns());
    mentioned.addAll(origins().keySet());
    for (String name : mentioned) {
      if (!lanes.isEmpty() && !lanes.contains(name)) {
        throw new IllegalArgumentException(
            "there is no lane \"" + name + "\" in --lanes " + String.join(",", lanes));
      }
    }
    return lanes;
  }

  Set<String> unknowns() {
    return new TreeSet<>(unknowns.stream().map(String::strip).toList());
  }

  OptionalInt laneCount() {
    return count == null ? OptionalInt.empty() : OptionalInt.of(count);
  }

  /**
   * Returns the origins by lane name.
   *
   * @throws IllegalArgumentException if one is not NAME=X,Y
   */
  Map<String, PhotoPoint> origins() {
    Map<String, PhotoPoint> places = new LinkedHashMap<>();
    for (String origin : origins) {
      int equals = origin.lastIndexOf('=');
      if (equals < 1) {
        throw new IllegalArgumentException(
            "--origin needs a lane and a place: NAME=X,Y, was \"" + origin + "\"");
      }
      places.put(
          origin.substring(0, equals).strip(), OptionText.point(origin.substring(equals + 1)));
    }
    return places;
  }
}
