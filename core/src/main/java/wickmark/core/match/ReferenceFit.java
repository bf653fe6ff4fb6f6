package wickmark.core.match;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.distribution.NormalDistribution;

/**
 * How one reference fits into an unknown: which of its spots have a counterpart there.
 *
 * @param pairs spots with a counterpart
 * @param missing spots without
 * @param mayHide whether a missing spot lies within a spot of the unknown, so that the two may have
 *     run into one
 */
record ReferenceFit(
    LaneSignature reference, List<SpotPair> pairs, List<Missing> missing, boolean mayHide) {

  /**
   * A spot of the reference without counterpart.
   *
   * @param cost minus the logarithm of the probability that it is there unseen, or that the
   *     reference itself has no such spot
   */
  record Missing(SpotSignature spot, double cost) {}

  /** Cost of a missing spot that could not have been overlooked. */
  static final double MISSING = 10;

  /** Cost of a missing spot that would be overlooked once in ten times: ln 10. */
  private static final double WOULD_SHOW = 2.303;

  /** A confidence from which a spot counts as certainly there. */
  private static final double SURE = 0.95;

  private static final NormalDistribution BELL = new NormalDistribution(null, 0, 1);

  ReferenceFit {
    pairs = List.copyOf(pairs);
    missing = List.copyOf(missing);
  }

  static ReferenceFit of(LaneSignature reference, LaneSignature unknown, MatchSettings settings) {
    List<SpotSignature> own = reference.moved();
    List<SpotSignature> others = unknown.moved();
    double[][] costs = new double[own.size()][others.size() + own.size()];
    for (int i = 0; i < own.size(); i++) {
      for (int j = 0; j < costs[i].length; j++) {
        costs[i][j] =
            j < others.size()
                ? Math.min(2 * MISSING, SpotPair.of(others.get(j), own.get(i), settings).cost())
                : MISSING;
      }
    }
    int[] columns = CheapestAssignment.columns(costs);
    List<SpotPair> pairs = new ArrayList<>();
    List<SpotSignature> unpaired = new ArrayList<>();
    for (int i = 0; i < own.size(); i++) {
      SpotPair pair =
          columns[i] < others.size()
              ? SpotPair.of(others.get(columns[i]), own.get(i), settings)
              : null;
      if (pair != null && pair.fits()) {
        pairs.add(pair);
      } else {
        unpaired.add(own.get(i));
      }
    }
    Company company = Company.of(pairs);
    List<SpotPair> kept = new ArrayList<>();
    for (SpotPair pair : pairs) {
      if (company.givesLittleOf(pair)) {
        unpaired.add(pair.reference());
      } else {
        kept.add(pair);
      }
    }
    return new ReferenceFit(
        reference,
        kept,
        unpaired.stream()
            .map(spot -> new Missing(spot, missingCost(spot, company.dilution(), settings)))
            .toList(),
        unpaired.stream()
            .anyMatch(spot -> others.stream().anyMatch(other -> Blend.mayHide(spot, other))));
  }

  double pairCost() {
    Company company = Company.of(pairs);
    double cost = 0;
    for (SpotPair pair : pairs) {
      cost += pair.cost() + company.cost(pair);
    }
    return cost;
  }

  double missingCost() {
    double cost = 0;
    for (Missing spot : missing) {
      cost += spot.cost();
    }
    return cost;
  }

  /** A spot is there unseen if it is too pale; or it is not in the reference at all. */
  private static double missingCost(SpotSignature spot, double dilution, MatchSettings settings) {
    double expected = Math.max(1e-6, spot.peakAbsorbance() * dilution);
    double aboveLimit = StrictMath.log(expected / settings.detectionLimit());
    double seen = BELL.cumulativeProbability(aboveLimit / Company.SPREAD);
    double real = Math.min(1, spot.confidence() / SURE);
    double unseen = 1 - real * seen;
    return Math.min(MISSING, -StrictMath.log(Math.max(1e-9, unseen)));
  }

  /** Says whether the reference explains something and lacks nothing that must be seen. */
  boolean isPossible() {
    return !pairs.isEmpty() && missingCost() < SpotPair.LIMIT;
  }

  /** Says whether a spot is missing that would be seen nine times in ten. */
  boolean lacksWhatWouldShow() {
    return missing.stream().anyMatch(spot -> spot.cost() > WOULD_SHOW);
  }

  boolean explains(SpotSignature unknown) {
    return pairs.stream().anyMatch(pair -> pair.unknown().number() == unknown.number());
  }
}
