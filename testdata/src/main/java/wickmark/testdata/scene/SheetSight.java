package wickmark.testdata.scene;

/** How the camera sees a sheet that may be bent: which place of it, and how lit. */
final class SheetSight {
  private final SheetSurface surface;
  private final Frame frame;
  private final Camera camera;
  private final double[] light;

  /**
   * Looks at a sheet.
   *
   * @param frame of the sheet's middle
   * @param light direction to the light, as a unit vector of the world
   */
  SheetSight(SheetSurface surface, Frame frame, Camera camera, double[] light) {
    this.surface = surface;
    this.frame = frame;
    this.camera = camera;
    this.light = light;
  }

  /**
   * Puts into {@code uvs} the place on the paper, mm, and its brightness over that of flat paper.
   */
  void locate(double px, double py, double[] uvs) {
    double[] xyz = new double[3];
    double[] xy = new double[2];
    double u = surface.width() / 2;
    double v = surface.height() / 2;
    double z = 0.15;
    for (int i = 0; i < (surface.isFlat() ? 1 : 9); i++) {
      camera.placeAt(px, py, z, xy);
      surface.at(u, v, xyz);
      u += frame.ownX(xy[0], xy[1]) - xyz[0];
      v += frame.ownY(xy[0], xy[1]) - xyz[1];
      if (!surface.isFlat()) {
        surface.at(u, v, xyz);
        z = xyz[2];
      }
    }
    uvs[0] = u;
    uvs[1] = v;
    uvs[2] = surface.isFlat() ? 1 : facing(u, v);
  }

  /**
   * Returns the cosine between surface and light over that of flat paper, softened by light from
   * all round.
   */
  private double facing(double u, double v) {
    double[] a = new double[3];
    double[] b = new double[3];
    surface.at(u - 0.5, v, a);
    surface.at(u + 0.5, v, b);
    double slopeU = b[2] - a[2];
    surface.at(u, v - 0.5, a);
    surface.at(u, v + 0.5, b);
    double slopeV = b[2] - a[2];
    double[] towards = frame.direction(light[0], light[1]);
    double cosine =
        (light[2] - slopeU * towards[0] - slopeV * towards[1])
            / Math.sqrt(1 + slopeU * slopeU + slopeV * slopeV);
    return 0.4 + 0.6 * Math.max(0, cosine) / light[2];
  }
}
