package wickmark.testdata.scene;

/**
 * Where a flat thing lies on the desk.
 *
 * @param xMm world x of its middle
 * @param yMm world y of its middle
 * @param angleDeg turn of its own up direction from the world's, anticlockwise
 */
public record Placement(double xMm, double yMm, double angleDeg) {

  /** Returns world coordinates of a place given relative to the thing's middle. */
  double[] toWorld(double u, double v) {
    double angle = StrictMath.toRadians(angleDeg);
    double cos = StrictMath.cos(angle);
    double sin = StrictMath.sin(angle);
    return new double[] {xMm + cos * u - sin * v, yMm + sin * u + cos * v};
  }

  /** Returns coordinates relative to the thing's middle of a place in the world. */
  double[] toOwn(double x, double y) {
    double angle = StrictMath.toRadians(angleDeg);
    double cos = StrictMath.cos(angle);
    double sin = StrictMath.sin(angle);
    double dx = x - xMm;
    double dy = y - yMm;
    return new double[] {cos * dx + sin * dy, cos * dy - sin * dx};
  }
}
