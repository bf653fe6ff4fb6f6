package wickmark.core.uncertainty;

import java.util.ArrayList;
import java.util.List;

/**
 * Where the uncertainty of one result comes from.
 *
 * <p>The combined variance is the sum of c<sub>i</sub> c<sub>j</sub> u<sub>i</sub> u<sub>j</sub>
 * r<sub>ij</sub> over all pairs of inputs (JCGM 100:2008, 5.2.2, equation 16).
 *
 * @param combined the combined standard uncertainty, in the result's unit
 * @param contributions one for each source, in the order in which they were given
 */
public record UncertaintyBudget(double combined, List<Contribution> contributions) {

  /** Keeps a copy of the list. */
  public UncertaintyBudget {
    contributions = List.copyOf(contributions);
  }

  /**
   * One source's part.
   *
   * @param source what it comes from, in words
   * @param standardUncertainty how uncertain the result would be by this source alone
   * @param share its part of the variance, 0 to 1; below 0 for a source whose correlation with the
   *     others makes the result more certain
   */
  public record Contribution(String source, double standardUncertainty, double share) {}

  /** Starts a budget. */
  public static Builder builder() {
    return new Builder();
  }

  /** Returns the source with the largest share; the first of several. */
  public Contribution largest() {
    Contribution largest = contributions.get(0);
    for (Contribution contribution : contributions) {
      if (contribution.share() > largest.share()) {
        largest = contribution;
      }
    }
    return largest;
  }

  /** Collects the inputs of a result. */
  public static final class Builder {
    private final List<String> sources = new ArrayList<>();
    private final List<Double> effects = new ArrayList<>();
    private final List<Correlation> correlations = new ArrayList<>();

    private record Correlation(int first, int second, double coefficient) {}

    private Builder() {}

    /**
     * Adds an input.
     *
     * @param sensitivity by how much the result changes per unit of the input, with its sign
     * @param standardUncertainty of the input, in the input's unit
     */
    public Builder add(String source, double sensitivity, double standardUncertainty) {
      sources.add(source);
      effects.add(sensitivity * standardUncertainty);
      return this;
    }

    /** States the correlation, -1 to 1, of two inputs, counted from 0 in the order of adding. */
    public Builder correlate(int first, int second, double coefficient) {
      correlations.add(new Correlation(first, second, coefficient));
      return this;
    }

    /** Returns the combined uncertainty and each source's share. */
    public UncertaintyBudget build() {
      double[] variances = new double[effects.size()];
      for (int i = 0; i < variances.length; i++) {
        variances[i] = effects.get(i) * effects.get(i);
      }
      for (Correlation pair : correlations) {
        double covariance =
            effects.get(pair.first()) * effects.get(pair.second()) * pair.coefficient();
        variances[pair.first()] += covariance;
        variances[pair.second()] += covariance;
      }
      double total = 0;
      for (double variance : variances) {
        total += variance;
      }
      List<Contribution> contributions = new ArrayList<>();
      for (int i = 0; i < variances.length; i++) {
        double share = total > 0 ? variances[i] / total : 0;
        contributions.add(new Contribution(sources.get(i), Math.abs(effects.get(i)), share));
      }
      return new UncertaintyBudget(StrictMath.sqrt(Math.max(0, total)), contributions);
    }
  }
}
