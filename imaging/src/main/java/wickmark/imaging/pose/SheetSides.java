package wickmark.imaging.pose;

import java.util.ArrayList;
import java.util.List;
import wickmark.imaging.photo.PhotoPoint;

/**
 * The four sides of a sheet, which run square to each other as well as somebody cut them.
 *
 * @param corners in order around the sheet
 * @param sides some places along each, as it was seen
 * @param sigmaPx standard uncertainty of each corner
 * @param ending for each side, from corner i to corner i + 1, whether it is where the picture ends
 */
record SheetSides(
    List<PhotoPoint> corners, List<List<PhotoPoint>> sides, double sigmaPx, List<Boolean> ending) {
  /** Half the outline of a usual strip, mm: what a millimetre is where there is no scale. */
  static final double USUAL_HALF_OUTLINE_MM = 210;

  /** Standard deviation of a long side's direction on a sheet that was cut with care (ours). */
  private static final double SQUARENESS = 0.2 * Math.PI / 180;

  /** The same of what is no side of the sheet. */
  private static final double ANY_DIRECTION = 20 * Math.PI / 180;

  /** Places on each side that are looked at, about. */
  private static final int SOME = 16;

  /** Part of an arch's height below which a place is too near a side's end to tell of it. */
  private static final double NEAR_END = 0.1;

  /** Least sum of the sides' squared distances from the place below the camera, plane units. */
  private static final double LEAST_DISTANCE = 0.01;

  /** A side this near to the picture's border, parts of its diagonal, is where the picture ends. */
  private static final double BORDER = 0.01;

  private static final int SIDES = 4;

  SheetSides {
    corners = List.copyOf(corners);
    ending = List.copyOf(ending);
    if (corners.size() != SIDES || ending.size() != SIDES) {
      throw new IllegalArgumentException("a sheet has four corners, was " + corners.size());
    }
  }

  /** The sides of the sheet in a picture. */
  static SheetSides of(PlaneEvidence evidence) {
    double near = BORDER * Math.hypot(evidence.widthPx(), evidence.heightPx());
    List<Boolean> ending = new ArrayList<>();
    for (int i = 0; i < SIDES; i++) {
      PhotoPoint a = evidence.corners().get(i);
      PhotoPoint b = evidence.corners().get((i + 1) % SIDES);
      ending.add(
          Math.max(a.x(), b.x()) < near
              || Math.max(a.y(), b.y()) < near
              || Math.min(a.x(), b.x()) > evidence.widthPx() - near
              || Math.min(a.y(), b.y()) > evidence.heightPx() - near);
    }
    return new SheetSides(
        evidence.corners(),
        evidence.sides().stream().map(SheetSides::some).toList(),
        evidence.cornerSigmaPx(),
        ending);
  }

  /**
   * How far the sides' directions are from those of the rectangle that comes nearest.
   *
   * @param inSigmas of each side, in units of its uncertainty; three degrees of freedom
   * @param logSpread logarithm of the volume over which such directions spread, so that {@code
   *     exp(−½ Σ inSigmas² − logSpread)} is their likelihood but for a constant
   */
  record Misfit(double[] inSigmas, double logSpread) {
    double sumOfSquares() {
      double sum = 0;
      for (double r : inSigmas) {
        sum += r * r;
      }
      return sum;
    }
  }

  /** Half the length around the sheet, plane units. */
  static double halfOutline(PlaneView view, List<PhotoPoint> corners) {
    double sum = 0;
    for (int i = 0; i < SIDES; i++) {
      PlanePoint here = view.toPlane(corners.get(i));
      sum += here.distanceTo(view.toPlane(corners.get((i + 1) % SIDES)));
    }
    return sum / 2;
  }

  /**
   * Compares with a rectangle.
   *
   * @param millimetresPerUnit of the plane
   * @param cutMm standard uncertainty of a corner's place across each of its sides, on the paper
   */
  Misfit misfit(PlaneView view, double millimetresPerUnit, double cutMm) {
    double[] off = new double[SIDES];
    double[] sigma = new double[SIDES];
    double weights = 0;
    double mean = 0;
    PlanePoint[] c = new PlanePoint[SIDES];
    for (int i = 0; i < SIDES; i++) {
      c[i] = view.toPlane(corners.get(i));
    }
    double sense = turnsLeft(c) ? 1 : -1;
    double bend = bend(view, c);
    double x0 = c[1].x() - c[0].x();
    double y0 = c[1].y() - c[0].y();
    for (int i = 0; i < SIDES; i++) {
      PlanePoint next = c[(i + 1) % SIDES];
      double dx = next.x() - c[i].x();
      double dy = next.y() - c[i].y();
      off[i] = StrictMath.atan2(x0 * dy - y0 * dx, x0 * dx + y0 * dy);
      double byCut = cutMm / (millimetresPerUnit * Math.hypot(dx, dy));
      double byLift = bend * distanceToNadir(view, c[i], next) / Math.hypot(dx, dy);
      double bySight = sigmaPx / pixels(i);
      double cutSquare = ending.get(i) ? ANY_DIRECTION : SQUARENESS;
      sigma[i] =
          Math.sqrt(
              cutSquare * cutSquare
                  + 2 * byCut * byCut
                  + 2 * byLift * byLift
                  + 2 * bySight * bySight);
      double w = 1 / (sigma[i] * sigma[i]);
      off[i] = Math.IEEEremainder(off[i] - sense * i * Math.PI / 2, 2 * Math.PI);
      weights += w;
      mean += w * off[i];
    }
    // Which way the rectangle lies is free.
    mean /= weights;
    double logSpread = 0.5 * StrictMath.log(weights);
    for (int i = 0; i < SIDES; i++) {
      off[i] = (off[i] - mean) / sigma[i];
      logSpread += StrictMath.log(sigma[i]);
    }
    return new Misfit(off, logSpread);
  }

  /**
   * How high the sheet's rim bends up or down, parts of the camera's height: a side that is raised
   * in the middle looks bowed by its height times its line's distance from the place below the
   * camera. Corners are taken to be as uncertain in height (ours).
   */
  private double bend(PlaneView view, PlanePoint[] c) {
    double bows = 0;
    double distances = 0;
    for (int i = 0; i < SIDES; i++) {
      PlanePoint a = c[i];
      PlanePoint b = c[(i + 1) % SIDES];
      double bow = bow(view, a, b, sides.get(i));
      double distance = distanceToNadir(view, a, b);
      bows += bow * bow;
      distances += distance * distance;
    }
    return Math.sqrt(bows / Math.max(LEAST_DISTANCE, distances));
  }

  /** The height of the arch over its chord that comes nearest to a side's places. */
  private static double bow(PlaneView view, PlanePoint a, PlanePoint b, List<PhotoPoint> side) {
    double length = a.distanceTo(b);
    double ux = (b.x() - a.x()) / length;
    double uy = (b.y() - a.y()) / length;
    double product = 0;
    double squares = 0;
    for (PhotoPoint place : side) {
      PlanePoint p = view.toPlane(place);
      double along = ((p.x() - a.x()) * ux + (p.y() - a.y()) * uy) / length;
      double arch = 4 * along * (1 - along);
      if (arch > NEAR_END) {
        product += arch * (ux * (p.y() - a.y()) - uy * (p.x() - a.x()));
        squares += arch * arch;
      }
    }
    return squares > 0 ? product / squares : 0;
  }

  /** From a side's line to the place below the camera. */
  private static double distanceToNadir(PlaneView view, PlanePoint a, PlanePoint b) {
    PlanePoint n = view.nadir();
    double cross = (b.x() - a.x()) * (n.y() - a.y()) - (b.y() - a.y()) * (n.x() - a.x());
    return Math.abs(cross) / a.distanceTo(b);
  }

  private static List<PhotoPoint> some(List<PhotoPoint> side) {
    List<PhotoPoint> some = new ArrayList<>();
    int step = Math.max(1, side.size() / SOME);
    for (int i = 0; i < side.size(); i += step) {
      some.add(side.get(i));
    }
    return some;
  }

  private double pixels(int side) {
    PhotoPoint a = corners.get(side);
    PhotoPoint b = corners.get((side + 1) % SIDES);
    return Math.hypot(b.x() - a.x(), b.y() - a.y());
  }

  private static boolean turnsLeft(PlanePoint[] c) {
    double area = 0;
    for (int i = 0; i < SIDES; i++) {
      PlanePoint next = c[(i + 1) % SIDES];
      area += c[i].x() * next.y() - c[i].y() * next.x();
    }
    return area > 0;
  }
}
