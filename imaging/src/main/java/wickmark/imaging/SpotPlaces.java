package wickmark.imaging;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import wickmark.imaging.ReadingRequest.SaidSpot;
import wickmark.imaging.finding.Doubt;
import wickmark.imaging.photo.PhotoPoint;
import wickmark.imaging.spot.HandSpot;
import wickmark.imaging.spot.SpotRegion;
import wickmark.imaging.straight.PaperShape;
import wickmark.imaging.straight.StripFrame;

/** Puts what the person says of single spots in the place of what was found. */
final class SpotPlaces {
  /** A spot that is measured anew lies within this of where it was seen, mm. */
  private static final double NEAR_MM = 1.5;

  private final List<SaidSpot> said;
  private final StripFrame frame;
  private final double cellsPerMm;
  private final List<SpotRegion> takenOut = new ArrayList<>();
  private final List<Doubt> doubts = new ArrayList<>();

  /** Takes what is said of spots on one strip. */
  SpotPlaces(ReadingRequest request, PaperShape shape, StripFrame frame, double cellsPerMm) {
    this.said = request.spots().stream().filter(s -> shape.contains(s.place())).toList();
    this.frame = frame;
    this.cellsPerMm = cellsPerMm;
  }

  /** What was found and is no spot by the person's word. */
  List<SpotRegion> takenOut() {
    return List.copyOf(takenOut);
  }

  /** What of the person's words came to nothing. */
  List<Doubt> doubts() {
    return List.copyOf(doubts);
  }

  /**
   * Returns the spots of each lane as the person has them, those nearest the front first.
   *
   * @param names the lanes' names
   */
  List<List<SpotRegion>> in(List<List<SpotRegion>> found, List<String> names, HandSpot measuring) {
    List<List<SpotRegion>> spots = new ArrayList<>();
    found.forEach(lane -> spots.add(new ArrayList<>(lane)));
    said.forEach(spot -> takeOut(spot, spots));
    List<Placed> placed = new ArrayList<>();
    for (SaidSpot spot : said) {
      lane(spot, names).ifPresent(name -> placed.add(placed(name, spot.place(), names)));
    }
    List<SpotRegion.Centroid> centres = new ArrayList<>();
    spots.forEach(lane -> lane.forEach(spot -> centres.add(spot.centroid())));
    placed.forEach(at -> centres.add(at.centre));
    for (Placed at : placed) {
      List<SpotRegion.Centroid> others = new ArrayList<>(centres);
      others.remove(at.centre);
      spots.get(at.lane).add(measuring.at(at.centre, others));
    }
    spots.forEach(lane -> lane.sort(Comparator.comparingDouble(s -> s.centroid().y())));
    return spots;
  }

  /** A centre in a lane. */
  private record Placed(int lane, SpotRegion.Centroid centre) {}

  private Placed placed(String lane, PhotoPoint place, List<String> names) {
    double[] at = frame.fromPhoto(place);
    return new Placed(
        names.indexOf(lane),
        new SpotRegion.Centroid(at[0], at[1], SaidPlaces.spotUncertainty(frame, at, cellsPerMm)));
  }

  /** The lane of a spot that is put somewhere, where there is that lane. */
  private Optional<String> lane(SaidSpot spot, List<String> names) {
    Optional<String> lane = Optional.empty();
    if (spot instanceof SaidSpot.Added added) {
      lane = Optional.of(added.lane());
    } else if (spot instanceof SaidSpot.Moved moved) {
      lane = Optional.of(moved.lane());
    }
    if (lane.isPresent() && !names.contains(lane.get())) {
      doubt("A spot was set by hand in lane " + lane.get() + ", but there is no such lane.");
      return Optional.empty();
    }
    return lane;
  }

  private void takeOut(SaidSpot spot, List<List<SpotRegion>> spots) {
    if (spot instanceof SaidSpot.Moved moved) {
      takeOut(moved.found(), spots, "that was moved by hand")
          .ifPresent(taken -> taken.lane.remove(taken.spot));
    } else if (spot instanceof SaidSpot.Removed removed) {
      takeOut(removed.place(), spots, "that was taken out by hand")
          .ifPresent(
              taken -> {
                taken.lane.remove(taken.spot);
                takenOut.add(taken.spot);
              });
    }
  }

  private record Taken(List<SpotRegion> lane, SpotRegion spot) {}

  private Optional<Taken> takeOut(PhotoPoint place, List<List<SpotRegion>> spots, String which) {
    double[] at = frame.fromPhoto(place);
    Optional<Taken> nearest =
        spots.stream()
            .flatMap(lane -> lane.stream().map(spot -> new Taken(lane, spot)))
            .filter(taken -> isAt(taken.spot, at))
            .min(Comparator.comparingDouble(taken -> distance(taken.spot, at)));
    if (nearest.isEmpty()) {
      doubt(
          String.format(
              Locale.ROOT,
              "A spot %s was not found at its old place (%.0f, %.0f in the picture). Look whether"
                  + " one beside it is meant.",
              which,
              place.x(),
              place.y()));
    }
    return nearest;
  }

  private boolean isAt(SpotRegion spot, double[] at) {
    double margin = NEAR_MM * cellsPerMm;
    return distance(spot, at) <= margin
        || (at[0] > spot.box().left()
            && at[0] < spot.box().right()
            && at[1] > spot.box().top()
            && at[1] < spot.box().bottom());
  }

  private static double distance(SpotRegion spot, double[] at) {
    return Math.hypot(spot.centroid().x() - at[0], spot.centroid().y() - at[1]);
  }

  private void doubt(String message) {
    doubts.add(new Doubt("correction-not-used", message));
  }
}
