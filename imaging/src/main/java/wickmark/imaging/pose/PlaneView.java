package wickmark.imaging.pose;

import wickmark.imaging.photo.PhotoPoint;

/**
 * How a camera sees a plane: a pinhole with square pixels and its principal point (in the middle of
 * a picture that was not cut), one term of radial distortion, and the direction of the plane's
 * normal. Scanners are the limit without tilt.
 *
 * <p>With p = (x − cx, y − cy)/f the undistorted direction is p · (1 + k · |p|²); the plane's
 * normal is (a, b, 1)/√(1 + a² + b²); the plane passes at distance 1 from the camera.
 */
public final class PlaneView {
  private final double centreX;
  private final double centreY;
  private final double focalPx;
  private final double distortion;
  private final double a;
  private final double b;
  private final double nx;
  private final double ny;
  private final double nz;
  private final double[] e1 = new double[3];
  private final double[] e2 = new double[3];

  /**
   * A view.
   *
   * @param focalPx focal length in photo pixels
   * @param distortion k above; a camera phone has within ±0.05
   * @param a tilt of the plane towards x, tangent
   * @param b tilt of the plane towards y, tangent
   */
  public PlaneView(
      double centreX, double centreY, double focalPx, double distortion, double a, double b) {
    this.centreX = centreX;
    this.centreY = centreY;
    this.focalPx = focalPx;
    this.distortion = distortion;
    this.a = a;
    this.b = b;
    double norm = Math.sqrt(1 + a * a + b * b);
    nx = a / norm;
    ny = b / norm;
    nz = 1 / norm;
    // e1 lies in the plane and in the x-z plane of the camera, e2 completes the right-handed set.
    double l = Math.hypot(nz, nx);
    e1[0] = nz / l;
    e1[2] = -nx / l;
    e2[0] = ny * e1[2] - nz * e1[1];
    e2[1] = nz * e1[0] - nx * e1[2];
    e2[2] = nx * e1[1] - ny * e1[0];
  }

  public double focalPx() {
    return focalPx;
  }

  public double distortion() {
    return distortion;
  }

  /** Angle between the plane and the picture plane, radians. */
  public double tilt() {
    return StrictMath.acos(Math.min(1, nz));
  }

  /** The camera's parameters in the order of {@link #with}: ln f, k, a, b, principal point. */
  public double[] parameters() {
    return new double[] {StrictMath.log(focalPx), distortion, a, b, centreX, centreY};
  }

  /** The same picture seen with other parameters. */
  public PlaneView with(double[] p) {
    return new PlaneView(p[4], p[5], StrictMath.exp(p[0]), p[1], p[2], p[3]);
  }

  /** Maps a photo place to the plane. */
  public PlanePoint toPlane(PhotoPoint photo) {
    double px = (photo.x() - centreX) / focalPx;
    double py = (photo.y() - centreY) / focalPx;
    double stretch = 1 + distortion * (px * px + py * py);
    double dx = px * stretch;
    double dy = py * stretch;
    double depth = nx * dx + ny * dy + nz;
    double x = dx / depth;
    double y = dy / depth;
    double z = 1 / depth;
    return new PlanePoint(x * e1[0] + y * e1[1] + z * e1[2], x * e2[0] + y * e2[1] + z * e2[2]);
  }

  /** Maps a place on the plane to the photo. */
  public PhotoPoint toPhoto(PlanePoint plane) {
    double x = nx + plane.x() * e1[0] + plane.y() * e2[0];
    double y = ny + plane.x() * e1[1] + plane.y() * e2[1];
    double z = nz + plane.x() * e1[2] + plane.y() * e2[2];
    double ux = x / z;
    double uy = y / z;
    double px = ux;
    double py = uy;
    for (int i = 0; i < 12; i++) {
      double stretch = 1 + distortion * (px * px + py * py);
      px = ux / stretch;
      py = uy / stretch;
    }
    return new PhotoPoint(centreX + focalPx * px, centreY + focalPx * py);
  }

  /** The place on the plane straight below the camera, from which raised paper is pushed away. */
  public PlanePoint nadir() {
    return new PlanePoint(0, 0);
  }
}
