package wickmark.imaging.spot;

import java.util.EnumSet;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import wickmark.core.chromatogram.SpotFlag;
import wickmark.core.colour.LabColour;
import wickmark.core.colour.LinearRgb;
import wickmark.imaging.lane.OriginZone;
import wickmark.imaging.line.FittedLine;
import wickmark.imaging.paper.DensityMap;
import wickmark.imaging.raster.Raster;
import wickmark.imaging.raster.Smoothing;

/** Measures one spot of a lane by its {@linkplain PeakShares share} of each cell's density. */
final class SpotMeasurer {
  /** Density at which paper looks stained: about 2 CIELAB units, just seen (Mahy 1994: 2.3). */
  static final double VISIBLE = 0.016;

  /** Peak absorbance below which a spot is called faint. */
  static final double FAINT = 0.07;

  /** Part of the peak's density down to which the dye counts for the centre of mass. */
  private static final double WHOLE = 0.015;

  /** A spot that is seen down to so little above the origin's zone goes on within it, mm. */
  private static final double CUT_MM = 0.3;

  /** How far a front's own width and blur carry dye beyond it, mm. */
  private static final double FRONT_BLUR_MM = 0.6;

  /** Least peak density of a spot that is reported. */
  private static final double LEAST_PEAK = 0.04;

  /** A sample is put on as a dot of 2 to 3 mm and spreads on its way (common practice). */
  private static final double LEAST_SIZE_MM = 1.8;

  /** The least size of a grey spot, mm: smaller grey figures are pencil, rings and strokes. */
  private static final double LEAST_GREY_MM = 3.2;

  /** Channels that differ by less than this part of the density are grey. */
  private static final double GREY = 0.2;

  /**
   * Chroma over darkness (CIELAB) below which a stain is no dye's; coloured ones have 0.5 and more.
   */
  private static final double GREYISH = 0.35;

  private final DensityMap map;
  private final FittedLine front;
  private final double noise;
  private final double originMm;
  private final PeakFit fit;
  private final PeakShares shares;
  private final double mm;
  private final int left;
  private final int top;
  private final int width;
  private final int height;

  SpotMeasurer(
      DensityMap map,
      FittedLine baseline,
      FittedLine front,
      double noise,
      Raster[] density,
      OriginZone zone,
      int[] cells,
      PeakFit fit) {
    this.map = map;
    this.front = front;
    this.noise = noise;
    this.originMm = zone.heightMm();
    this.fit = fit;
    this.mm = map.cellsPerMm();
    this.shares = new PeakShares(map, baseline, density, originMm, cells, fit);
    this.left = shares.left();
    this.top = shares.top();
    this.width = shares.width();
    this.height = shares.height();
  }

  /** Returns the spot of some peaks; null where its stain is too faint or too thin to be one. */
  @Nullable SpotRegion measure(SpotPeaks peaks) {
    Raster[] own = shares.own(peaks);
    Raster[] smooth = new Raster[3];
    for (int c = 0; c < 3; c++) {
      smooth[c] = Smoothing.gaussian(own[c], 0.4 * mm);
    }
    Raster norm = new Raster(width, height);
    int densest = -1;
    for (int i = 0; i < norm.cells().length; i++) {
      double sum = 0;
      for (int c = 0; c < 3; c++) {
        double d = Math.max(0, smooth[c].cells()[i]);
        sum += d * d;
      }
      norm.cells()[i] = (float) Math.sqrt(sum / 3);
      if (isNearCentre(peaks.highest(), i)
          && (densest < 0 || norm.cells()[i] > norm.cells()[densest])) {
        densest = i;
      }
    }
    if (densest < 0) {
      return null;
    }
    double peakNorm = norm.cells()[densest];
    double peakAbsorbance = 0;
    for (int c = 0; c < 3; c++) {
      peakAbsorbance = Math.max(peakAbsorbance, smooth[c].cells()[densest]);
    }
    double unsure = map.unsure(left + densest % width, top + densest / width);
    if (peakAbsorbance - unsure < Math.max(LEAST_PEAK, 5 * noise)) {
      return null;
    }
    boolean[] visible = VisibleExtent.around(norm, densest, Math.max(VISIBLE, 0.05 * peakNorm));
    SpotRegion.Box box = VisibleExtent.box(visible, width, left, top);
    double size = Math.min(box.right() - box.left(), box.bottom() - box.top()) / mm;
    if (size < (isGrey(smooth, densest) ? LEAST_GREY_MM : LEAST_SIZE_MM)
        || Strokes.are(own, visible, mm)) {
      return null;
    }
    boolean[] whole = whole(peaks, norm, densest, box, peakNorm);
    if (!hasDye(own, whole)) {
      return null;
    }
    SpotRegion spot = region(peaks, own, norm, visible, whole, densest, box, peakAbsorbance);
    // What is grey and touches the front is pencil, a fold or a thing's shadow, not a dye that ran
    // with it.
    return isAtFront(box) && isGreyish(spot.colour()) ? null : spot;
  }

