package wickmark.core.advice;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import wickmark.core.chromatogram.Chromatogram;
import wickmark.core.chromatogram.Spot;
import wickmark.core.uncertainty.Decimals;
import wickmark.core.uncertainty.LargestSource;
import wickmark.core.uncertainty.UncertaintyBudget;

/**
 * Where most of the uncertainty of a strip's results comes from, and what a person can do about it.
 *
 * @param findings the quantities that it is about, at least one, all with the same largest source
 * @param remedy what to do, the end of a sentence; empty where no single source stands out
 */
public record UncertaintyAdvice(List<Finding> findings, Optional<String> remedy) {

  /** Keeps a copy of the list. */
  public UncertaintyAdvice {
    findings = List.copyOf(findings);
  }

  /** A result that a strip gives for each spot. */
  public enum Quantity {
    /** The scale cancels in it. */
    RF("Rf"),
    /** From the baseline to a spot's centre; the scale counts. */
    DISTANCE("the distances in mm");

    private final String words;

    Quantity(String words) {
      this.words = words;
    }
  }

  /** The largest source of one quantity. */
  public record Finding(Quantity quantity, LargestSource largest) {}

  /**
   * Returns the advice about Rf and, where there is a scale, about distances: one where the same
   * source stands out in both, otherwise one each; none without spots or without uncertainty.
   */
  public static List<UncertaintyAdvice> of(Chromatogram strip, Circumstances circumstances) {
    List<Spot> spots = strip.lanes().stream().flatMap(lane -> lane.spots().stream()).toList();
    List<UncertaintyBudget> ofDistance =
        strip.lengthsAreMillimetres()
            ? spots.stream().map(Spot::distanceBudget).toList()
            : List.of();
    return of(spots.stream().map(Spot::rfBudget).toList(), ofDistance, circumstances);
  }

  /**
   * The same of budgets by themselves.
   *
   * @param ofDistance empty where there is no scale
   */
  public static List<UncertaintyAdvice> of(
      List<UncertaintyBudget> ofRf,
      List<UncertaintyBudget> ofDistance,
      Circumstances circumstances) {
    List<Finding> findings = new ArrayList<>();
    LargestSource.of(ofRf).ifPresent(s -> findings.add(new Finding(Quantity.RF, s)));
    LargestSource.of(ofDistance).ifPresent(s -> findings.add(new Finding(Quantity.DISTANCE, s)));
    Remedies remedies = new Remedies(circumstances);
    return isOneSource(findings)
        ? List.of(advice(findings, remedies))
        : findings.stream().map(finding -> advice(List.of(finding), remedies)).toList();
  }

  private static boolean isOneSource(List<Finding> findings) {
    return !findings.isEmpty()
        && findings.stream().allMatch(finding -> finding.largest().standsOut())
        && findings.stream().map(finding -> finding.largest().source()).distinct().count() == 1;
  }

  private static UncertaintyAdvice advice(List<Finding> findings, Remedies remedies) {
    LargestSource largest = findings.get(0).largest();
    return new UncertaintyAdvice(
        findings, largest.standsOut() ? remedies.against(largest.source()) : Optional.empty());
  }

  /** Returns it as a sentence. */
  public String sentence() {
    LargestSource largest = findings.get(0).largest();
    String quantities =
        findings.stream()
            .map(finding -> finding.quantity().words)
            .collect(Collectors.joining(" and of "));
    String shares =
        findings.stream()
                .map(finding -> Decimals.text(100 * finding.largest().share(), 0) + " %")
                .collect(Collectors.joining(" and "))
            + " of the variance, median over the spots";
    return largest.standsOut()
        ? String.format(
            Locale.ROOT,
            "The uncertainty of %s comes first of all from %s (%s)%s.",
            quantities,
            largest.source(),
            shares,
            remedy.map(what -> ": " + what).orElse(""))
        : String.format(
            Locale.ROOT,
            "No single source stands out in the uncertainty of %s; the largest is %s (%s).",
            quantities,
            largest.source(),
            shares);
  }
}
