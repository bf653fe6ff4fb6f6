package wickmark.imaging;

import java.util.List;
import java.util.Optional;
import wickmark.imaging.lane.DyeMap;
import wickmark.imaging.lane.LaneFinder;
import wickmark.imaging.lane.LaneTrack;
import wickmark.imaging.line.FittedLine;
import wickmark.imaging.line.LineRefiner;
import wickmark.imaging.paper.DensityMap;
import wickmark.imaging.photo.Photo;
import wickmark.imaging.photo.PhotoArea;
import wickmark.imaging.scale.RulerEdge;
import wickmark.imaging.scale.RulerReader;
import wickmark.imaging.spot.SpotFinder;
import wickmark.imaging.spot.SpotRegion;
import wickmark.imaging.straight.StraightStrip;
import wickmark.imaging.straight.StripFrame;
import wickmark.imaging.strip.StripFinder;
import wickmark.imaging.strip.StripOutline;

/** Reads strips from a photo or a scan: the whole way, one line a stage. */
public final class StripReader {
  /** Cells per (nominal) millimetre of the straight strip that is measured. */
  private static final double CELLS_PER_MM = 8;

  /** Outlines looked at by their rank alone, and with those that lie elsewhere. */
  private static final int BEST_OUTLINES = 7;

  private static final int MOST_OUTLINES = 20;

  private StripReader() {}

  /** Reads all strips in a photo, from the left. */
  public static List<StripOutcome> readAll(Photo photo, ReadingRequest request) {
    List<StripOutline> outlines = outlines(photo, request);
    List<RulerEdge> edges =
        RulerReader.read(
            photo, request.strip().ignoredAreas().stream().map(PhotoArea::corners).toList());
    List<StripChoice.Candidate> strips =
        StripSelection.of(StripChoice.weigh(photo, request, outlines, edges), request);
    if (strips.isEmpty()) {
      return List.of(StripRefusals.noStrip());
    }
    Optional<String> beside = StripSelection.saidBeside(strips, request);
    if (beside.isPresent()) {
      return List.of(StripRefusals.besideStrip(beside.get()));
    }
    return strips.stream().map(strip -> read(photo, request, strip)).toList();
  }

  private static List<StripOutline> outlines(Photo photo, ReadingRequest request) {
    List<PhotoArea> ignored = request.strip().ignoredAreas();
    return request.strip().corners().isEmpty()
        ? StripFinder.find(photo, BEST_OUTLINES, MOST_OUTLINES, ignored)
        : List.of(SaidOutline.of(request.strip().corners()));
  }

  private static StripOutcome read(
      Photo photo, ReadingRequest request, StripChoice.Candidate chosen) {
    if (chosen.layout().baseline() == null || chosen.layout().baseline().certainty() < 0.3) {
      return StripRefusals.noBaseline(request);
    }
    if (chosen.layout().front() == null || chosen.layout().front().certainty() < 0.15) {
      return StripRefusals.noFront();
    }
    StripFrame frame =
        StripFrame.around(
            chosen.plane().view(), chosen.corners(), chosen.unitsPerMm() / CELLS_PER_MM);
    StraightStrip strip = StraightStrip.of(photo, frame, chosen.shape());
    DensityMap map = DensityMap.of(strip, CELLS_PER_MM);
    FittedLine baseline =
        SaidPlaces.on(chosen.shape(), request.lines().baseline())
            .map(said -> SaidPlaces.line(said, frame, CELLS_PER_MM))
            .orElseGet(() -> LineRefiner.refine(map, chosen.layout().baseline()));
    FittedLine front =
        SaidPlaces.on(chosen.shape(), request.lines().front())
            .map(said -> SaidPlaces.line(said, frame, CELLS_PER_MM))
            .orElseGet(() -> LineRefiner.refine(map, chosen.layout().front()));
    DyeMap dye = DyeMap.of(map, baseline, front);
    LanePlaces places = new LanePlaces(request, chosen.shape(), frame);
    List<LaneTrack> lanes =
        places
            .all()
            .orElseGet(
                () -> places.moved(LaneFinder.find(map, baseline, front, dye, request.lanes())));
    if (lanes.isEmpty()) {
      return StripRefusals.noLanes();
    }
    if (!LanePlaces.inOrder(lanes)) {
      return StripRefusals.lanesOutOfOrder();
    }
    List<List<SpotRegion>> spots = SpotFinder.find(map, baseline, front, dye, lanes);
    if (spots.stream().allMatch(List::isEmpty)) {
      return StripRefusals.noSpots();
    }
    ReadingAssembly.Lanes found =
        new ReadingAssembly.Lanes(lanes, places.names(lanes.size()), spots);
    return new StripOutcome.Read(
        new ReadingAssembly(
                chosen,
                new ReadingAssembly.Straight(frame, strip, baseline, front),
                found,
                CELLS_PER_MM)
            .reading(request.unknowns(), StripDoubts.of(request, chosen, places, found)));
  }
}
