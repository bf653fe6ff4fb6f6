package wickmark.testdata.scene;

/**
 * A rectangle that lies flat. Own coordinates: from its lower left corner, mm.
 *
 * @param heightMm of its upper side above the desk
 * @param sideMm along its own x
 * @param otherSideMm along its own y
 */
record FlatRectangle(
    Frame frame, Camera camera, double heightMm, double sideMm, double otherSideMm) {

  /** Puts into {@code uvs} the place that a pixel shows, and 1 for its brightness. */
  void locate(double px, double py, double[] uvs) {
    double[] xy = new double[2];
    camera.placeAt(px, py, heightMm, xy);
    uvs[0] = frame.ownX(xy[0], xy[1]) + sideMm / 2;
    uvs[1] = frame.ownY(xy[0], xy[1]) + otherSideMm / 2;
    uvs[2] = 1;
  }

  boolean mayLieIn(double uLow, double uHigh, double vLow, double vHigh) {
    return uHigh > 0 && uLow < sideMm && vHigh > 0 && vLow < otherSideMm;
  }

  boolean contains(float u, float v) {
    return u >= 0 && v >= 0 && u <= sideMm && v <= otherSideMm;
  }

  /** Distance of a place of the desk from its sides; below 0 within. */
  double distance(double x, double y) {
    return Shadows.toRectangle(frame.ownX(x, y), frame.ownY(x, y), sideMm / 2, otherSideMm / 2);
  }
}
