package wickmark.core.match;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Says of each reference that cannot be in an unknown why it cannot. */
final class RuledOutReasons {
  private final LaneSignature unknown;
  private final ExplanationSearch search;
  private final MatchSettings settings;

  RuledOutReasons(LaneSignature unknown, ExplanationSearch search, MatchSettings settings) {
    this.unknown = unknown;
    this.search = search;
    this.settings = settings;
  }

  /** The references that cannot be in the unknown, in the order of the lanes. */
  List<UnknownReading.RuledOut> all() {
    List<UnknownReading.RuledOut> ruledOut = new ArrayList<>();
    for (ReferenceFit fit : search.fits()) {
      String name = fit.reference().name();
      boolean repeatFits =
          search.fits().stream()
              .anyMatch(
                  f ->
                      f.reference().name().equals(name)
                          && ((f.isPossible() && !f.lacksWhatWouldShow()) || search.isUsed(f)));
      boolean said = ruledOut.stream().anyMatch(other -> other.reference().equals(name));
      if (!repeatFits && !said) {
        ruledOut.add(new UnknownReading.RuledOut(name, reason(fit)));
      }
    }
    return ruledOut;
  }

  private String reason(ReferenceFit fit) {
    Optional<SpotSignature> strongest =
        fit.missing().stream()
            .map(ReferenceFit.Missing::spot)
            .max(Comparator.comparingDouble(SpotSignature::peakAbsorbance));
    if (StayedDyes.stays(fit.reference())) {
      return "all of its colour stayed at the origin, where "
          + unknown.name()
          + " has none of it that no other left";
    }
    if (strongest.isEmpty()) {
      return "it has no spot that could be compared";
    }
    SpotSignature missing = strongest.get();
    List<SpotPair> pairs =
        unknown.moved().stream().map(spot -> SpotPair.of(spot, missing, settings)).toList();
    String head =
        "its spot " + missing.number() + " (" + SpotWords.look(missing) + ") has no counterpart: ";
    Optional<SpotPair> sameRf = nearest(pairs, true);
    Optional<SpotPair> sameColour = nearest(pairs, false);
    if (sameRf.isPresent()) {
      return head
          + "spot "
          + sameRf.get().unknown().number()
          + " of "
          + unknown.name()
          + " travels as far but is of another colour ("
          + SpotWords.colours(sameRf.get())
          + ")";
    }
    if (sameColour.isPresent()) {
      return head
          + "the nearest of its colour in "
          + unknown.name()
          + ", spot "
          + sameColour.get().unknown().number()
          + ", is at Rf "
          + sameColour.get().unknown().rf().text();
    }
    return head + unknown.name() + " has nothing of its colour, and nothing at its height";
  }

  private static Optional<SpotPair> nearest(List<SpotPair> pairs, boolean inRf) {
    return pairs.stream()
        .filter(pair -> inRf ? pair.fitsInRf() : pair.isOfOneName())
        .min(Comparator.comparingDouble(SpotPair::cost));
  }
}
