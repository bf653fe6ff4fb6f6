package wickmark.core.statistics;

import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.distribution.TDistribution;

/**
 * The mean of repeated values and how well it is known.
 *
 * @param count at least 1
 * @param standardDeviation with n − 1; empty for a single value
 * @param confidence interval of the mean at 95 %, by Student's distribution; empty for one value
 */
public record SampleMean(
    int count, double mean, Optional<Double> standardDeviation, Optional<Interval> confidence) {

  /** Returns the mean of at least one value. */
  public static SampleMean of(List<Double> values) {
    int n = values.size();
    if (n == 0) {
      throw new IllegalArgumentException("a mean needs at least one value");
    }
    double mean = mean(values);
    if (n == 1) {
      return new SampleMean(1, mean, Optional.empty(), Optional.empty());
    }
    double deviation = StrictMath.sqrt(sumOfSquares(values, mean) / (n - 1));
    double half = studentFactor(n - 1) * deviation / StrictMath.sqrt(n);
    return new SampleMean(
        n, mean, Optional.of(deviation), Optional.of(Interval.around(mean, half)));
  }

  static double mean(List<Double> values) {
    double sum = 0;
    for (double value : values) {
      sum += value;
    }
    return sum / values.size();
  }

  static double sumOfSquares(List<Double> values, double mean) {
    double sum = 0;
    for (double value : values) {
      sum += (value - mean) * (value - mean);
    }
    return sum;
  }

  /** Student's t for a two-sided 95 %. */
  static double studentFactor(int degreesOfFreedom) {
    return new TDistribution(null, degreesOfFreedom).inverseCumulativeProbability(0.975);
  }
}
