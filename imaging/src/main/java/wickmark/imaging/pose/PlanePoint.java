package wickmark.imaging.pose;

/**
 * A place on the paper's plane in true proportions, in units of its distance from the camera; the
 * origin and the directions of the axes mean nothing.
 */
public record PlanePoint(double x, double y) {
  public double distanceTo(PlanePoint other) {
    return Math.hypot(x - other.x, y - other.y);
  }
}
