package wickmark.imaging.strip;

import java.util.List;
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

  public StripOutline {
    if (corners.size() != 4 || sides.size() != 4) {
      throw new IllegalArgumentException("a strip has four corners and four sides");
    }
    corners = List.copyOf(corners);
    sides = List.copyOf(sides);
  }

  /** Share of the smaller sheet that lies in the other, 0 to 1. */
  public double overlap(StripOutline other) {
    return quad().overlap(other.quad());
  }

  /**
   * Whether this is another sheet cut short at one side: its corners lie on the other's sides. A
   * fold or a line across a sheet cuts it so.
   */
  public boolean isPartOf(StripOutline other) {
    Quad whole = other.quad();
    double near = ON_SIDE * Math.sqrt(whole.area());
    return quad().area() < CUT_SHORT * whole.area()
        && corners.stream()
            .allMatch(
                corner -> {
                  double least = Double.POSITIVE_INFINITY;
                  for (int side = 0; side < 4; side++) {
                    least = Math.min(least, whole.distance(side, corner.x(), corner.y()));
                  }
                  return least < near;
                });
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
