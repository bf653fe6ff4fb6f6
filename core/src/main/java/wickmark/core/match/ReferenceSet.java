package wickmark.core.match;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * A set of references taken together as the explanation of one unknown.
 *
 * @param blends spots of the unknown that two spots of the set run into
 */
record ReferenceSet(
    List<ReferenceFit> fits, List<Blend> blends, List<SpotSignature> unexplained, double cost) {

  /** Cost of one more reference: of two sets that fit alike the smaller is to be preferred. */
  private static final double REFERENCE = 1;

  /** Cost of a spot that nothing explains: where a pair fits at all, it saves as much. */
  private static final double UNEXPLAINED = SpotPair.LIMIT + REFERENCE;

  /** Cost of a spot that may be none. */
  private static final double DOUBTFUL = 0.9 * REFERENCE;

  ReferenceSet {
    fits = List.copyOf(fits);
    blends = List.copyOf(blends);
    unexplained = List.copyOf(unexplained);
  }

  static ReferenceSet of(List<ReferenceFit> fits, LaneSignature unknown, MatchSettings settings) {
    List<SpotSignature> unexplained = new ArrayList<>();
    List<Blend> blends = new ArrayList<>();
    Set<SpotSignature> hidden = new HashSet<>();
    double cost = 0;
    for (ReferenceFit fit : fits) {
      cost += REFERENCE + fit.pairCost() + fit.missingCost();
    }
    for (SpotSignature spot : unknown.moved()) {
      boolean isPaired = fits.stream().anyMatch(fit -> fit.explains(spot));
      double costWithout = isPaired ? 0 : unexplainedCost(spot, settings);
      cost += costWithout;
      Optional<BlendChoice> choice = BlendChoice.cheapest(spot, fits, hidden, settings);
      if (choice.isPresent() && choice.get().costChange() < costWithout) {
        blends.add(choice.get().blend());
        hidden.add(choice.get().blend().first());
        hidden.add(choice.get().blend().second());
        cost += choice.get().costChange() - costWithout;
      } else if (!isPaired) {
        unexplained.add(spot);
      }
    }
    return new ReferenceSet(fits, blends, unexplained, cost);
  }

  /** A spot below the limit of detection does not call for a reference by itself. */
  private static double unexplainedCost(SpotSignature spot, MatchSettings settings) {
    return spot.peakAbsorbance() < settings.detectionLimit() ? DOUBTFUL : UNEXPLAINED;
  }

  boolean explains(ReferenceFit fit, SpotSignature spot) {
    return fit.explains(spot)
        || blends.stream()
            .anyMatch(
                blend ->
                    blend.unknown().equals(spot)
                        && (isOf(fit, blend.first()) || isOf(fit, blend.second())));
  }

  /** Says whether a spot is one of this reference's. */
  static boolean isOf(ReferenceFit fit, SpotSignature spot) {
    return fit.reference().spots().contains(spot);
  }

  /** The pairs of a reference that are not in a blend. */
  List<SpotPair> pairs(ReferenceFit fit) {
    return fit.pairs().stream()
        .filter(
            pair ->
                blends.stream()
                    .noneMatch(b -> b.unknown().equals(pair.unknown()) && b.has(pair.reference())))
        .toList();
  }

  /** What of a reference is missing and not hidden in a blend either. */
  List<SpotSignature> missing(ReferenceFit fit) {
    return fit.missing().stream()
        .map(ReferenceFit.Missing::spot)
        .filter(
            spot ->
                blends.stream().noneMatch(b -> b.first().equals(spot) || b.second().equals(spot)))
        .toList();
  }

  /** Says whether each reference explains a spot that no other of the set explains as well. */
  boolean needsAll(LaneSignature unknown) {
    return fits.stream().allMatch(fit -> isNeeded(fit, unknown));
  }

  private boolean isNeeded(ReferenceFit fit, LaneSignature unknown) {
    boolean isInBlend =
        blends.stream().anyMatch(b -> isOf(fit, b.first()) || isOf(fit, b.second()));
    List<ReferenceFit> others = new ArrayList<>(fits);
    others.remove(fit);
    return isInBlend
        || unknown.moved().stream()
            .filter(fit::explains)
            .anyMatch(spot -> others.stream().noneMatch(other -> other.explains(spot)));
  }

  List<String> names() {
    return fits.stream().map(fit -> fit.reference().name()).toList();
  }
}
