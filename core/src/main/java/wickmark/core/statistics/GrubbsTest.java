package wickmark.core.statistics;

import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.distribution.TDistribution;

/**
 * The Grubbs test for one outlier, two-sided: the value furthest from the mean, in standard
 * deviations, against what chance gives. It is used once; after an outlier, ask a person.
 *
 * <p>Reference: e-Handbook of Statistical Methods, 1.3.5.17.1; ISO 5725-2:1994, 7.3.4.
 *
 * @param index of the value furthest from the mean
 * @param statistic its distance from the mean over the standard deviation
 * @param critical the value that chance exceeds with the test's probability
 */
public record GrubbsTest(int index, double statistic, double critical) {

  /** The probability of calling the most extreme of good values an outlier. */
  public static final double LEVEL = 0.05;

  /** Returns the test of at least three values that are not all equal; otherwise empty. */
  public static Optional<GrubbsTest> of(List<Double> values) {
    int n = values.size();
    if (n < 3) {
      return Optional.empty();
    }
    double mean = SampleMean.mean(values);
    double deviation = StrictMath.sqrt(SampleMean.sumOfSquares(values, mean) / (n - 1));
    if (!(deviation > 0)) {
      return Optional.empty();
    }
    int furthest = 0;
    for (int i = 1; i < n; i++) {
      if (Math.abs(values.get(i) - mean) > Math.abs(values.get(furthest) - mean)) {
        furthest = i;
      }
    }
    double statistic = Math.abs(values.get(furthest) - mean) / deviation;
    return Optional.of(new GrubbsTest(furthest, statistic, critical(n, LEVEL / 2)));
  }

  /** Returns the critical value for n values at a one-sided probability. */
  static double critical(int n, double oneSided) {
    double t = new TDistribution(null, n - 2).inverseCumulativeProbability(1 - oneSided / n);
    return (n - 1) / StrictMath.sqrt(n) * StrictMath.sqrt(t * t / (n - 2 + t * t));
  }

  /** Says whether the value is an outlier. */
  public boolean isOutlier() {
    return statistic > critical;
  }
}
