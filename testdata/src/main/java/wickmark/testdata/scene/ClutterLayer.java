package wickmark.testdata.scene;

/** A thing that lies about, seen at the height of its upper side. */
final class ClutterLayer implements Layer, Shadows.Caster {
  private static final double FAR_MM = 1000;

  private final Clutter clutter;
  private final Frame frame;
  private final Camera camera;
  private final Texture texture;

  ClutterLayer(Clutter clutter, Camera camera, Texture texture) {
    this.clutter = clutter;
    this.frame = new Frame(clutter.placement());
    this.camera = camera;
    this.texture = texture;
  }

  @Override
  public void locate(double px, double py, double[] uvs) {
    double[] xy = new double[2];
    camera.placeAt(px, py, clutter.kind().thickMm / 2, xy);
    uvs[0] = frame.ownX(xy[0], xy[1]);
    uvs[1] = frame.ownY(xy[0], xy[1]);
    uvs[2] = 1;
  }

  @Override
  public boolean mayLieIn(double uLow, double uHigh, double vLow, double vHigh) {
    double w = clutter.kind().widthMm / 2;
    double h = clutter.kind().heightMm / 2;
    return uHigh > -w && uLow < w && vHigh > -h && vLow < h;
  }

  @Override
  public float sample(float u, float v, float[] into) {
    if (Math.abs(u) > clutter.kind().widthMm / 2 || Math.abs(v) > clutter.kind().heightMm / 2) {
      return 0;
    }
    return texture.sample(u, v, into);
  }

  @Override
  public double distance(double x, double y) {
    double ownX = frame.ownX(x, y);
    double ownY = frame.ownY(x, y);
    double w = clutter.kind().widthMm / 2;
    double r = Math.sqrt(ownX * ownX + ownY * ownY);
    return switch (clutter.kind()) {
      case DISC -> r - w;
      // Wire is too thin to shade anything but itself.
      case CLIP, HOLDING_CLIP -> FAR_MM;
      case RIM -> Math.abs(r - w + 1.6) - 1;
      case PRESSING_FINGER -> {
        double tip = ownY - (clutter.kind().heightMm / 2 - w);
        yield tip > 0
            ? Math.sqrt(ownX * ownX + tip * tip) - w
            : Shadows.toRectangle(ownX, ownY, w, clutter.kind().heightMm / 2);
      }
      default -> Shadows.toRectangle(ownX, ownY, w, clutter.kind().heightMm / 2);
    };
  }

  @Override
  public double heightNear(double x, double y) {
    return switch (clutter.kind()) {
      case CLIP, HOLDING_CLIP, RIM -> 0.3;
      default -> clutter.kind().thickMm / 2;
    };
  }
}
