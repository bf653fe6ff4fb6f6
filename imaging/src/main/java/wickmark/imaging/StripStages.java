package wickmark.imaging;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import wickmark.imaging.card.CardView;
import wickmark.imaging.finding.Doubt;
import wickmark.imaging.lane.BeyondFront;
import wickmark.imaging.lane.DyeMap;
import wickmark.imaging.lane.LaneFinder;
import wickmark.imaging.lane.LaneTrack;
import wickmark.imaging.lane.OriginZone;
import wickmark.imaging.line.EndGrip;
import wickmark.imaging.line.FittedLine;
import wickmark.imaging.line.Layout;
import wickmark.imaging.line.LineKind;
import wickmark.imaging.line.LineRefiner;
import wickmark.imaging.paper.DensityMap;
import wickmark.imaging.photo.Photo;
import wickmark.imaging.spot.HandSpot;
import wickmark.imaging.spot.LaneDensity;
import wickmark.imaging.spot.SpotFinder;
import wickmark.imaging.spot.SpotRegion;
import wickmark.imaging.straight.StraightStrip;
import wickmark.imaging.straight.StripFrame;

/** One strip's way from its outline to its reading, one line a stage. */
final class StripStages {
  /** Cells per (nominal) millimetre of the straight strip that is measured. */
  private static final double CELLS_PER_MM = 8;

  /** Certainty of a line below which it is not there. */
  private static final double LEAST_BASELINE = 0.3;

  private static final double LEAST_FRONT = 0.15;

  /** The same with its lead over other fronts: below this, any other would do as well. */
  private static final double LEAST_FRONT_CONFIDENCE = 0.1;

  /** The same for the bottom. */
  private static final double LEAST_BOTTOM_CONFIDENCE = 0.05;

  /** The same for the lanes: far below it they may carry one another's names. */
  private static final double LEAST_LANES_CONFIDENCE = 0.05;

  /** Evidence for this end over that for the other below which both lines could be the baseline. */
  private static final double LEAST_BOTTOM_LEAD = 0.5;

  private final ReadingRequest request;
  private final StripChoice.Candidate chosen;
  private final StageWatch watch;
  private final StripFrame plane;
  private final StripFrame frame;
  private final StraightStrip strip;
  private final DensityMap map;
  private final Optional<CardLight> light;

  private StripStages(
      Photo photo,
      ReadingRequest request,
      StripChoice.Candidate chosen,
      Optional<CardView> card,
      StageWatch watch) {
    this.request = request;
    this.chosen = chosen;
    this.watch = watch;
    watch.enters(ReadingStage.STRAIGHTEN);
    StripFrame onPlane = frame(1);
    double raised =
        chosen.plane().flat()
            ? 1
            : onPlane.bentLike(chosen.sides(), CELLS_PER_MM).raisedMagnification();
    this.plane = chosen.plane().isOfDesk() ? frame(raised) : onPlane;
    this.frame = chosen.plane().flat() ? plane : plane.bentLike(chosen.sides(), CELLS_PER_MM);
    this.strip = StraightStrip.of(photo, frame, chosen.shape());
    this.map = DensityMap.of(strip, CELLS_PER_MM);
    this.light = card.flatMap(c -> CardLight.of(photo, c, strip.light(), map));
  }

  /** The strip's frame if it looked larger by so much than on the plane. */
  private StripFrame frame(double magnification) {
    return StripFrame.around(
        chosen.plane().view(),
        chosen.corners(),
        chosen.unitsPerMm() * magnification / CELLS_PER_MM);
  }

  /** Reads the strip, or says what is missing. */
  static StripOutcome read(
      Photo photo,
      ReadingRequest request,
      StripChoice.Candidate chosen,
      Optional<CardView> card,
      StageWatch watch) {
    Layout.@Nullable LinePath baseline = chosen.layout().baseline();
    if (baseline == null || baseline.certainty() < LEAST_BASELINE) {
      return unstraightened(StripRefusals.noBaseline(request), chosen);
    }
    Layout.@Nullable LinePath front = chosen.layout().front();
    if (front == null || front.certainty() < LEAST_FRONT) {
      return unstraightened(StripRefusals.noFront(), chosen);
    }
    StripStages stages = new StripStages(photo, request, chosen, card, watch);
    StripOutcome outcome = stages.between(baseline, front);
    return StripExposure.isTooBright(stages.strip) ? StripRefusals.withTooBright(outcome) : outcome;
  }

  /** The outcome of a strip that was looked at coarsely only. */
  private static StripOutcome unstraightened(StripOutcome outcome, StripChoice.Candidate chosen) {
    return StripExposure.isAtEnd(chosen.light()) ? StripRefusals.withTooBright(outcome) : outcome;
  }

