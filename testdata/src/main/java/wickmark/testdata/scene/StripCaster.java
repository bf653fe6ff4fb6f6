package wickmark.testdata.scene;

/** The shadow of a sheet of paper: thin where it lies on the desk, broad where it is lifted. */
final class StripCaster implements Shadows.Caster {
  private final SheetSurface surface;
  private final Placement placement;

  StripCaster(SheetSurface surface, Placement placement) {
    this.surface = surface;
    this.placement = placement;
  }

  @Override
  public double distance(double x, double y) {
    double[] own = placement.toOwn(x, y);
    return Shadows.toRectangle(own[0], own[1], surface.width() / 2, surface.height() / 2);
  }

  @Override
  public double heightNear(double x, double y) {
    double[] own = placement.toOwn(x, y);
    double[] xyz = new double[3];
    double u = Math.max(0, Math.min(surface.width(), own[0] + surface.width() / 2));
    double v = Math.max(0, Math.min(surface.height(), own[1] + surface.height() / 2));
    surface.at(u, v, xyz);
    return xyz[2];
  }
}
