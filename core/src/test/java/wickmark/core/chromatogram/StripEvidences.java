package wickmark.core.chromatogram;

import java.util.List;
import java.util.Set;
import wickmark.core.colour.DyeAbsorbance;

/** Strips for tests: baseline at 20, front at 80, in millimetres unless said. */
final class StripEvidences {
  static final StripEvidence.SharedUncertainties EXACT =
      new StripEvidence.SharedUncertainties(0, 0, 0);

  private StripEvidences() {}

  static StripEvidence strip(StripEvidence.SharedUncertainties shared, LaneEvidence... lanes) {
    return new StripEvidence(true, shared, List.of(lanes));
  }

  static LaneEvidence lane(double lineUncertainty, SpotEvidence... spots) {
    return new LaneEvidence(
        "A",
        LaneRole.REFERENCE,
        new Place(20, lineUncertainty),
        new Place(80, lineUncertainty),
        List.of(spots));
  }

  static SpotEvidence spot(double along, double uncertainty, SpotFlag... flags) {
    return spot(along, along, along, uncertainty, flags);
  }

  static SpotEvidence spot(
      double centroid, double middle, double densest, double uncertainty, SpotFlag... flags) {
    return new SpotEvidence(
        new Place(centroid, uncertainty),
        new Place(middle, uncertainty),
        new Place(densest, uncertainty),
        new SpotEvidence.Extent(middle + 4, middle - 4, 6, 38),
        new SpotEvidence.Look(0.4, new DyeAbsorbance(0.4, 0.2, 0).toLab()),
        Set.of(flags),
        1);
  }

  static SpotEvidence grey(SpotEvidence spot) {
    return new SpotEvidence(
        spot.centroid(),
        spot.middle(),
        spot.densest(),
        spot.extent(),
        new SpotEvidence.Look(0.2, new DyeAbsorbance(0.2, 0.2, 0.19).toLab()),
        spot.flags(),
        spot.confidence());
  }
}
