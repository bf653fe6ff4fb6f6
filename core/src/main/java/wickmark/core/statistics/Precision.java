package wickmark.core.statistics;

import java.util.List;
import java.util.Optional;

/**
 * Precision by groups, such as readers or strips that measured the same thing: repeatability within
 * a group and reproducibility between groups.
 *
 * <p>Reference: ISO 5725-2:1994, Accuracy of measurement methods and results, 7.4.
 *
 * @param mean over all values
 * @param repeatability standard deviation within a group, s<sub>r</sub>
 * @param betweenGroups standard deviation between groups beyond that, s<sub>L</sub>
 * @param reproducibility standard deviation of single values of different groups, s<sub>R</sub>
 */
public record Precision(
    double mean, double repeatability, double betweenGroups, double reproducibility) {

  /** 1.96 times the square root of 2, rounded as ISO 5725-6:1994, 4.1 does (from memory). */
  private static final double LIMIT = 2.8;

  /**
   * Returns the precision of at least two groups, at least one of which repeats; otherwise empty.
   * Groups without values are passed over.
   */
  public static Optional<Precision> of(List<List<Double>> allGroups) {
    List<List<Double>> groups = allGroups.stream().filter(group -> !group.isEmpty()).toList();
    double count = 0;
    double sum = 0;
    double squares = 0;
    double within = 0;
    for (List<Double> group : groups) {
      double mean = SampleMean.mean(group);
      count += group.size();
      sum += group.size() * mean;
      squares += (double) group.size() * group.size();
      within += SampleMean.sumOfSquares(group, mean);
    }
    if (groups.size() < 2 || count <= groups.size()) {
      return Optional.empty();
    }
    double mean = sum / count;
    double repeatability = within / (count - groups.size());
    double between = 0;
    for (List<Double> group : groups) {
      double off = SampleMean.mean(group) - mean;
      between += group.size() * off * off;
    }
    between /= groups.size() - 1;
    double meanSize = (count - squares / count) / (groups.size() - 1);
    double extra = Math.max(0, (between - repeatability) / meanSize);
    return Optional.of(
        new Precision(
            mean,
            StrictMath.sqrt(repeatability),
            StrictMath.sqrt(extra),
            StrictMath.sqrt(repeatability + extra)));
  }

  /** Returns the mean over several levels, variances averaged; empty for none. */
  public static Optional<Precision> averageOf(List<Precision> levels) {
    if (levels.isEmpty()) {
      return Optional.empty();
    }
    double mean = 0;
    double within = 0;
    double between = 0;
    for (Precision level : levels) {
      mean += level.mean / levels.size();
      within += level.repeatability * level.repeatability / levels.size();
      between += level.betweenGroups * level.betweenGroups / levels.size();
    }
    return Optional.of(
        new Precision(
            mean,
            StrictMath.sqrt(within),
            StrictMath.sqrt(between),
            StrictMath.sqrt(within + between)));
  }

  /** Returns the pooled standard deviation within groups; empty if no group repeats. */
  public static Optional<Double> pooledDeviation(List<List<Double>> groups) {
    double within = 0;
    int freedom = 0;
    for (List<Double> group : groups) {
      if (group.size() > 1) {
        within += SampleMean.sumOfSquares(group, SampleMean.mean(group));
        freedom += group.size() - 1;
      }
    }
    return freedom == 0 ? Optional.empty() : Optional.of(StrictMath.sqrt(within / freedom));
  }

  /** Returns the difference that two values of this deviation exceed in one case of twenty. */
  public static double limit(double deviation) {
    return LIMIT * deviation;
  }
}
