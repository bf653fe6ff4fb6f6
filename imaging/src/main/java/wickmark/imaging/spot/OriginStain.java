package wickmark.imaging.spot;

import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import wickmark.core.chromatogram.SpotFlag;
import wickmark.core.colour.LabColour;
import wickmark.core.colour.LinearRgb;
import wickmark.imaging.lane.LaneTrack;
import wickmark.imaging.line.FittedLine;
import wickmark.imaging.paper.DensityMap;
import wickmark.imaging.raster.Raster;
import wickmark.imaging.raster.Smoothing;

/**
 * Finds dye that has not left the place it was put on. Baseline, mark and name stand there, too,
 * but pencil is grey: what counts is how far the channels differ.
 */
final class OriginStain {
  /** What is looked at around an origin to each side, mm: most of it is never stained. */
  private static final double AROUND_MM = 7;

  /** How far from the origin the stain's densest place may be, mm. */
  private static final double DENSEST_MM = 2;

  private static final double SMOOTHING_MM = 0.4;

  /** Difference of the channels that is surely dye: the faintest spots that count have 0.06. */
  private static final double LEAST_PEAK = 0.06;

  /** The stain's rim, as a part of its peak and as a difference that can just be seen. */
  private static final double RIM = 0.05;

  private static final double LEAST_RIM = 0.02;

  /** A sample is put on as a dot of 2 to 3 mm (common practice). */
  private static final double LEAST_SIZE_MM = 1.8;

  /** How well the middle of what is partly covered by pencil is known, as a part of its height. */
  private static final double COVERED = 0.06;

  private final DensityMap map;
  private final Raster[] density;
  private final FittedLine baseline;
  private final double mm;
  private final int half;

  /**
   * Stains on one map.
   *
   * @param density the map's densities with the lines taken out, for the stain's colour
   */
  OriginStain(DensityMap map, Raster[] density, FittedLine baseline) {
    this.map = map;
    this.density = density;
    this.baseline = baseline;
    this.mm = map.cellsPerMm();
    this.half = (int) Math.ceil(AROUND_MM * mm);
  }

  /** The stain on a lane's origin; none where all of the dye has left. */
  Optional<SpotRegion> of(LaneTrack lane) {
    int left = (int) Math.round(lane.originX()) - half;
    int top = (int) Math.round(baseline.at(lane.originX())) - half;
    Raster chroma = chroma(left, top);
    int size = chroma.width();
    int densest = densest(chroma);
    double peak = chroma.cells()[densest];
    if (peak < LEAST_PEAK) {
      return Optional.empty();
    }
    boolean[] in = VisibleExtent.around(chroma, densest, Math.max(LEAST_RIM, RIM * peak));
    SpotRegion.Box box = VisibleExtent.box(in, size, 0, 0);
    double least = LEAST_SIZE_MM * mm;
    // What reaches the window's rim is a tail, a neighbour, or the ink of the line.
    boolean inside = box.left() > 0 && box.top() > 0 && box.right() < size && box.bottom() < size;
    boolean large = box.right() - box.left() >= least && box.bottom() - box.top() >= least;
    boolean across = box.top() < half && box.bottom() > half;
    return inside && large && across && isDensest(chroma, in, densest)
        ? Optional.of(region(chroma, in, densest, box, left, top))
        : Optional.empty();
  }

  /** Whether a spot is the upper rim of a stain that stayed. */
  static boolean holds(SpotRegion stain, SpotRegion spot) {
    return spot.centroid().y() > stain.box().top()
        && spot.centroid().x() > stain.box().left()
        && spot.centroid().x() < stain.box().right();
  }

  private Raster chroma(int left, int top) {
    int size = 2 * half + 1;
    Raster[] channels = new Raster[3];
    for (int c = 0; c < 3; c++) {
      channels[c] = Smoothing.gaussian(cut(map.density()[c], left, top, size), SMOOTHING_MM * mm);
    }
    Raster chroma = DensityMap.chroma(channels);
    // Smoothing has carried some beyond the sheet.
    for (int i = 0; i < size * size; i++) {
      int x = left + i % size;
      int y = top + i / size;
      boolean on = x >= 0 && y >= 0 && x < map.width() && y < map.height();
      chroma.cells()[i] = on ? chroma.cells()[i] : 0;
    }
    return chroma;
  }

  private static Raster cut(Raster of, int left, int top, int size) {
    Raster out = new Raster(size, size);
    for (int y = Math.max(0, -top); y < Math.min(size, of.height() - top); y++) {
      for (int x = Math.max(0, -left); x < Math.min(size, of.width() - left); x++) {
        out.set(x, y, of.at(left + x, top + y));
      }
    }
    return out;
  }

  /** The densest cell about the origin. */
  private int densest(Raster chroma) {
    int reach = (int) (DENSEST_MM * mm);
    int best = half * chroma.width() + half;
    for (int y = half - reach; y <= half + reach; y++) {
      for (int x = half - reach; x <= half + reach; x++) {
        int i = y * chroma.width() + x;
        best = chroma.cells()[i] > chroma.cells()[best] ? i : best;
      }
    }
    return best;
  }

  /** Whether no other place of the stain is denser: a spot just above may reach down to here. */
  private static boolean isDensest(Raster chroma, boolean[] in, int densest) {
    for (int i = 0; i < in.length; i++) {
      if (in[i] && chroma.cells()[i] > chroma.cells()[densest]) {
        return false;
      }
    }
    return true;
  }

  private SpotRegion region(
      Raster chroma, boolean[] in, int densest, SpotRegion.Box box, int left, int top) {
    int size = chroma.width();
    double sum = 0;
    double mx = 0;
    double my = 0;
    int area = 0;
    double[] own = new double[3];
    int core = 0;
    for (int i = 0; i < in.length; i++) {
      if (!in[i]) {
        continue;
      }
      double d = chroma.cells()[i];
      int x = i % size;
      int y = i / size;
      area++;
      sum += d;
      mx += d * (x + 0.5);
      my += d * (y + 0.5);
      if (d > chroma.cells()[densest] / 2) {
        core++;
        for (int c = 0; c < 3; c++) {
          own[c] += density[c].at(left + x, top + y);
        }
      }
    }
    // The bridge that was laid under the line has taken of the dye, too.
    double peak = chroma.cells()[densest];
    double[] light = new double[3];
    for (int c = 0; c < 3; c++) {
      double mean = Math.max(0, own[c] / core);
      light[c] = StrictMath.pow(10, -mean);
      peak = Math.max(peak, density[c].at(left + densest % size, top + densest / size));
    }
    Set<SpotFlag> flags = EnumSet.of(SpotFlag.AT_ORIGIN);
    if (peak < SpotMeasurer.FAINT) {
      flags.add(SpotFlag.FAINT);
    }
    return new SpotRegion(
        new SpotRegion.Centroid(
            left + mx / sum, top + my / sum, COVERED * (box.bottom() - box.top())),
        new double[] {left + densest % size + 0.5, top + densest / size + 0.5},
        new SpotRegion.Box(
            left + box.left(), left + box.right(), top + box.top(), top + box.bottom()),
        area,
        peak,
        LabColour.of(new LinearRgb(light[0], light[1], light[2])),
        flags,
        Math.min(0.99, chroma.cells()[densest] / (chroma.cells()[densest] + LEAST_RIM)),
        VisibleExtent.outline(in, size, size, left, top));
  }
}
