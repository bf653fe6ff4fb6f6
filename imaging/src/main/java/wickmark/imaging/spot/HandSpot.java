package wickmark.imaging.spot;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import wickmark.core.chromatogram.SpotFlag;
import wickmark.core.colour.LabColour;
import wickmark.core.colour.LinearRgb;
import wickmark.imaging.lane.DyeMap;
import wickmark.imaging.line.FittedLine;
import wickmark.imaging.raster.Raster;

/**
 * A spot whose centre a person set: the centre is theirs, extent and colour are measured around it.
 * Where no dye is seen its extent is nothing and its colour the paper's.
 */
public final class HandSpot {
  /** No spot is wider than twice this, mm. */
  private static final double REACH_MM = 7;

  /** The densest place lies within this distance of where a person sees the middle, mm. */
  private static final double NEAR_MM = 1.5;

  /** Density is averaged over a disc of this radius, mm. */
  private static final double DISC_MM = 0.6;

  private final DyeMap dye;
  private final FittedLine front;
  private final double mm;

  /** Takes what all spots of a strip share. */
  public HandSpot(DyeMap dye, FittedLine front, double cellsPerMm) {
    this.dye = dye;
    this.front = front;
    this.mm = cellsPerMm;
  }

  /**
   * Measures around a centre.
   *
   * @param others centres of the other spots: a cell belongs to the spot whose centre is nearer
   */
  public SpotRegion at(SpotRegion.Centroid centre, List<SpotRegion.Centroid> others) {
    double x = centre.x();
    double y = centre.y();
    int reach = (int) Math.ceil(REACH_MM * mm);
    int left = (int) Math.floor(x) - reach;
    int top = (int) Math.floor(y) - reach;
    int side = 2 * reach + 1;
    Raster own = new Raster(side, side);
    int densest = -1;
    for (int i = 0; i < side * side; i++) {
      double cx = left + i % side + 0.5;
      double cy = top + i / side + 0.5;
      double distance = Math.hypot(cx - x, cy - y);
      if (distance <= reach && isNearest(cx, cy, distance, others)) {
        own.cells()[i] = strength(left + i % side, top + i / side);
        if (distance < NEAR_MM * mm
            && (densest < 0 || own.cells()[i] > own.cells()[Math.max(0, densest)])) {
          densest = i;
        }
      }
    }
    double peak = densest < 0 ? 0 : own.cells()[densest];
    if (peak < SpotMeasurer.VISIBLE) {
      SpotRegion.Box nothing = new SpotRegion.Box(x, x, y, y);
      return new SpotRegion(
          centre,
          new double[] {x, y},
          nothing,
          0,
          Math.max(0, absorbance(disc(x, y))),
          colour(disc(x, y)),
          flags(nothing, 0),
          1,
          List.of());
    }
    boolean[] visible =
        VisibleExtent.around(own, densest, Math.max(SpotMeasurer.VISIBLE, 0.05 * peak));
    double[] density = disc(left + densest % side + 0.5, top + densest / side + 0.5);
    SpotRegion.Box box = box(visible, side, left, top, y);
    int area = 0;
    for (boolean cell : visible) {
      area += cell ? 1 : 0;
    }
    return new SpotRegion(
        centre,
        new double[] {x, y},
        box,
        area,
        absorbance(density),
        colour(core(own, visible, peak, left, top)),
        flags(box, absorbance(density)),
        1,
        VisibleExtent.outline(visible, side, side, left, top));
  }

  private static boolean isNearest(
      double x, double y, double distance, List<SpotRegion.Centroid> others) {
    return others.stream().allMatch(o -> Math.hypot(o.x() - x, o.y() - y) >= distance);
  }

  private float strength(int x, int y) {
    Raster strength = dye.strength();
    return x < 0 || y < 0 || x >= strength.width() || y >= strength.height()
        ? 0
        : strength.at(x, y);
  }

  /** Mean density of the three channels around a place. */
  private double[] disc(double x, double y) {
    double[] mean = new double[3];
    int count = 0;
    double radius = DISC_MM * mm;
    Raster[] density = dye.density();
    for (int row = (int) (y - radius); row <= y + radius; row++) {
      for (int column = (int) (x - radius); column <= x + radius; column++) {
        boolean inside =
            row >= 0 && column >= 0 && row < density[0].height() && column < density[0].width();
        if (inside && Math.hypot(column + 0.5 - x, row + 0.5 - y) <= radius) {
          count++;
          for (int c = 0; c < 3; c++) {
            mean[c] += density[c].at(column, row);
          }
        }
      }
    }
    for (int c = 0; c < 3; c++) {
      mean[c] = count == 0 ? 0 : mean[c] / count;
    }
    return mean;
  }

  /** Mean density of the three channels where the spot has half its greatest density and more. */
  private double[] core(Raster own, boolean[] visible, double peak, int left, int top) {
    double[] mean = new double[3];
    int count = 0;
    for (int i = 0; i < visible.length; i++) {
      if (visible[i] && own.cells()[i] > 0.5 * peak) {
        count++;
        for (int c = 0; c < 3; c++) {
          mean[c] += dye.density()[c].at(left + i % own.width(), top + i / own.width());
        }
      }
    }
    for (int c = 0; c < 3; c++) {
      mean[c] /= count;
    }
    return mean;
  }

  private static double absorbance(double[] density) {
    return Math.max(density[0], Math.max(density[1], density[2]));
  }

  private static LabColour colour(double[] density) {
    double[] light = new double[3];
    for (int c = 0; c < 3; c++) {
      light[c] = StrictMath.pow(10, -Math.max(0, density[c]));
    }
    return LabColour.of(new LinearRgb(light[0], light[1], light[2]));
  }

  /** The visible extent, and the centre's row with it. */
  private static SpotRegion.Box box(boolean[] in, int side, int left, int top, double y) {
    int x0 = side;
    int x1 = -1;
    int y0 = side;
    int y1 = -1;
    for (int i = 0; i < in.length; i++) {
      if (in[i]) {
        x0 = Math.min(x0, i % side);
        x1 = Math.max(x1, i % side);
        y0 = Math.min(y0, i / side);
        y1 = Math.max(y1, i / side);
      }
    }
    return new SpotRegion.Box(
        left + x0, left + x1 + 1.0, Math.min(y, top + y0), Math.max(y, top + y1 + 1.0));
  }

  private Set<SpotFlag> flags(SpotRegion.Box box, double peakAbsorbance) {
    Set<SpotFlag> flags = EnumSet.of(SpotFlag.BY_HAND);
    if (peakAbsorbance < SpotMeasurer.FAINT) {
      flags.add(SpotFlag.FAINT);
    }
    if (box.top() < front.at((box.left() + box.right()) / 2) + 0.5 * mm) {
      flags.add(SpotFlag.AT_FRONT);
    }
    return flags;
  }
}
