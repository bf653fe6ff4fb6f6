package wickmark.imaging;

import java.util.List;
import wickmark.imaging.lane.DyeMap;
import wickmark.imaging.lane.LaneFinder;
import wickmark.imaging.lane.LaneTrack;
import wickmark.imaging.line.FittedLine;
import wickmark.imaging.line.Layout;
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

  private static final int OUTLINES = 7;

  /** Least evidence of a strip that nobody pointed at. */
  private static final double LEAST_EVIDENCE = 3.2;

  private StripReader() {}

  /** Reads all strips in a photo, from the left. */
  public static List<StripOutcome> readAll(Photo photo, ReadingRequest request) {
    List<StripOutline> outlines = outlines(photo, request);
    List<RulerEdge> edges =
        RulerReader.read(
            photo, request.strip().ignoredAreas().stream().map(PhotoArea::corners).toList());
    List<StripChoice.Candidate> candidates =
        StripChoice.weigh(photo, request, outlines, edges).stream()
            .filter(c -> c.total() >= LEAST_EVIDENCE || pointedAt(c, request))
            .toList();
    if (candidates.isEmpty()) {
      return List.of(StripRefusals.noStrip());
    }
    return List.of(read(photo, request, candidates.get(0)));
  }

  private static List<StripOutline> outlines(Photo photo, ReadingRequest request) {
    return request.strip().corners().isEmpty()
        ? StripFinder.find(photo, OUTLINES, request.strip().ignoredAreas())
        : List.of(SaidOutline.of(request.strip().corners()));
  }

  /** Whether the person has said that there is a strip here. */
  private static boolean pointedAt(StripChoice.Candidate c, ReadingRequest request) {
    return !request.strip().corners().isEmpty()
        || SaidPlaces.on(c.shape(), request.lines().baseline()).isPresent()
        || SaidPlaces.on(c.shape(), request.lines().front()).isPresent();
  }

  private static StripOutcome read(
      Photo photo, ReadingRequest request, StripChoice.Candidate chosen) {
    Layout.LinePath baselinePath = chosen.layout().baseline();
    if (baselinePath == null || baselinePath.certainty() < 0.3) {
      return StripRefusals.noBaseline(request);
    }
    Layout.LinePath frontPath = chosen.layout().front();
    if (frontPath == null || frontPath.certainty() < 0.15) {
      return StripRefusals.noFront();
    }
    StripFrame plane =
        StripFrame.around(
            chosen.plane().view(), chosen.corners(), chosen.unitsPerMm() / CELLS_PER_MM);
    StripFrame frame = chosen.plane().flat() ? plane : plane.bentLike(chosen.sides(), CELLS_PER_MM);
    StraightStrip strip = StraightStrip.of(photo, frame, chosen.shape());
    DensityMap map = DensityMap.of(strip, CELLS_PER_MM);
    FittedLine baseline =
        SaidPlaces.on(chosen.shape(), request.lines().baseline())
            .map(said -> SaidPlaces.line(said, frame, CELLS_PER_MM))
            .orElseGet(() -> LineRefiner.refine(map, baselinePath.in(plane, frame)));
    FittedLine front =
        SaidPlaces.on(chosen.shape(), request.lines().front())
            .map(said -> SaidPlaces.line(said, frame, CELLS_PER_MM))
            .orElseGet(() -> LineRefiner.refine(map, frontPath.in(plane, frame)));
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
