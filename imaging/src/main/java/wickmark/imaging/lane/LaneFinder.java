package wickmark.imaging.lane;

import java.util.ArrayList;
import java.util.List;
import wickmark.imaging.line.FittedLine;
import wickmark.imaging.paper.DensityMap;
import wickmark.imaging.raster.Raster;
import wickmark.imaging.raster.Smoothing;

/**
 * Finds the lanes from all that tells of them: writing below the baseline, marks and left-over dye
 * on it, stain above it. Each half millimetre across the strip has some of this evidence, and
 * {@link LaneGrouping} parts the strip by it.
 */
public final class LaneFinder {
  private final DensityMap map;
  private final FittedLine baseline;
  private final double step;
  private final int columns;
  private final double[] writing;
  private final double[] marks;
  private final double[] density;

  private LaneFinder(
      DensityMap map, FittedLine baseline, FittedLine front, DyeMap dye, OriginZone zone) {
    this.map = map;
    this.baseline = baseline;
    this.step = LaneEvidence.STEP_MM * map.cellsPerMm();
    this.columns = Math.max(1, (int) (map.width() / step));
    Raster ink = ink();
    this.writing = inkBetween(ink, 1.4, 11.5, 1, 0.35);
    // Where the line itself ran nothing on it tells of a lane.
    this.marks = zone.ran() ? new double[columns] : inkBetween(ink, 0.7, 2.4, -1, 0.6);
    this.density = stainAbove(front, dye, zone.ran() ? zone.heightMm() : 2);
  }

  /**
   * Finds the lanes, from left to right.
   *
   * @param said what the person says of them
   */
  public static List<LaneTrack> find(
      DensityMap map,
      FittedLine baseline,
      FittedLine front,
      DyeMap dye,
      OriginZone zone,
      SaidLanes said) {
    return new LaneFinder(map, baseline, front, dye, zone).lanes(said);
  }

  private Raster ink() {
    Raster smooth = Smoothing.gaussian(map.neutral(), 0.12 * map.cellsPerMm());
    Raster out = new Raster(map.width(), map.height());
    double limit = Math.max(0.035, 5 * Math.min(map.noise()[0], map.noise()[1]));
    for (int i = 0; i < out.cells().length; i++) {
      out.cells()[i] = smooth.cells()[i] > limit && map.paper().cells()[i] > 0 ? 1 : 0;
    }
    return out;
  }

  /** For each step across: 1 where at least so many millimetres of ink stand in the band. */
  private double[] inkBetween(
      Raster ink, double fromMm, double toMm, int direction, double enoughMm) {
    double mm = map.cellsPerMm();
    double[] out = new double[columns];
    for (int c = 0; c < columns; c++) {
      int x = (int) Math.min(map.width() - 1.0, (c + 0.5) * step);
      double at = baseline.at(x + 0.5);
      double amount = 0;
      for (double d = fromMm * mm; d <= toMm * mm; d++) {
        int y = (int) Math.floor(at + direction * d);
        if (y >= 0 && y < map.height()) {
          amount += ink.at(x, y) / mm;
        }
      }
      out[c] = Math.min(1, amount / enoughMm);
    }
    return out;
  }

  /** For each step across: the greatest density of dye. */
  private double[] stainAbove(FittedLine front, DyeMap dye, double fromMm) {
    double mm = map.cellsPerMm();
    double[] out = new double[columns];
    for (int c = 0; c < columns; c++) {
      int x = (int) Math.min(map.width() - 1.0, (c + 0.5) * step);
      int from = (int) Math.max(0, front.at(x + 0.5) - 2 * mm);
      int to = (int) Math.min(map.height(), baseline.at(x + 0.5) - fromMm * mm);
      double most = 0;
      for (int y = from; y < to; y++) {
        most = Math.max(most, dye.mask().at(x, y) * dye.strength().at(x, y));
      }
      out[c] = most;
    }
    return out;
  }

  private List<LaneTrack> lanes(SaidLanes said) {
    double mm = map.cellsPerMm();
    LaneEvidence evidence = new LaneEvidence(writing, marks, density);
    LaneGrouping.Grouping grouping =
        LaneGrouping.of(evidence, said.count(), SaidOrigins.of(said, mm));
    List<LaneTrack> lanes = new ArrayList<>();
    for (int k = 0; k < grouping.spans().size(); k++) {
      LaneSpan span = grouping.spans().get(k);
      Double origin = said.origins().get(k);
      lanes.add(
          origin == null
              ? LaneTrack.found(
                  evidence.originMm(span) * mm, evidence.support(span), grouping.lead())
              : LaneTrack.said(origin));
    }
    return LaneTrack.bounded(lanes, map.width());
  }
}
