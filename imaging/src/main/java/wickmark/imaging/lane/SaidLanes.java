package wickmark.imaging.lane;

import java.util.NavigableMap;
import java.util.OptionalInt;
import java.util.TreeMap;

/**
 * What the person says of the lanes.
 *
 * @param count how many there are
 * @param origins columns, in cells, where samples were put, by the lane's number from the left,
 *     which begins at 0; the columns rise with the numbers, by more than {@link #LEAST_APART_MM}
 */
public record SaidLanes(OptionalInt count, NavigableMap<Integer, Double> origins) {
  /** As many lanes are looked for at the most. */
  public static final int MOST = 14;

  /** Two origins less far apart are one. */
  public static final double LEAST_APART_MM = 1;

  public SaidLanes {
    origins = new TreeMap<>(origins);
  }
}
