package wickmark.core.match;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * A blend as the explanation of a spot, and by how much it changes the cost of a set of references.
 *
 * @param costChange cost of the blend less what its two spots cost without it
 */
record BlendChoice(Blend blend, double costChange) {

  /**
   * A spot of a reference that may be in the blend.
   *
   * @param cost what it costs as missing, or as paired with the spot
   */
  private record Part(SpotSignature spot, double cost, boolean isMissing) {}

  /**
   * Returns the blend that changes the cost most favourably: of two spots that are missing
   * otherwise, or of one and the spot's counterpart.
   *
   * @param taken spots that are in another blend already
   */
  static Optional<BlendChoice> cheapest(
      SpotSignature spot,
      List<ReferenceFit> fits,
      Set<SpotSignature> taken,
      MatchSettings settings) {
    List<Part> parts = parts(spot, fits, taken);
    Optional<BlendChoice> best = Optional.empty();
    for (int i = 0; i < parts.size(); i++) {
      for (int j = i + 1; j < parts.size(); j++) {
        Part first = parts.get(i);
        Part second = parts.get(j);
        if (!first.isMissing() && !second.isMissing()) {
          continue;
        }
        Optional<BlendChoice> choice =
            Blend.of(spot, first.spot(), second.spot(), settings)
                .map(b -> new BlendChoice(b, b.cost() - first.cost() - second.cost()));
        if (choice.isPresent()
            && (best.isEmpty() || choice.get().costChange() < best.get().costChange())) {
          best = choice;
        }
      }
    }
    return best;
  }

  private static List<Part> parts(
      SpotSignature spot, List<ReferenceFit> fits, Set<SpotSignature> taken) {
    List<Part> parts = new ArrayList<>();
    for (ReferenceFit fit : fits) {
      for (ReferenceFit.Missing missing : fit.missing()) {
        if (Blend.mayHide(missing.spot(), spot) && !taken.contains(missing.spot())) {
          parts.add(new Part(missing.spot(), missing.cost(), true));
        }
      }
      for (SpotPair pair : fit.pairs()) {
        if (pair.unknown().equals(spot)) {
          parts.add(new Part(pair.reference(), pair.cost(), false));
        }
      }
    }
    return parts;
  }
}
