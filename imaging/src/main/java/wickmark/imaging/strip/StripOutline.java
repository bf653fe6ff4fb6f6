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
