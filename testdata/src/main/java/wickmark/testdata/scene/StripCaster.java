package wickmark.testdata.scene;

import java.util.Optional;
import wickmark.testdata.strip.Figure;

/** The shadow of a sheet of paper: thin where it lies on the desk, broad where it is lifted. */
final class StripCaster implements Shadows.Caster {
  private final SheetSurface surface;
  private final Frame frame;
  private final Optional<ConvexOutline> cut;

  StripCaster(SheetSurface surface, Placement placement, Figure figure) {
    this.surface = surface;
    this.frame = new Frame(placement);
    this.cut =
        figure.isRectangle()
            ? Optional.empty()
            : Optional.of(new ConvexOutline(figure.outline(surface.width(), surface.height())));
  }

  @Override
  public double distance(double x, double y) {
    double ownX = frame.ownX(x, y);
    double ownY = frame.ownY(x, y);
    double halfWidth = surface.width() / 2;
    double halfHeight = surface.height() / 2;
    return cut.isEmpty()
        ? Shadows.toRectangle(ownX, ownY, halfWidth, halfHeight)
        : cut.get().distance(ownX + halfWidth, ownY + halfHeight);
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
