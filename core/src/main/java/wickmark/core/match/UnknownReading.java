package wickmark.core.match;

import java.util.Collections;
import java.util.List;
import java.util.OptionalDouble;

/**
 * What explains one unknown.
 *
 * @param explanations sets of references that are equally good, best first; empty if nothing fits
 * @param unexplainedSpots spots of the unknown that no reference of the best explanation accounts
 *     for, by number; what is left at the origin is not among them
 * @param ruledOut references that cannot be in it, with the reason
 * @param timesLikelier how many times likelier the best explanation is than the best set that is
 *     not among them; empty if there is no other
 * @param runFactor by what factor all distances of the lane are shorter (below 1) or longer than
 *     those of references with the same colours, where that and nothing else explains them
 * @param hidden dyes that may lie within spots which are explained without them
 * @param findings sentences for the reader, the most important first
 */
public record UnknownReading(
    String lane,
    List<Explanation> explanations,
    List<Integer> unexplainedSpots,
    List<RuledOut> ruledOut,
    OptionalDouble timesLikelier,
    OptionalDouble runFactor,
    List<HiddenDye> hidden,
    List<String> findings) {

  /** Keeps copies of the lists. */
  public UnknownReading {
    explanations = List.copyOf(explanations);
    unexplainedSpots = List.copyOf(unexplainedSpots);
    ruledOut = List.copyOf(ruledOut);
    hidden = List.copyOf(hidden);
    findings = List.copyOf(findings);
  }

  /** Returns the spots of the unknown that the best explanation takes for two dyes each. */
  public List<Integer> blendedSpots() {
    List<Integer> matched =
        explanations.stream()
            .limit(1)
            .flatMap(best -> best.matches().stream())
            .map(Match::unknownSpot)
            .sorted()
            .toList();
    return matched.stream()
        .distinct()
        .filter(spot -> Collections.frequency(matched, spot) > 1)
        .toList();
  }

  /**
   * A set of references that together account for the unknown as far as possible.
   *
   * @param score probability among all sets that were tried, 0 to 1
   * @param matches which spot goes with which
   */
  public record Explanation(List<String> references, double score, List<Match> matches) {

    /** Keeps copies of the lists. */
    public Explanation {
      references = List.copyOf(references);
      matches = List.copyOf(matches);
    }
  }

  /**
   * Two spots taken for the same dye.
   *
   * @param rfDifference unknown minus reference
   * @param colourDifference CIEDE2000 at like strength
   */
  public record Match(
      int unknownSpot,
      String reference,
      int referenceSpot,
      double rfDifference,
      double colourDifference) {}

  /**
   * A spot of a reference that may lie within one of the unknown, beside the dye that explains it.
   *
   * @param rf of the reference's spot
   */
  public record HiddenDye(int unknownSpot, String reference, int referenceSpot, double rf) {}

  /** A reference that cannot be in the unknown. */
  public record RuledOut(String reference, String reason) {}
}
