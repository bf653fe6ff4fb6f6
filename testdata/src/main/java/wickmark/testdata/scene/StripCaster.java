package wickmark.testdata.scene;

/** The shadow of a sheet of paper: thin where it lies on the desk, broad where it is lifted. */
final class StripCaster implements Shadows.Caster {
  private final SheetSurface surface;
  private final Frame frame;

  StripCaster(SheetSurface surface, Placement placement) {
    this.surface = surface;
    this.frame = new Frame(placement);
  }

  @Override
  public double distance(double x, double y) {
    double ownX = frame.ownX(x, y);
    double ownY = frame.ownY(x, y);
    return Shadows.toRectangle(ownX, ownY, surface.width() / 2, surface.height() / 2);
  }

  @Override
  public double heightNear(double x, double y) {
    double ownX = frame.ownX(x, y);
    double ownY = frame.ownY(x, y);
    double[] xyz = new double[3];
    double u = Math.max(0, Math.min(surface.width(), ownX + surface.width() / 2));
    double v = Math.max(0, Math.min(surface.height(), ownY + surface.height() / 2));
    surface.at(u, v, xyz);
    return xyz[2];
  }
}
