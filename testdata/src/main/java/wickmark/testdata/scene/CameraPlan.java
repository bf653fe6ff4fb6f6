package wickmark.testdata.scene;

/**
 * A camera over the desk, looking at the world's origin.
 *
 * @param widthPx width of the picture as it is meant to be seen
 * @param heightPx its height
 * @param focalPx focal length in pixels
 * @param distanceMm from the lens to the place looked at
 * @param pose where it stands
 * @param k1 radial distortion: a ray at tangent r is seen at r (1 + k1 r²); below 0 is a barrel
 */
public record CameraPlan(
    int widthPx, int heightPx, double focalPx, double distanceMm, Pose pose, double k1) {
  private static final double FRAME_DIAGONAL_MM = 43.2666;

  public CameraPlan {
    if (widthPx < 16 || heightPx < 16 || !(focalPx > 0) || !(distanceMm > 0)) {
      throw new IllegalArgumentException(
          "a picture needs at least 16 x 16 px, focal length and distance above 0, were "
              + widthPx
              + " x "
              + heightPx
              + ", "
              + focalPx
              + ", "
              + distanceMm);
    }
  }

  /**
   * Where a camera stands.
   *
   * @param tiltDeg angle between its axis and the upright
   * @param azimuthDeg side from which it looks: 0 from the right, 90 from the top, 270 from below
   * @param rollDeg turn about its own axis, clockwise as seen in the picture's content turning
   *     anticlockwise
   */
  public record Pose(double tiltDeg, double azimuthDeg, double rollDeg) {}

  /** Returns a camera straight above, so that a millimetre on the desk is so many pixels. */
  public static CameraPlan above(int widthPx, int heightPx, double pxPerMm) {
    double focal = 0.8 * Math.max(widthPx, heightPx);
    return new CameraPlan(widthPx, heightPx, focal, focal / pxPerMm, new Pose(0, 270, 0), 0);
  }

  public CameraPlan tilted(double tiltDeg, double azimuthDeg, double rollDeg) {
    return new CameraPlan(
        widthPx, heightPx, focalPx, distanceMm, new Pose(tiltDeg, azimuthDeg, rollDeg), k1);
  }

  public CameraPlan withDistortion(double value) {
    return new CameraPlan(widthPx, heightPx, focalPx, distanceMm, pose, value);
  }

  /**
   * Returns the focal length that a camera with a 36 x 24 mm sensor (diagonal 43.27 mm) would need,
   * mm.
   */
  public double focalLength35mm() {
    return focalPx * FRAME_DIAGONAL_MM / StrictMath.hypot(widthPx, heightPx);
  }

  /**
   * Returns the focal length in pixels that a 35-mm-equivalent one is in a picture of this size.
   */
  public static double focalPx(double focalLength35mm, int widthPx, int heightPx) {
    return focalLength35mm * StrictMath.hypot(widthPx, heightPx) / FRAME_DIAGONAL_MM;
  }
}
