package wickmark.cli.measuring;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import wickmark.imaging.photo.PhotoPoint;

/**
 * What the person says about the lanes.
 *
 * @param names from the left, the baseline at the bottom; empty where nothing is said
 * @param unknowns names of the lanes to explain
 * @param count number of lanes, at least 1
 * @param origins places of single lanes' origins, by lane name
 */
public record SaidLanes(
    List<String> names, List<String> unknowns, OptionalInt count, Map<String, PhotoPoint> origins) {
  public SaidLanes {
    names = List.copyOf(names);
    unknowns = List.copyOf(unknowns);
    origins = Collections.unmodifiableMap(new LinkedHashMap<>(origins));
  }
}
