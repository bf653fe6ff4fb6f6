package wickmark.core.match;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Finds references that may be in an unknown though its best explanation does without them: one has
 * a spot of the same colour within a spot of the unknown that is longer than any of the two dyes
 * alone. Colour cannot tell such dyes apart, and how long a spot is depends on its amount as well,
 * so that this is a doubt and no explanation.
 */
final class HiddenDyes {
  /** By how much a spot is longer than single ones of its dyes before it counts (ours). */
  private static final double LONGER = 1.15;

  private final LaneSignature unknown;
  private final ExplanationSearch search;
  private final MatchSettings settings;

  HiddenDyes(LaneSignature unknown, ExplanationSearch search, MatchSettings settings) {
    this.unknown = unknown;
    this.search = search;
    this.settings = settings;
  }

  /** The dyes that may hide, in the order of the lanes. */
  List<UnknownReading.HiddenDye> all() {
    List<UnknownReading.HiddenDye> hidden = new ArrayList<>();
    for (ReferenceFit fit : search.fits()) {
      List<UnknownReading.HiddenDye> ofOne = search.isUsed(fit) ? List.of() : within(fit);
      // All that is missing of the reference has to hide, or it is not there.
      if (ofOne.stream()
          .map(UnknownReading.HiddenDye::referenceSpot)
          .toList()
          .containsAll(numbersMissing(fit))) {
        ofOne.stream().filter(dye -> isNew(dye, hidden)).forEach(hidden::add);
      }
    }
    return List.copyOf(hidden);
  }

  /** A reference that is on the strip twice is named once. */
  private static boolean isNew(UnknownReading.HiddenDye dye, List<UnknownReading.HiddenDye> said) {
    return said.stream()
        .noneMatch(
            other ->
                other.unknownSpot() == dye.unknownSpot()
                    && other.reference().equals(dye.reference()));
  }

  private static List<Integer> numbersMissing(ReferenceFit fit) {
    return fit.missing().stream().map(missing -> missing.spot().number()).toList();
  }

  private List<UnknownReading.HiddenDye> within(ReferenceFit fit) {
    List<UnknownReading.HiddenDye> hidden = new ArrayList<>();
    for (SpotSignature own : fit.reference().moved()) {
      for (SpotSignature spot : unknown.moved()) {
        Optional<SpotSignature> counterpart = counterpart(spot);
        if (counterpart.isPresent() && mayHide(own, spot, counterpart.get())) {
          hidden.add(
              new UnknownReading.HiddenDye(
                  spot.number(), fit.reference().name(), own.number(), own.rf().value()));
        }
      }
    }
    return hidden;
  }

  /** The one spot of the best explanation that accounts for a spot of the unknown. */
  private Optional<SpotSignature> counterpart(SpotSignature spot) {
    return search.best().fits().stream()
        .flatMap(fit -> search.best().pairs(fit).stream())
        .filter(pair -> pair.unknown().equals(spot))
        .map(SpotPair::reference)
        .findFirst();
  }

  private boolean mayHide(SpotSignature own, SpotSignature spot, SpotSignature counterpart) {
    double apart = Math.abs(own.rf().value() - counterpart.rf().value());
    return apart > settings.toleranceRf()
        && Blend.mayHide(own, spot)
        && SpotPair.of(spot, own, settings).fitsInColour()
        && spot.halfHeight() > LONGER * Math.max(own.halfHeight(), counterpart.halfHeight());
  }
}
