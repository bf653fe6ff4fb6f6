package wickmark.imaging;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import wickmark.core.chromatogram.StripEvidence;
import wickmark.imaging.finding.Doubt;
import wickmark.imaging.finding.Refusal;
import wickmark.imaging.lane.DyeMap;
import wickmark.imaging.lane.LaneFinder;
import wickmark.imaging.lane.LaneTrack;
import wickmark.imaging.line.FittedLine;
import wickmark.imaging.line.LineRefiner;
import wickmark.imaging.measure.StripMeasurer;
import wickmark.imaging.measure.ViewUncertainty;
import wickmark.imaging.paper.DensityMap;
import wickmark.imaging.photo.Photo;
import wickmark.imaging.photo.PhotoPoint;
import wickmark.imaging.pose.PhotoToStrip;
import wickmark.imaging.scale.PixelScale;
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

  private StripReader() {}

  /** Reads all strips in a photo, from the left. */
  public static List<StripOutcome> readAll(Photo photo, ReadingRequest request) {
    List<StripOutline> outlines = StripFinder.find(photo, OUTLINES);
    List<RulerEdge> edges = RulerReader.read(photo);
    List<StripChoice.Candidate> candidates = StripChoice.weigh(photo, outlines, edges);
    if (candidates.isEmpty() || candidates.get(0).total() < 3.2) {
      return List.of(
          new StripOutcome.Refused(
              new Refusal(
                  Refusal.Reason.NO_STRIP,
                  "No chromatography strip was found: no sheet of paper with a pencil baseline"
                      + " across it. Take the picture from above with the whole strip in it, on a"
                      + " desk of another colour, or say its corners with --corners.")));
    }
    return List.of(read(photo, request, candidates.get(0)));
  }

  private static StripOutcome read(
      Photo photo, ReadingRequest request, StripChoice.Candidate chosen) {
    if (chosen.layout().baseline() == null || chosen.layout().baseline().certainty() < 0.3) {
      return refused(
          Refusal.Reason.NO_BASELINE,
          "No baseline was found across the strip. Mark it with --baseline X1,Y1,X2,Y2 (two of its"
              + " points, in pixels of the picture).");
    }
    if (chosen.layout().front() == null || chosen.layout().front().certainty() < 0.15) {
      return refused(
          Refusal.Reason.NO_FRONT,
          "No solvent front was found between the spots and the strip's upper edge: no pencil line,"
              + " no tide mark. Without a front there is no Rf. If you can see it, mark it with"
              + " --front X1,Y1,X2,Y2; if the solvent ran off the top, the run must be repeated.");
    }
    StripFrame frame =
        StripFrame.around(
            chosen.plane().view(), chosen.corners(), chosen.unitsPerMm() / CELLS_PER_MM);
    StraightStrip strip = StraightStrip.of(photo, frame, chosen.shape());
    DensityMap map = DensityMap.of(strip, CELLS_PER_MM);
    FittedLine baseline = LineRefiner.refine(map, chosen.layout().baseline());
    FittedLine front = LineRefiner.refine(map, chosen.layout().front());
    DyeMap dye = DyeMap.of(map, baseline, front);
    List<LaneTrack> lanes = LaneFinder.find(map, baseline, front, dye, request.lanes());
    if (lanes.isEmpty()) {
      return refused(
          Refusal.Reason.NO_LANES,
          "No lanes were found: no stain above the baseline and no writing below it.");
    }
    List<List<SpotRegion>> spots = SpotFinder.find(map, baseline, front, dye, lanes);
    return new StripOutcome.Read(
        reading(request, chosen, new Straight(frame, strip, baseline, front), lanes, spots));
  }

  private static StripOutcome refused(Refusal.Reason reason, String message) {
    return new StripOutcome.Refused(new Refusal(reason, message));
  }

  private record Straight(
      StripFrame frame, StraightStrip strip, FittedLine baseline, FittedLine front) {}

  private static StripReading reading(
      ReadingRequest request,
      StripChoice.Candidate chosen,
      Straight straight,
      List<LaneTrack> lanes,
      List<List<SpotRegion>> spots) {
    PlaneScale plane = chosen.plane();
    boolean scaled = plane.millimetresPerUnit().isPresent();
    double unitsPerCell = scaled ? 1 / CELLS_PER_MM : 1.0 / straight.frame.height();
    StripMeasurer measurer =
        new StripMeasurer(
            straight.baseline,
            straight.front,
            unitsPerCell,
            CELLS_PER_MM,
            (x, y) -> straight.frame.toPhoto(x, y));
    List<String> names = names(request, lanes.size());
    StripMeasurer.Measured measured = measurer.measure(lanes, spots, names, request.unknowns());
    ViewUncertainty view = viewUncertainty(plane, straight);
    double relative = Math.hypot(plane.relativeUncertainty(), view.relativeScale());
    double flatness = (plane.flat() ? 0.04 : 0.15) * CELLS_PER_MM * unitsPerCell;
    StripEvidence evidence =
        StripMeasurer.strip(
            scaled,
            new StripEvidence.SharedUncertainties(
                scaled ? relative : 0, view.straightening(), flatness),
            measured);
    PixelScale scale =
        new PixelScale(
            plane.source(),
            scaled
                ? OptionalDouble.of(millimetresPerPixel(straight.frame))
                : OptionalDouble.empty(),
            scaled ? OptionalDouble.of(relative) : OptionalDouble.empty());
    return new StripReading(
        evidence,
        measured.pictures(),
        placed(chosen, straight, unitsPerCell, lanes),
        scale,
        new StripReading.Straightened(
            straight.strip.toPhoto(), fromPhoto(straight.frame), CELLS_PER_MM),
        doubts(request, chosen, lanes));
  }

  private static List<Double> fromPhoto(StripFrame frame) {
    List<PhotoPoint> photo = new ArrayList<>();
    List<double[]> cells = new ArrayList<>();
    for (int i = 0; i <= 4; i++) {
      for (int j = 0; j <= 4; j++) {
        double x = frame.width() * i / 4.0;
        double y = frame.height() * j / 4.0;
        photo.add(frame.toPhoto(x, y));
        cells.add(new double[] {x, y});
      }
    }
    return PhotoToStrip.fit(photo, cells);
  }

  private static List<String> names(ReadingRequest request, int lanes) {
    List<String> names = new ArrayList<>();
    for (int k = 0; k < lanes; k++) {
      names.add(
          k < request.laneNames().size() ? request.laneNames().get(k) : Integer.toString(k + 1));
    }
    return names;
  }

  private static ViewUncertainty viewUncertainty(PlaneScale plane, Straight s) {
    double x = s.frame.width() / 2.0;
    double low = s.baseline.at(x);
    double high = s.front.at(x);
    return ViewPropagation.of(
        plane,
        s.frame.toPhoto(x, low),
        s.frame.toPhoto(x, (low + high) / 2),
        s.frame.toPhoto(x, high));
  }

  private static double millimetresPerPixel(StripFrame frame) {
    double x = frame.width() / 2.0;
    double y = frame.height() / 2.0;
    double d = 4;
    PhotoPoint left = frame.toPhoto(x - d, y);
    PhotoPoint right = frame.toPhoto(x + d, y);
    PhotoPoint up = frame.toPhoto(x, y - d);
    PhotoPoint down = frame.toPhoto(x, y + d);
    double across = 2 * d / CELLS_PER_MM / Math.hypot(right.x() - left.x(), right.y() - left.y());
    double along = 2 * d / CELLS_PER_MM / Math.hypot(up.x() - down.x(), up.y() - down.y());
    return (across + along) / 2;
  }

  private static StripReading.Placed placed(
      StripChoice.Candidate chosen, Straight s, double unitsPerCell, List<LaneTrack> lanes) {
    List<PhotoPoint> frontPath = new ArrayList<>();
    List<PhotoPoint> photo = new ArrayList<>();
    List<double[]> strip = new ArrayList<>();
    double w = s.frame.width();
    double slope = s.baseline.slope();
    double norm = Math.sqrt(1 + slope * slope);
    double y0 = s.baseline.at(0);
    for (int i = 0; i <= 12; i++) {
      double x = w * i / 12;
      frontPath.add(s.frame.toPhoto(x, s.front.at(x)));
      for (int j = 0; j <= 4; j++) {
        double y = s.frame.height() * j / 4.0;
        photo.add(s.frame.toPhoto(x, y));
        strip.add(
            new double[] {
              (x + slope * (y - y0)) / norm * unitsPerCell,
              (slope * x - (y - y0)) / norm * unitsPerCell
            });
      }
    }
    double laneSupport = lanes.stream().mapToDouble(LaneTrack::support).average().orElse(0);
    return new StripReading.Placed(
        chosen.corners(),
        PhotoToStrip.fit(photo, strip),
        List.of(s.frame.toPhoto(0, s.baseline.at(0)), s.frame.toPhoto(w, s.baseline.at(w))),
        frontPath,
        s.front.kind(),
        new StripReading.Confidence(
            share(chosen.lead(), 0.5),
            share(chosen.layout().lead(), 0.4),
            s.baseline.certainty(),
            s.front.certainty() * share(chosen.layout().frontLead(), 0.25),
            laneSupport));
  }

  /** A lead over the next hypothesis as a number from 0 to 1. */
  private static double share(double lead, double half) {
    return lead <= 0 ? 0 : Double.isInfinite(lead) ? 1 : lead / (lead + half);
  }

  private static List<Doubt> doubts(
      ReadingRequest request, StripChoice.Candidate chosen, List<LaneTrack> lanes) {
    List<Doubt> doubts = new ArrayList<>(chosen.plane().doubts());
    if (chosen.plane().source() == PixelScale.Source.NONE) {
      doubts.add(
          new Doubt(
              "no-scale",
              "No ruler was found in the picture and it is no scan with a resolution: Rf is given,"
                  + " millimetres are not. Lay a ruler beside the strip, or say --strip-height or"
                  + " --span."));
    }
    request
        .lanes()
        .ifPresent(
            said -> {
              if (said != lanes.size()) {
                doubts.add(
                    new Doubt(
                        "lanes-differ",
                        String.format(
                            Locale.ROOT,
                            "%d lanes were said, %d were found. Check them in the report.",
                            said,
                            lanes.size())));
              }
            });
    return Collections.unmodifiableList(doubts);
  }
}
