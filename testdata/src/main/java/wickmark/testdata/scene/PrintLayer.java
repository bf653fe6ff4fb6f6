package wickmark.testdata.scene;

import wickmark.testdata.colour.SrgbCurve;
import wickmark.testdata.picture.Picture;

/** A printed sheet. Own coordinates: from its lower left corner, mm. */
final class PrintLayer implements Layer, Shadows.Caster {
  /** What office paper sends back of the light, and toner. */
  private static final double PAPER = 0.86;

  private static final double TONER = 0.035;

  private static final double THICK_MM = 0.1;

  private final PrintItem item;
  private final Frame frame;
  private final Camera camera;
  private final SheetSight sight;
  private final float[] light;

  /**
   * Puts a print before the camera.
   *
   * @param towardsLight direction to the light, as a unit vector of the world
   */
  PrintLayer(PrintItem item, Camera camera, double[] towardsLight) {
    this.item = item;
    this.sight =
        new SheetSight(
            new SheetSurface(item.widthMm(), item.heightMm(), item.bends()),
            new Frame(item.placement()),
            camera,
            towardsLight);
    this.frame = new Frame(item.placement());
    this.camera = camera;
    Picture print = item.print();
    this.light = new float[3 * print.widthPx() * print.heightPx()];
    for (int y = 0; y < print.heightPx(); y++) {
      for (int x = 0; x < print.widthPx(); x++) {
        for (int c = 0; c < 3; c++) {
          double share = SrgbCurve.decode8(print.value(x, y, c));
          light[3 * (y * print.widthPx() + x) + c] = (float) (TONER + share * (PAPER - TONER));
        }
      }
    }
  }

  @Override
  public void locate(double px, double py, double[] uvs) {
    if (!item.bends().isEmpty()) {
      sight.locate(px, py, uvs);
      return;
    }
    double[] xy = new double[2];
    camera.placeAt(px, py, 0, xy);
    uvs[0] = frame.ownX(xy[0], xy[1]) + item.widthMm() / 2;
    uvs[1] = frame.ownY(xy[0], xy[1]) + item.heightMm() / 2;
    uvs[2] = 1;
  }

  @Override
  public boolean mayLieIn(double uLow, double uHigh, double vLow, double vHigh) {
    return uHigh > 0 && uLow < item.widthMm() && vHigh > 0 && vLow < item.heightMm();
  }

  @Override
  public float sample(float u, float v, float[] into) {
    if (u < 0 || v < 0 || u > item.widthMm() || v > item.heightMm()) {
      return 0;
    }
    int columns = item.print().widthPx();
    int rows = item.print().heightPx();
    double x = Math.max(0, Math.min(columns - 1.001, u * item.pxPerMm() - 0.5));
    double y = Math.max(0, Math.min(rows - 1.001, rows - v * item.pxPerMm() - 0.5));
    int column = (int) x;
    int row = (int) y;
    float right = (float) (x - column);
    float down = (float) (y - row);
    int i = 3 * (row * columns + column);
    int j = i + 3 * columns;
    for (int c = 0; c < 3; c++) {
      float upper = (1 - right) * light[i + c] + right * light[i + 3 + c];
      float lower = (1 - right) * light[j + c] + right * light[j + 3 + c];
      into[c] += (1 - down) * upper + down * lower;
    }
    return 1;
  }

  @Override
  public double distance(double x, double y) {
    return Shadows.toRectangle(
        frame.ownX(x, y), frame.ownY(x, y), item.widthMm() / 2, item.heightMm() / 2);
  }

  @Override
  public double heightNear(double x, double y) {
    return THICK_MM;
  }
}