  private static boolean isGreyish(LabColour colour) {
    return Math.hypot(colour.a(), colour.b()) < GREYISH * (100 - colour.lightness());
  }

  private static boolean isGrey(Raster[] smooth, int cell) {
    double most = 0;
    double least = Double.POSITIVE_INFINITY;
    for (Raster channel : smooth) {
      most = Math.max(most, channel.cells()[cell]);
      least = Math.min(least, channel.cells()[cell]);
    }
    return most - least < GREY * most;
  }

  /** Writing near the front, or the rim of a neighbour, is not the middle of this spot. */
  private boolean isNearCentre(int peak, int cell) {
    PeakShape shape = fit.shapes().get(peak);
    double d = shares.along(left + cell % width, top + cell / width) - shape.centre();
    return Math.abs(d) < Math.max(1, 1.3 * (d > 0 ? shape.ahead() : shape.behind()));
  }

  /**
   * What counts for the centre of mass: down to where the dye fades away, but not over the front,
   * where writing stands, and not far from what is seen. Of a spot whose foot is hidden at the
   * origin as much is left out at its head.
   */
  private boolean[] whole(
      SpotPeaks peaks, Raster norm, int densest, SpotRegion.Box box, double peakNorm) {
    boolean[] whole = VisibleExtent.around(norm, densest, Math.max(2.5 * noise, WHOLE * peakNorm));
    double margin = 0.3 * (box.bottom() - box.top());
    double head = headMm(peaks, box);
    for (int i = 0; i < whole.length; i++) {
      double y = top + i / width + 0.5;
      double x = left + i % width + 0.5;
      boolean near = y > box.top() - margin && y < box.bottom() + margin;
      whole[i] &= near && y > Math.min(box.top(), front.at(x) - FRONT_BLUR_MM * mm);
      whole[i] &= y > front.at(x) - SpotFinder.BEYOND_MM * mm;
      whole[i] &= shares.along(left + i % width, top + i / width) < head;
    }
    return whole;
  }

  /** Distance from the baseline up to which a spot counts, mm; without end where it is whole. */
  private double headMm(SpotPeaks peaks, SpotRegion.Box box) {
    int middle = (int) ((box.left() + box.right()) / 2);
    boolean cut = shares.along(middle, (int) box.bottom() - 1) < originMm + CUT_MM;
    return cut
        ? 2 * fit.shapes().get(peaks.highest()).centre() - originMm
        : Double.POSITIVE_INFINITY;
  }

  /** What lies beyond the front altogether has no centre of mass before it. */
  private static boolean hasDye(Raster[] own, boolean[] whole) {
    for (int i = 0; i < whole.length; i++) {
      if (whole[i] && own[0].cells()[i] + own[1].cells()[i] + own[2].cells()[i] > 0) {
        return true;
      }
    }
    return false;
  }

