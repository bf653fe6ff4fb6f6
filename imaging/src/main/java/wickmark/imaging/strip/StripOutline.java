package wickmark.imaging.strip;

import java.util.List;
import java.util.OptionalInt;
import wickmark.imaging.photo.PhotoPoint;

/**
 * Where a sheet of paper lies in the photo.
 *
 * @param corners four, clockwise on the screen; which of them is the strip's top-left is not known
 *     yet
 * @param sides for each side, from corner i to corner i + 1, points along the edge as it was seen
 *     (a dried sheet is cockled, its sides are curves)
 * @param sidesSigmaPx standard deviation of those points about a smooth curve, photo pixels
 * @param score how well the picture supports it, 0 to 1
 */
public record StripOutline(
    List<PhotoPoint> corners, List<List<PhotoPoint>> sides, double sidesSigmaPx, double score) {
  /** How far from a side a corner lies on it, parts of the root of the sheet's area. */
  private static final double ON_SIDE = 0.02;

  /** Share of the whole sheet below which a sheet is a part of it, not the same seen again. */
  private static final double CUT_SHORT = 0.985;

  /** Share of a sheet from which it lies in another: sides are followed a little differently. */
  private static final double WITHIN = 0.97;

  public StripOutline {
    if (corners.size() != 4 || sides.size() != 4) {
      throw new IllegalArgumentException("a strip has four corners and four sides");
    }
    corners = List.copyOf(corners);
    sides = List.copyOf(sides);
  }

  /** Area of the figure that the corners span, square photo pixels. */
  public double area() {
    return quad().area();
  }

  /** Share of the smaller sheet that lies in the other, 0 to 1. */
  public double overlap(StripOutline other) {
    return quad().overlap(other.quad());
  }

  /** Whether this sheet is another or a part of it. */
  public boolean isWithin(StripOutline other) {
    return other.quad().shareOf(quad()) > WITHIN;
  }

  /** Whether each corner lies within so many photo pixels of one of another's, in their order. */
  boolean isAt(StripOutline other, double px) {
    for (int turns = 0; turns < 4; turns++) {
      boolean same = true;
      for (int i = 0; i < 4; i++) {
        PhotoPoint a = corners.get(i);
        PhotoPoint b = other.corners.get((i + turns) % 4);
        same &= Math.hypot(b.x() - a.x(), b.y() - a.y()) <= px;
      }
      if (same) {
        return true;
      }
    }
    return false;
  }

  /**
   * The side at which another sheet is cut short to be this one, 0 to 3; empty where it is not. The
   * corners of the side lie along the other's sides, the other two corners are the other's. A fold
   * or a line across a sheet cuts it so.
   */
  public OptionalInt cutOf(StripOutline other) {
    Quad whole = other.quad();
    double near = ON_SIDE * Math.sqrt(whole.area());
    if (quad().area() > CUT_SHORT * whole.area()) {
      return OptionalInt.empty();
    }
    for (int side = 0; side < 4; side++) {
      if (isAlongSide(other, corners.get(side), near)
          && isAlongSide(other, corners.get((side + 1) % 4), near)
          && isCorner(other, corners.get((side + 2) % 4), near)
          && isCorner(other, corners.get((side + 3) % 4), near)) {
        return OptionalInt.of(side);
      }
    }
    return OptionalInt.empty();
  }

  /** Whether a corner lies on a side of another sheet, away from its corners. */
  private static boolean isAlongSide(StripOutline whole, PhotoPoint corner, double near) {
    Quad quad = whole.quad();
    double least = Double.POSITIVE_INFINITY;
    for (int side = 0; side < 4; side++) {
      least = Math.min(least, quad.distance(side, corner.x(), corner.y()));
    }
    return least < near && !isCorner(whole, corner, near);
  }

  private static boolean isCorner(StripOutline whole, PhotoPoint corner, double near) {
    return whole.corners.stream()
        .anyMatch(c -> Math.hypot(c.x() - corner.x(), c.y() - corner.y()) < near);
  }

  /** Whether the corners span a figure: sides followed at fine scale may cross where none are. */
  boolean isFigure() {
    return corners.stream().allMatch(c -> Double.isFinite(c.x()) && Double.isFinite(c.y()))
        && quad().isConvexClockwise();
  }

  private Quad quad() {
    return new Quad(
        corners.stream().mapToDouble(PhotoPoint::x).toArray(),
        corners.stream().mapToDouble(PhotoPoint::y).toArray());
  }
}
