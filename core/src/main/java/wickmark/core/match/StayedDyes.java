package wickmark.core.match;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * References of which all dye stayed at the origin. Every sample may leave some of its colour
 * there, so that what stayed is not compared otherwise; but where the unknown left colour of that
 * kind, and no reference that explains its other spots did, such a reference accounts for it.
 */
final class StayedDyes {
  private StayedDyes() {}

  /** The pairs of what stayed, at most one for each reference. */
  static List<UnknownReading.Match> of(
      LaneSignature unknown, ExplanationSearch search, MatchSettings settings) {
    List<UnknownReading.Match> stayed = new ArrayList<>();
    for (ReferenceFit fit : search.fits()) {
      if (!stays(fit.reference())) {
        continue;
      }
      Optional<SpotPair> pair = pair(unknown, fit.reference(), settings);
      boolean isLeftByAnother =
          pair.isPresent()
              && search.best().fits().stream()
                  .anyMatch(
                      other -> pair(other.reference(), fit.reference(), settings).isPresent());
      boolean isNew =
          stayed.stream().noneMatch(match -> match.reference().equals(fit.reference().name()));
      if (pair.isPresent() && !isLeftByAnother && isNew) {
        stayed.add(
            new UnknownReading.Match(
                pair.get().unknown().number(),
                fit.reference().name(),
                pair.get().reference().number(),
                pair.get().rfDifference(),
                pair.get().colourDifference()));
      }
    }
    return List.copyOf(stayed);
  }

  /** Says whether all dye of a lane stayed. */
  static boolean stays(LaneSignature lane) {
    return lane.moved().isEmpty() && lane.hasResidue();
  }

  private static Optional<SpotPair> pair(
      LaneSignature lane, LaneSignature reference, MatchSettings settings) {
    return lane.spots().stream()
        .filter(SpotSignature::isResidue)
        .flatMap(spot -> reference.spots().stream().map(own -> SpotPair.of(spot, own, settings)))
        .filter(SpotPair::fitsInColour)
        .findFirst();
  }
}
