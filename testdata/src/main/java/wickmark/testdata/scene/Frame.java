package wickmark.testdata.scene;

/** The coordinates of a thing on the desk, around its middle. */
final class Frame {
  private final double x;
  private final double y;
  private final double cos;
  private final double sin;

  Frame(Placement placement) {
    double angle = StrictMath.toRadians(placement.angleDeg());
    this.x = placement.xMm();
    this.y = placement.yMm();
    this.cos = StrictMath.cos(angle);
    this.sin = StrictMath.sin(angle);
  }

  /** Returns world coordinates of a place given relative to the thing's middle. */
  double[] toWorld(double u, double v) {
    return new double[] {x + cos * u - sin * v, y + sin * u + cos * v};
  }

  /** Returns the thing's own x of a place in the world. */
  double ownX(double worldX, double worldY) {
    return cos * (worldX - x) + sin * (worldY - y);
  }

  /** Returns the thing's own y of a place in the world. */
  double ownY(double worldX, double worldY) {
    return cos * (worldY - y) - sin * (worldX - x);
  }

  /** Returns a direction of the world in the thing's own axes. */
  double[] direction(double dx, double dy) {
    return new double[] {cos * dx + sin * dy, cos * dy - sin * dx};
  }
}