  private SpotRegion region(
      SpotPeaks peaks,
      Raster[] own,
      Raster norm,
      boolean[] visible,
      boolean[] whole,
      int densest,
      SpotRegion.Box box,
      double peakAbsorbance) {
    double sum = 0;
    double mx = 0;
    double my = 0;
    int area = 0;
    for (int i = 0; i < visible.length; i++) {
      area += visible[i] ? 1 : 0;
      if (whole[i]) {
        double d = Math.max(0, own[0].cells()[i] + own[1].cells()[i] + own[2].cells()[i]);
        sum += d;
        mx += d * (left + i % width + 0.5);
        my += d * (top + i / width + 0.5);
      }
    }
    double cx = mx / sum;
    double cy = my / sum;
    double second = 0;
    for (int i = 0; i < visible.length; i++) {
      if (whole[i]) {
        double dy = top + i / width + 0.5 - cy;
        second += dy * dy;
      }
    }
    double cell = (map.noise()[0] + map.noise()[1] + map.noise()[2]) * 2.5;
    double fromNoise = cell * Math.sqrt(second) / sum;
    // The paper's texture and the shared-out overlap move a centre by some part of its size.
    double fromShape =
        0.011 * (box.bottom() - box.top())
            + shares.overlap(peaks) * 0.05 * (box.bottom() - box.top());
    double u = Math.sqrt(fromNoise * fromNoise + fromShape * fromShape);
    double dx = left + densest % width + 0.5;
    double dy = top + densest / width + 0.5;
    return new SpotRegion(
        new SpotRegion.Centroid(cx, cy, u),
        new double[] {dx, dy},
        box,
        area,
        peakAbsorbance,
        colour(own, norm, norm.cells()[densest]),
        flags(peaks, box, cy, peakAbsorbance),
        confidence(peakAbsorbance, area),
        VisibleExtent.outline(visible, width, height, left, top));
  }

  private LabColour colour(Raster[] own, Raster norm, double most) {
    double[] sum = new double[3];
    double weight = 0;
    for (int i = 0; i < norm.cells().length; i++) {
      if (norm.cells()[i] > 0.5 * most) {
        weight++;
        for (int c = 0; c < 3; c++) {
          sum[c] += own[c].cells()[i];
        }
      }
    }
    double[] light = new double[3];
    for (int c = 0; c < 3; c++) {
      light[c] = StrictMath.pow(10, -Math.max(0, sum[c] / weight));
    }
    return LabColour.of(new LinearRgb(light[0], light[1], light[2]));
  }

  private Set<SpotFlag> flags(
      SpotPeaks peaks, SpotRegion.Box box, double cy, double peakAbsorbance) {
    Set<SpotFlag> flags = EnumSet.noneOf(SpotFlag.class);
    double middle = (box.top() + box.bottom()) / 2;
    PeakShape shape = fit.shapes().get(peaks.highest());
    if (middle - cy > 0.06 * (box.bottom() - box.top()) || shape.behind() > 1.6 * shape.ahead()) {
      flags.add(SpotFlag.TAILING);
    }
    if (shares.overlap(peaks) > 0.06) {
      flags.add(SpotFlag.OVERLAPPED);
    }
    if (peakAbsorbance < FAINT) {
      flags.add(SpotFlag.FAINT);
    }
    if (isAtFront(box)) {
      flags.add(SpotFlag.AT_FRONT);
    }
    return flags;
  }

  private boolean isAtFront(SpotRegion.Box box) {
    return box.top() < front.at((box.left() + box.right()) / 2) + 0.5 * mm;
  }

  private double confidence(double peakAbsorbance, int area) {
    double clear = peakAbsorbance / (8 * noise + 0.012);
    double large = area / (6 * mm * mm);
    double c = clear / (1 + clear) * Math.min(1, 0.5 + large / 2);
    return Math.max(0.05, Math.min(0.99, c * 1.15));
  }
}
