package wickmark.testdata.scene;

import wickmark.testdata.strip.PaintedStrip;

/** A painted strip lying on the desk. */
final class StripLayer implements Layer {
  /** How far a roughly cut sheet may reach beyond its rectangle. */
  private static final double BEYOND_MM = 6;

  private final PaintedStrip strip;
  private final SheetSurface surface;
  private final Frame frame;
  private final Camera camera;
  private final double[] light;

  /**
   * @param light direction to the light, as a unit vector of the world
   */
  StripLayer(
      PaintedStrip strip,
      SheetSurface surface,
      Placement placement,
      Camera camera,
      double[] light) {
    this.strip = strip;
    this.surface = surface;
    this.frame = new Frame(placement);
    this.camera = camera;
    this.light = light;
  }

  @Override
  public void locate(double px, double py, double[] uvs) {
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

  @Override
  public boolean mayLieIn(double uLow, double uHigh, double vLow, double vHigh) {
    return uHigh > -BEYOND_MM
        && uLow < surface.width() + BEYOND_MM
        && vHigh > -BEYOND_MM
        && vLow < surface.height() + BEYOND_MM;
  }

  @Override
  public float sample(float u, float v, float[] into) {
    if (!strip.edges().hasPaperAt(u, v)) {
      return 0;
    }
    strip.addReflectance(u, v, into);
    return 1;
  }
}
