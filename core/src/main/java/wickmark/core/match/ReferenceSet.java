package wickmark.core.match;

import java.util.ArrayList;
import java.util.List;

/** A set of references taken together as the explanation of one unknown. */
record ReferenceSet(List<ReferenceFit> fits, List<SpotSignature> unexplained, double cost) {

  /** Cost of one more reference: of two sets that fit alike the smaller is to be preferred. */
  private static final double REFERENCE = 1;

  /** Cost of a spot that nothing explains: where a pair fits at all, it saves as much. */
  private static final double UNEXPLAINED = SpotPair.LIMIT + REFERENCE;

  ReferenceSet {
    fits = List.copyOf(fits);
    unexplained = List.copyOf(unexplained);
  }

  static ReferenceSet of(List<ReferenceFit> fits, LaneSignature unknown) {
    List<SpotSignature> unexplained = new ArrayList<>();
    for (SpotSignature spot : unknown.moved()) {
      if (fits.stream().noneMatch(fit -> fit.explains(spot))) {
        unexplained.add(spot);
      }
    }
    double cost = unexplained.size() * UNEXPLAINED;
    for (ReferenceFit fit : fits) {
      cost += REFERENCE + fit.cost();
    }
    return new ReferenceSet(fits, unexplained, cost);
  }

  /** Says whether each reference explains a spot that no other of the set explains. */
  boolean needsAll(LaneSignature unknown) {
    return fits.stream().allMatch(fit -> isNeeded(fit, unknown));
  }

  private boolean isNeeded(ReferenceFit fit, LaneSignature unknown) {
    List<ReferenceFit> others = new ArrayList<>(fits);
    others.remove(fit);
    return unknown.moved().stream()
        .filter(fit::explains)
        .anyMatch(spot -> others.stream().noneMatch(other -> other.explains(spot)));
  }

  List<String> names() {
    return fits.stream().map(fit -> fit.reference().name()).toList();
  }
}
