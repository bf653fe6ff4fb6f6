package wickmark.core.statistics;

import java.util.List;

/**
 * How two ways of measuring the same things agree: the mean difference and the limits between which
 * 95 % of differences lie, each with its 95 % confidence interval.
 *
 * <p>Reference: Statistical methods for assessing agreement between two methods of clinical
 * measurement, Lancet 327 (8476), 1986, 307-310. The limits are 1.96 standard deviations from the
 * mean; the standard error of a limit is √(3 s²/n).
 *
 * @param standardDeviation of the differences, with n − 1
 */
public record LimitsOfAgreement(
    int count,
    double meanDifference,
    double standardDeviation,
    Interval meanConfidence,
    Limit lower,
    Limit upper) {

  /** One limit with its confidence interval. */
  public record Limit(double value, Interval confidence) {}

  /** Returns the agreement of at least two differences, each first minus second. */
  public static LimitsOfAgreement of(List<Double> differences) {
    int n = differences.size();
    if (n < 2) {
      throw new IllegalArgumentException("agreement needs at least two differences, was " + n);
    }
    double mean = SampleMean.mean(differences);
    double deviation = StrictMath.sqrt(SampleMean.sumOfSquares(differences, mean) / (n - 1));
    double t = SampleMean.studentFactor(n - 1);
    double meanError = deviation / StrictMath.sqrt(n);
    double limitError = StrictMath.sqrt(3) * meanError;
    return new LimitsOfAgreement(
        n,
        mean,
        deviation,
        Interval.around(mean, t * meanError),
        limit(mean - 1.96 * deviation, t * limitError),
        limit(mean + 1.96 * deviation, t * limitError));
  }

  private static Limit limit(double value, double halfWidth) {
    return new Limit(value, Interval.around(value, halfWidth));
  }
}
