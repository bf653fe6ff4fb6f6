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
    Window window = new Window(centre, (int) Math.ceil(REACH_MM * mm));
    int densest = window.fill(others);
    double peak = densest < 0 ? 0 : window.own.cells()[densest];
    return peak < SpotMeasurer.VISIBLE
        ? unseen(centre)
        : seen(centre, window, densest, Math.max(SpotMeasurer.VISIBLE, 0.05 * peak));
  }

  private SpotRegion unseen(SpotRegion.Centroid centre) {
    double[] place = {centre.x(), centre.y()};
    SpotRegion.Box nothing = new SpotRegion.Box(place[0], place[0], place[1], place[1]);
    double[] density = disc(place[0], place[1]);
    return new SpotRegion(
        centre,
        place,
        nothing,
        0,
        Math.max(0, absorbance(density)),
        colour(density),
        flags(nothing, 0),
        1,
        List.of());
  }

  private SpotRegion seen(
      SpotRegion.Centroid centre, Window window, int densest, double visibleFrom) {
    boolean[] visible = VisibleExtent.around(window.own, densest, visibleFrom);
    double peak = absorbance(disc(window.x(densest), window.y(densest)));
    SpotRegion.Box box = window.box(visible, centre.y());
    int area = 0;
    for (boolean cell : visible) {
      area += cell ? 1 : 0;
    }
    return new SpotRegion(
        centre,
        new double[] {centre.x(), centre.y()},
        box,
        area,
        peak,
        colour(core(window, visible, window.own.cells()[densest])),
        flags(box, peak),
        1,
        VisibleExtent.outline(visible, window.side, window.side, window.left, window.top));
  }

  /** The cells around a centre that are nearer to it than to any other. */
  private final class Window {
    private final SpotRegion.Centroid centre;
    private final int reach;
    private final int left;
    private final int top;
    private final int side;
    private final Raster own;

    Window(SpotRegion.Centroid centre, int reach) {
      this.centre = centre;
      this.reach = reach;
      this.left = (int) Math.floor(centre.x()) - reach;
      this.top = (int) Math.floor(centre.y()) - reach;
      this.side = 2 * reach + 1;
      this.own = new Raster(side, side);
    }

    double x(int cell) {
      return left + cell % side + 0.5;
    }

    double y(int cell) {
      return top + cell / side + 0.5;
    }

    /** Takes the dye in; returns the densest cell near the centre, below 0 where there is none. */
    int fill(List<SpotRegion.Centroid> others) {
      int densest = -1;
      for (int i = 0; i < side * side; i++) {
        double distance = Math.hypot(x(i) - centre.x(), y(i) - centre.y());
        if (distance <= reach && isNearest(x(i), y(i), distance, others)) {
          own.cells()[i] = strength(left + i % side, top + i / side);
          boolean near = distance < NEAR_MM * mm;
          if (near && (densest < 0 || own.cells()[i] > own.cells()[densest])) {
            densest = i;
          }
        }
      }
      return densest;
    }

    /** The visible extent, and the centre's row with it. */
    SpotRegion.Box box(boolean[] in, double row) {
      double x0 = Double.POSITIVE_INFINITY;
      double x1 = Double.NEGATIVE_INFINITY;
      double y0 = row;
      double y1 = row;
      for (int i = 0; i < in.length; i++) {
        if (in[i]) {
          x0 = Math.min(x0, x(i) - 0.5);
          x1 = Math.max(x1, x(i) + 0.5);
          y0 = Math.min(y0, y(i) - 0.5);
          y1 = Math.max(y1, y(i) + 0.5);
        }
      }
      return new SpotRegion.Box(x0, x1, y0, y1);
    }
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
  private double[] core(Window window, boolean[] visible, double peak) {
    double[] mean = new double[3];
    int count = 0;
    for (int i = 0; i < visible.length; i++) {
      if (visible[i] && window.own.cells()[i] > 0.5 * peak) {
        count++;
        for (int c = 0; c < 3; c++) {
          mean[c] += dye.density()[c].at((int) window.x(i), (int) window.y(i));
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
