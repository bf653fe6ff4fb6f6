package wickmark.core.statistics;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * A mean and a standard deviation that single wild values hardly move: algorithm A of ISO
 * 13528:2015, annex C.3. Values further than 1.5 robust standard deviations from the mean count as
 * if they lay there, until nothing changes. Where more than half of the values are equal, the start
 * is the plain standard deviation, as the note there advises.
 */
public record RobustMean(int count, double mean, double standardDeviation) {
  private static final double WIDTH = 1.5;
  private static final double SPREAD_FACTOR = 1.134;
  private static final double SPREAD_OF_MEDIAN = 1.483;
  private static final int MOST_ROUNDS = 200;

  /** Returns the robust mean of at least one value. */
  public static RobustMean of(List<Double> values) {
    if (values.isEmpty()) {
      throw new IllegalArgumentException("a mean needs at least one value");
    }
    double mean = median(values);
    double deviation = SPREAD_OF_MEDIAN * medianDistance(values, mean);
    if (deviation == 0 && values.size() > 1) {
      deviation =
          StrictMath.sqrt(
              SampleMean.sumOfSquares(values, SampleMean.mean(values)) / (values.size() - 1));
    }
    for (int round = 0; round < MOST_ROUNDS && deviation > 0; round++) {
      List<Double> pulled = pulled(values, mean, WIDTH * deviation);
      double newMean = SampleMean.mean(pulled);
      double newDeviation =
          SPREAD_FACTOR
              * StrictMath.sqrt(
                  SampleMean.sumOfSquares(pulled, newMean) / Math.max(1, values.size() - 1));
      boolean settled =
          Math.abs(newMean - mean) + Math.abs(newDeviation - deviation) < 1e-9 * deviation;
      mean = newMean;
      deviation = newDeviation;
      if (settled) {
        break;
      }
    }
    return new RobustMean(values.size(), mean, deviation);
  }

  private static List<Double> pulled(List<Double> values, double mean, double width) {
    return values.stream().map(v -> Math.max(mean - width, Math.min(mean + width, v))).toList();
  }

  private static double medianDistance(List<Double> values, double mean) {
    return median(values.stream().map(value -> Math.abs(value - mean)).toList());
  }

  static double median(List<Double> values) {
    List<Double> sorted = new ArrayList<>(values);
    Collections.sort(sorted);
    int half = sorted.size() / 2;
    return sorted.size() % 2 == 1
        ? sorted.get(half)
        : (sorted.get(half - 1) + sorted.get(half)) / 2;
  }
}
