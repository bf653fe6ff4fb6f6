package wickmark.core.match;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.distribution.NormalDistribution;

/**
 * How one reference fits into an unknown: which of its spots have a counterpart there.
 *
 * @param pairs spots with a counterpart
 * @param missing spots without
 * @param missingCost minus the logarithm of the probability that what is missing was there unseen
 */
record ReferenceFit(
    LaneSignature reference,
    List<SpotPair> pairs,
    List<SpotSignature> missing,
    double missingCost) {

  /** Cost of a missing spot that could not have been overlooked. */
  static final double MISSING = 10;

  /**
   * Standard deviation of the logarithm of how much paler a dye is in the unknown than another of
   * the same reference: dyes of one sample are not always in the same proportion, and their spots
   * spread differently. A factor of two.
   */
  private static final double COMPANY_SPREAD = 0.7;

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
    List<SpotSignature> missing = new ArrayList<>();
    for (int i = 0; i < own.size(); i++) {
      SpotPair pair =
          columns[i] < others.size()
              ? SpotPair.of(others.get(columns[i]), own.get(i), settings)
              : null;
      if (pair != null && pair.fits()) {
        pairs.add(pair);
      } else {
        missing.add(own.get(i));
      }
    }
    double missingCost = 0;
    double dilution = dilution(pairs);
    for (SpotSignature spot : missing) {
      missingCost += missingCost(spot.peakAbsorbance() * dilution, settings);
    }
    return new ReferenceFit(reference, pairs, missing, missingCost);
  }

  double cost() {
    double cost = missingCost;
    for (SpotPair pair : pairs) {
      cost += pair.cost();
    }
    return cost;
  }

  /** How much paler the reference's dyes are in the unknown: geometric mean over the pairs. */
  private static double dilution(List<SpotPair> pairs) {
    if (pairs.isEmpty()) {
      return 1;
    }
    double sum = 0;
    for (SpotPair pair : pairs) {
      sum +=
          StrictMath.log(
              Math.max(1e-3, pair.unknown().peakAbsorbance())
                  / Math.max(1e-3, pair.reference().peakAbsorbance()));
    }
    return StrictMath.exp(sum / pairs.size());
  }

  /** Minus the logarithm of the probability that a spot of this peak absorbance is not seen. */
  private static double missingCost(double expectedAbsorbance, MatchSettings settings) {
    double aboveLimit =
        StrictMath.log(Math.max(1e-6, expectedAbsorbance) / settings.detectionLimit());
    double unseen = BELL.cumulativeProbability(-aboveLimit / COMPANY_SPREAD);
    return Math.min(MISSING, -StrictMath.log(Math.max(1e-9, unseen)));
  }

  /** Says whether the reference may be in the unknown at all. */
  boolean isPossible() {
    return !pairs.isEmpty() && missingCost < SpotPair.LIMIT;
  }

  boolean explains(SpotSignature unknown) {
    return pairs.stream().anyMatch(pair -> pair.unknown().number() == unknown.number());
  }
}
