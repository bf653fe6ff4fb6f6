package wickmark.testdata.truth;

/** A straight piece of line on the strip, from its left to its right end. */
public record SegmentMm(PointMm from, PointMm to) {

  /**
   * Returns the angle to the strip's lower edge in degrees, positive when the right end is higher.
   */
  public double slopeDeg() {
    return StrictMath.toDegrees(StrictMath.atan2(to.y() - from.y(), to.x() - from.x()));
  }

  /** Returns how far a place lies above the line through this segment, square to it, in mm. */
  public double heightOf(PointMm place) {
    double dx = to.x() - from.x();
    double dy = to.y() - from.y();
    return (dx * (place.y() - from.y()) - dy * (place.x() - from.x())) / StrictMath.hypot(dx, dy);
  }

  /** Returns the place on the line whose x is given. */
  public PointMm at(double x) {
    double share = (x - from.x()) / (to.x() - from.x());
    return new PointMm(x, from.y() + share * (to.y() - from.y()));
  }

  /** Returns the place reached from {@code start} by going {@code mm} up, square to this line. */
  public PointMm above(PointMm start, double mm) {
    double dx = to.x() - from.x();
    double dy = to.y() - from.y();
    double length = StrictMath.hypot(dx, dy);
    return new PointMm(start.x() - mm * dy / length, start.y() + mm * dx / length);
  }
}
