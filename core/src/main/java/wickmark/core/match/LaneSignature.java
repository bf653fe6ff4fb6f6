package wickmark.core.match;

import java.util.List;
import wickmark.core.chromatogram.Lane;
import wickmark.core.chromatogram.LaneRole;

/** The spots of one lane, from the front down. */
record LaneSignature(String name, LaneRole role, List<SpotSignature> spots) {

  /** Keeps a copy of the list. */
  LaneSignature {
    spots = List.copyOf(spots);
  }

  /** Returns the signature of a measured lane. */
  static LaneSignature of(Lane lane) {
    double front = lane.frontDistance().value();
    return new LaneSignature(
        lane.name(),
        lane.role(),
        lane.spots().stream().map(spot -> SpotSignature.of(spot, front)).toList());
  }

  /** Returns the spots that have moved: what is left at the origin is not compared. */
  List<SpotSignature> moved() {
    return spots.stream().filter(spot -> !spot.isResidue()).toList();
  }

  boolean hasResidue() {
    return spots.stream().anyMatch(SpotSignature::isResidue);
  }
}