  private StripOutcome between(Layout.LinePath lower, Layout.LinePath upper) {
    watch.enters(ReadingStage.LINES);
    FittedLine baseline = measured(lower, request.lines().baseline());
    FittedLine front = measured(upper, request.lines().front());
    watch.enters(ReadingStage.LANES);
    DyeMap dye = DyeMap.of(map, baseline, front);
    OriginZone zone = OriginZone.of(dye, baseline, front, CELLS_PER_MM);
    LanePlaces places = new LanePlaces(request, chosen.shape(), frame, CELLS_PER_MM);
    if (!places.areInOrder()) {
      return StripRefusals.lanesOutOfOrder();
    }
    List<LaneTrack> lanes =
        places
            .all()
            .orElseGet(() -> LaneFinder.find(map, baseline, front, dye, zone, places.said()));
    if (lanes.isEmpty() && places.columns().isEmpty()) {
      return StripRefusals.noLanes();
    }
    if (lanes.size() < Math.max(1, request.laneNames().size())) {
      return StripRefusals.lanesNotCertain(request);
    }
    watch.enters(ReadingStage.SPOTS);
    SpotPlaces said = new SpotPlaces(request, chosen.shape(), frame, CELLS_PER_MM);
    List<String> names = places.names(lanes.size());
    List<List<SpotRegion>> spots =
        said.in(
            SpotFinder.find(map, baseline, front, dye, zone, lanes),
            names,
            new HandSpot(dye, front, CELLS_PER_MM));
    if (spots.stream().allMatch(List::isEmpty)) {
      return StripRefusals.noSpots();
    }
    ReadingAssembly.Lanes found =
        new ReadingAssembly.Lanes(
            lanes, names, spots, LaneDensity.of(dye, baseline, front, lanes, CELLS_PER_MM));
    List<List<SpotRegion>> explained = new ArrayList<>(spots);
    explained.add(said.takenOut());
    List<Doubt> doubts = new ArrayList<>(said.doubts());
    doubts.addAll(BaselineDoubts.of(baseline, zone));
    doubts.addAll(
        new SpotDoubts(baseline, front, map.steepness(), map.shade(), CELLS_PER_MM)
            .of(
                found,
                LeftoverDye.find(dye, baseline, front, zone, explained, CELLS_PER_MM),
                dye.driedStains()));
    return reading(
        new ReadingAssembly.Straight(frame, strip, baseline, front, EndGrip.isOn(map)),
        found,
        places,
        doubts);
  }

  /** The line as the person says it, else to a part of a cell where it was found. */
  private FittedLine measured(Layout.LinePath found, Optional<ReadingRequest.Segment> said) {
    return SaidPlaces.on(chosen.shape(), said)
        .map(segment -> SaidPlaces.line(segment, frame, CELLS_PER_MM))
        .orElseGet(() -> LineRefiner.refine(map, found.in(plane, frame)));
  }

  private StripReading.Said said(ReadingAssembly.Straight straight, LanePlaces places) {
    return new StripReading.Said(
        !request.strip().corners().isEmpty(),
        straight.baseline().kind() == LineKind.BY_HAND,
        straight.front().kind() == LineKind.BY_HAND,
        places.columns().keySet());
  }

  private StripOutcome reading(
      ReadingAssembly.Straight straight,
      ReadingAssembly.Lanes lanes,
      LanePlaces places,
      List<Doubt> ofSpots) {
    watch.enters(ReadingStage.DISTANCES);
    ReadingAssembly assembly = new ReadingAssembly(chosen, straight, lanes, CELLS_PER_MM);
    StripReading.Confidence confidence =
        StripConfidence.of(
            request,
            chosen,
            straight.baseline(),
            straight.front(),
            lanes.tracks(),
            assembly.relativeScale());
    if (confidence.orientation() < LEAST_BOTTOM_CONFIDENCE
        && chosen.layout().lead() < LEAST_BOTTOM_LEAD) {
      return StripRefusals.noBottom();
    }
    if (confidence.lanes() < LEAST_LANES_CONFIDENCE) {
      return StripRefusals.lanesNotCertain(request);
    }
    double ofFront = StripConfidence.ofFront(chosen.layout(), straight.front());
    if (ofFront < LEAST_FRONT_CONFIDENCE) {
      return StripRefusals.noFront();
    }
    if (straight.front().kind() == LineKind.TIDE_MARK
        && FindingDoubts.doubtsFront(ofFront)
        && BeyondFront.holdsDye(map, straight.front())) {
      return StripRefusals.dyeBeyondFront();
    }
    List<Doubt> doubts =
        new ArrayList<>(StripDoubts.of(request, chosen, places, lanes, straight.held()));
    doubts.addAll(StripExposure.doubts(strip, doubts));
    doubts.addAll(FindingDoubts.of(confidence));
    doubts.addAll(ofSpots);
    return new StripOutcome.Read(
        assembly.reading(request.unknowns(), said(straight, places), confidence, light, doubts));
  }
}
