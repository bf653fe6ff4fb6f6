package wickmark.core.pool;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wickmark.core.record.RunRecord;
import wickmark.core.statistics.GrubbsTest;
import wickmark.core.statistics.Precision;
import wickmark.core.statistics.RobustMean;
import wickmark.core.statistics.SampleMean;

/**
 * The Rf of the same samples on several strips: lanes of one name are repeats of one sample, within
 * a strip too, and their spots are put together by Rf and colour.
 *
 * @param spots in the order of the lanes' first appearance, each lane's from the front down
 * @param repeatability pooled standard deviation of Rf over all spots that repeat; empty if none
 */
public record PooledStrips(List<PooledSpot> spots, Optional<Double> repeatability) {

  /** Keeps a copy of the list. */
  public PooledStrips {
    spots = List.copyOf(spots);
  }

  /**
   * One spot of a sample.
   *
   * @param number 1 is the one nearest the front, among the spots that were put together
   * @param colour plain name, by the majority
   * @param values in the order of the records
   * @param mean of Rf, with standard deviation and 95 % confidence interval
   * @param outlier place in {@code values} of what the Grubbs test (5 %, two-sided) calls an
   *     outlier and what lies further from the robust mean than it is uncertain (k = 2), if any
   * @param missingIn how many lanes of this name do not have the spot
   */
  public record PooledSpot(
      String lane,
      int number,
      String colour,
      List<Value> values,
      SampleMean mean,
      Optional<Integer> outlier,
      int missingIn) {

    /** Keeps a copy of the list. */
    public PooledSpot {
      values = List.copyOf(values);
    }
  }

  /**
   * One strip's Rf of a spot.
   *
   * @param record place of the record in the list that was pooled, from 0
   * @param spot its number there
   */
  public record Value(int record, int spot, double rf, double rfUncertainty, String colour) {}

  /** Pools records, at least one. */
  public static PooledStrips of(List<RunRecord> records) {
    List<String> names = new ArrayList<>();
    for (RunRecord record : records) {
      for (RunRecord.Lane lane : record.lanes()) {
        if (!names.contains(lane.name())) {
          names.add(lane.name());
        }
      }
    }
    List<PooledSpot> spots = new ArrayList<>();
    for (String name : names) {
      spots.addAll(ofLane(name, records));
    }
    List<List<Double>> groups =
        spots.stream().map(spot -> spot.values().stream().map(Value::rf).toList()).toList();
    return new PooledStrips(spots, Precision.pooledDeviation(groups));
  }

  private static List<PooledSpot> ofLane(String name, List<RunRecord> records) {
    List<List<SpotGroups.Member>> lanes = new ArrayList<>();
    for (int i = 0; i < records.size(); i++) {
      for (RunRecord.Lane lane : records.get(i).lanes()) {
        if (lane.name().equals(name)) {
          lanes.add(SpotGroups.members(i, lane));
        }
      }
    }
    List<PooledSpot> spots = new ArrayList<>();
    for (List<Value> values : SpotGroups.of(lanes)) {
      spots.add(pooled(name, spots.size() + 1, values, lanes.size() - values.size()));
    }
    return spots;
  }

  private static PooledSpot pooled(String lane, int number, List<Value> values, int missing) {
    List<Double> factors = values.stream().map(Value::rf).toList();
    return new PooledSpot(
        lane,
        number,
        majority(values),
        values,
        SampleMean.of(factors),
        outlier(values, factors),
        missing);
  }

  /**
   * Strips that happen to agree better than they are measured make the test call a value an outlier
   * that is as right as the others; so it must also be further from them than it is uncertain. The
   * same holds for hand readings.
   */
  private static Optional<Integer> outlier(List<Value> values, List<Double> factors) {
    return GrubbsTest.of(factors)
        .filter(GrubbsTest::isOutlier)
        .map(GrubbsTest::index)
        .filter(
            index ->
                Math.abs(factors.get(index) - RobustMean.of(factors).mean())
                    > 2 * values.get(index).rfUncertainty());
  }

  private static String majority(List<Value> values) {
    String best = values.get(0).colour();
    long most = 0;
    for (Value value : values) {
      long count = values.stream().filter(other -> other.colour().equals(value.colour())).count();
      if (count > most) {
        most = count;
        best = value.colour();
      }
    }
    return best;
  }
}
