package wickmark.imaging.measure;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.BiFunction;
import wickmark.core.chromatogram.LaneEvidence;
import wickmark.core.chromatogram.LaneRole;
import wickmark.core.chromatogram.Place;
import wickmark.core.chromatogram.SpotEvidence;
import wickmark.core.chromatogram.SpotFlag;
import wickmark.core.chromatogram.StripEvidence;
import wickmark.core.record.LanePicture;
import wickmark.imaging.lane.LaneTrack;
import wickmark.imaging.line.FittedLine;
import wickmark.imaging.line.LineKind;
import wickmark.imaging.photo.PhotoPoint;
import wickmark.imaging.spot.SpotRegion;

/** Turns places on the straight strip into places along the lanes. */
public final class StripMeasurer {
  /**
   * The middle of a pencil line is where the person meant it, within this, mm (common practice).
   */
  private static final double PENCIL_MM = 0.06;

  /** A tide mark is the wet edge within this, mm: it is about half a millimetre wide. */
  private static final double TIDE_MM = 0.20;

  private final FittedLine baseline;
  private final FittedLine front;
  private final double unitsPerCell;
  private final double mm;
  private final BiFunction<Double, Double, PhotoPoint> toPhoto;

  /**
   * Takes the lines.
   *
   * @param unitsPerCell the strip's unit of length (mm, or strip heights) per cell
   * @param cellsPerMm cells per true or nominal millimetre
   * @param toPhoto from cells to the photo
   */
  public StripMeasurer(
      FittedLine baseline,
      FittedLine front,
      double unitsPerCell,
      double cellsPerMm,
      BiFunction<Double, Double, PhotoPoint> toPhoto) {
    this.baseline = baseline;
    this.front = front;
    this.unitsPerCell = unitsPerCell;
    this.mm = cellsPerMm;
    this.toPhoto = toPhoto;
  }

  /** Lanes' evidence and where they lie in the photo. */
  public record Measured(List<LaneEvidence> lanes, List<LanePicture> pictures) {
    public Measured {
      lanes = List.copyOf(lanes);
      pictures = List.copyOf(pictures);
    }
  }

  /** Measures all lanes. */
  public Measured measure(
      List<LaneTrack> tracks,
      List<List<SpotRegion>> spots,
      List<String> names,
      Set<String> unknowns) {
    List<LaneEvidence> lanes = new ArrayList<>();
    List<LanePicture> pictures = new ArrayList<>();
    for (int k = 0; k < tracks.size(); k++) {
      LaneTrack track = tracks.get(k);
      LaneGeometry way = new LaneGeometry(baseline, track.originX());
      List<SpotEvidence> evidence = new ArrayList<>();
      List<LanePicture.SpotPicture> drawn = new ArrayList<>();
      for (SpotRegion spot : spots.get(k)) {
        evidence.add(evidence(spot, way));
        drawn.add(picture(spot));
      }
      double run = way.frontDistance(front);
      double baselineU = Math.hypot(baseline.uncertaintyAt(track.originX()), definition(baseline));
      double frontU = Math.hypot(front.uncertaintyAt(track.originX()), definition(front));
      LaneRole role = unknowns.contains(names.get(k)) ? LaneRole.UNKNOWN : LaneRole.REFERENCE;
      lanes.add(
          new LaneEvidence(
              names.get(k),
              role,
              new Place(0, baselineU * unitsPerCell),
              new Place(run * unitsPerCell, frontU * unitsPerCell),
              evidence));
      pictures.add(
          new LanePicture(pixel(track.originX(), way.originY()), track.confidence(), drawn));
    }
    return new Measured(lanes, pictures);
  }

  /** How well a line that a person set, or drew, is where it was meant, cells. */
  public static double handDefinition(double cellsPerMm) {
    return PENCIL_MM * cellsPerMm;
  }

  private double definition(FittedLine line) {
    return (line.kind() == LineKind.TIDE_MARK || line.kind() == LineKind.INK ? TIDE_MM : PENCIL_MM)
        * mm;
  }

  private SpotEvidence evidence(SpotRegion spot, LaneGeometry way) {
    double x = spot.centroid().x();
    double centroid = way.along(x, spot.centroid().y()) * unitsPerCell;
    double top = way.along(x, spot.box().top()) * unitsPerCell;
    double bottom = way.along(x, spot.box().bottom()) * unitsPerCell;
    double densest = way.along(spot.densest()[0], spot.densest()[1]) * unitsPerCell;
    double u = spot.centroid().uncertainty() * unitsPerCell;
    // A rim is seen within a part of the spot's fade-out: a twelfth of its length each.
    double rim = (top - bottom) / 12;
    Place place = new Place(centroid, u);
    boolean byHand = spot.flags().contains(SpotFlag.BY_HAND);
    return new SpotEvidence(
        place,
        byHand ? place : new Place((top + bottom) / 2, Math.hypot(u, rim / Math.sqrt(2))),
        byHand ? place : new Place(densest, Math.hypot(u, (top - bottom) / 10)),
        new SpotEvidence.Extent(
            top,
            bottom,
            (spot.box().right() - spot.box().left()) * unitsPerCell,
            spot.area() * unitsPerCell * unitsPerCell),
        new SpotEvidence.Look(spot.peakAbsorbance(), spot.colour()),
        spot.flags(),
        spot.confidence());
  }

  private LanePicture.SpotPicture picture(SpotRegion spot) {
    List<List<Double>> outline = new ArrayList<>();
    for (double[] p : spot.outline()) {
      outline.add(pixel(p[0], p[1]));
    }
    return new LanePicture.SpotPicture(pixel(spot.centroid().x(), spot.centroid().y()), outline);
  }

  private List<Double> pixel(double x, double y) {
    PhotoPoint p = toPhoto.apply(x, y);
    return List.of(p.x(), p.y());
  }

  /** The evidence of the whole strip. */
  public static StripEvidence strip(
      boolean millimetres, StripEvidence.SharedUncertainties shared, Measured measured) {
    return new StripEvidence(millimetres, shared, measured.lanes());
  }
}
