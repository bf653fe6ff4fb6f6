package wickmark.imaging;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import wickmark.core.chromatogram.StripEvidence;
import wickmark.imaging.finding.Doubt;
import wickmark.imaging.lane.LaneTrack;
import wickmark.imaging.line.FittedLine;
import wickmark.imaging.measure.StripMeasurer;
import wickmark.imaging.measure.ViewUncertainty;
import wickmark.imaging.photo.PhotoPoint;
import wickmark.imaging.pose.PhotoToStrip;
import wickmark.imaging.scale.PixelScale;
import wickmark.imaging.spot.LaneDensity;
import wickmark.imaging.spot.SpotRegion;
import wickmark.imaging.straight.StraightStrip;
import wickmark.imaging.straight.StripFrame;

/** Puts together what was found on one strip, in the strip's units and in the photo's pixels. */
final class ReadingAssembly {
  /** How sure it is how much larger a sheet with a raised rim looks, as a part of that. */
  private static final double RAISED_DOUBT = 0.3;

  /** How high a sheet that is held may lie over the ruler (standard deviation), mm. */
  private static final double HELD_MM = 4;

  private final StripChoice.Candidate chosen;
  private final Straight straight;
  private final Lanes lanes;
  private final double cellsPerMm;

  /**
   * The strip upright, with its two lines.
   *
   * @param held whether something holds it at an end
   */
  record Straight(
      StripFrame frame, StraightStrip strip, FittedLine baseline, FittedLine front, boolean held) {}

  /** The lanes from the left, each with its name and its spots. */
  record Lanes(
      List<LaneTrack> tracks,
      List<String> names,
      List<List<SpotRegion>> spots,
      List<LaneDensity> densities) {}

  ReadingAssembly(StripChoice.Candidate chosen, Straight straight, Lanes lanes, double cellsPerMm) {
    this.chosen = chosen;
    this.straight = straight;
    this.lanes = lanes;
    this.cellsPerMm = cellsPerMm;
  }

  /**
   * Makes the reading.
   *
   * @param unknowns names of the lanes to explain
   * @param light what the card tells
   */
  StripReading reading(
      Set<String> unknowns,
      StripReading.Said said,
      StripReading.Confidence confidence,
      Optional<CardLight> light,
      List<Doubt> doubts) {
    PlaneScale plane = chosen.plane();
    boolean scaled = plane.millimetresPerUnit().isPresent();
    double unitsPerCell = scaled ? 1 / cellsPerMm : 1.0 / straight.frame.height();
    StripMeasurer measurer =
        new StripMeasurer(
            straight.baseline,
            straight.front,
            unitsPerCell,
            cellsPerMm,
            (x, y) -> straight.frame.toPhoto(x, y));
    StripMeasurer.Measured measured =
        measurer.measure(lanes.tracks, lanes.spots, lanes.names, unknowns);
    OptionalDouble relative = relativeScale();
    double flatness = (plane.flat() ? 0.04 : 0.15) * cellsPerMm * unitsPerCell;
    StripEvidence evidence =
        StripMeasurer.strip(
            scaled,
            new StripEvidence.SharedUncertainties(
                relative.orElse(0), viewUncertainty().straightening(), flatness),
            measured);
    PixelScale scale =
        new PixelScale(
            plane.source(),
            scaled ? OptionalDouble.of(millimetresPerPixel()) : OptionalDouble.empty(),
            relative);
    return new StripReading(
        evidence,
        measured.pictures(),
        placed(unitsPerCell, said, confidence),
        scale,
        light,
        new StripReading.Straightened(
            straight.strip.toPhoto(),
            fromPhoto(straight.frame),
            cellsPerMm,
            LayoutAssembly.of(straight, lanes, unitsPerCell, cellsPerMm)),
        doubts);
  }

  /** Standard uncertainty of the scale over the scale; empty without a scale. */
  OptionalDouble relativeScale() {
    PlaneScale plane = chosen.plane();
    if (plane.millimetresPerUnit().isEmpty()) {
      return OptionalDouble.empty();
    }
    double view = viewUncertainty().relativeScale();
    double byPlane = Math.hypot(plane.relativeUncertainty(), view);
    return OptionalDouble.of(
        plane.isOfDesk() ? Math.hypot(byPlane, Math.hypot(bent(), held())) : byPlane);
  }

  /** Standard uncertainty of lengths by how the sheet stands off the desk, relative. */
  private double bent() {
    double raised = RAISED_DOUBT * (straight.frame.raisedMagnification() - 1);
    return Math.hypot(raised, straight.frame.bendDoubt());
  }

  /** The same by how high a sheet may be held; the plane's unit is its distance from the camera. */
  private double held() {
    return straight.held ? HELD_MM / chosen.plane().millimetresPerUnit().orElseThrow() : 0;
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

  private ViewUncertainty viewUncertainty() {
    Straight s = straight;
    double x = s.frame.width() / 2.0;
    double low = s.baseline.at(x);
    double high = s.front.at(x);
    return ViewPropagation.of(
        chosen.plane(),
        s.frame.toPhoto(x, low),
        s.frame.toPhoto(x, (low + high) / 2),
        s.frame.toPhoto(x, high));
  }

  private double millimetresPerPixel() {
    StripFrame frame = straight.frame;
    double x = frame.width() / 2.0;
    double y = frame.height() / 2.0;
    double d = 4;
    PhotoPoint left = frame.toPhoto(x - d, y);
    PhotoPoint right = frame.toPhoto(x + d, y);
    PhotoPoint up = frame.toPhoto(x, y - d);
    PhotoPoint down = frame.toPhoto(x, y + d);
    double across = 2 * d / cellsPerMm / Math.hypot(right.x() - left.x(), right.y() - left.y());
    double along = 2 * d / cellsPerMm / Math.hypot(up.x() - down.x(), up.y() - down.y());
    return (across + along) / 2;
  }

  private StripReading.Placed placed(
      double unitsPerCell, StripReading.Said said, StripReading.Confidence confidence) {
    Straight s = straight;
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
    return new StripReading.Placed(
        chosen.corners(),
        PhotoToStrip.fit(photo, strip),
        List.of(s.frame.toPhoto(0, s.baseline.at(0)), s.frame.toPhoto(w, s.baseline.at(w))),
        frontPath,
        s.front.kind(),
        said,
        confidence);
  }
}
