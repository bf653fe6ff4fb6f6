package wickmark.core.uncertainty;

import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.apache.commons.math3.stat.descriptive.rank.Median;

/**
 * The source with the largest share in several budgets of the same quantity. The share is the
 * median over the budgets, so that a single odd result does not decide what is worth improving.
 *
 * @param source what it comes from, in words
 * @param share its part of the variance, 0 to 1
 */
public record LargestSource(String source, double share) {
  /**
   * From this share on a source is worth a person's trouble: halving what it adds lowers the
   * combined uncertainty by 16 % (√(1 − ¾ · 0.4) = 0.84), below that by less.
   */
  public static final double OUTSTANDING = 0.4;

  /**
   * Returns the largest source; the first of several. A budget without any uncertainty has no
   * shares and is passed over; empty where no budget is left.
   */
  public static Optional<LargestSource> of(List<UncertaintyBudget> budgets) {
    List<UncertaintyBudget> uncertain =
        budgets.stream().filter(budget -> budget.combined() > 0).toList();
    Set<String> sources = new LinkedHashSet<>();
    uncertain.forEach(budget -> budget.contributions().forEach(part -> sources.add(part.source())));
    return sources.stream()
        .map(source -> new LargestSource(source, median(uncertain, source)))
        .sorted(Comparator.comparingDouble(LargestSource::share).reversed())
        .findFirst();
  }

  private static double median(List<UncertaintyBudget> budgets, String source) {
    double[] shares =
        budgets.stream()
            .mapToDouble(
                budget ->
                    budget.contributions().stream()
                        .filter(part -> part.source().equals(source))
                        .mapToDouble(UncertaintyBudget.Contribution::share)
                        .sum())
            .toArray();
    return new Median().evaluate(shares);
  }

  /** Says whether it is large enough for advice to be worth giving. */
  public boolean standsOut() {
    return share >= OUTSTANDING;
  }
}
