package wickmark.testdata.scene;

import wickmark.testdata.strip.PaintedStrip;

/** A painted strip lying on the desk. */
final class StripLayer implements Layer {
  /** How far a roughly cut sheet may reach beyond its rectangle. */
  private static final double BEYOND_MM = 6;

  private final PaintedStrip strip;
  private final SheetSurface surface;
  private final SheetSight sight;

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
    this.sight = new SheetSight(surface, new Frame(placement), camera, light);
  }

  @Override
  public void locate(double px, double py, double[] uvs) {
    sight.locate(px, py, uvs);
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
