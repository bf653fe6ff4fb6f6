package wickmark.testdata.truth;

/**
 * A place in the picture in pixels: x right, y down, (0, 0) the outer corner of the top-left pixel,
 * in the picture as it is meant to be seen.
 */
public record PointPx(double x, double y) {

  public double distanceTo(PointPx other) {
    return StrictMath.hypot(x - other.x, y - other.y);
  }
}
