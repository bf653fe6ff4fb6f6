package wickmark.testdata.scene;

import java.util.ArrayList;
import java.util.List;
import wickmark.testdata.truth.PointPx;
import wickmark.testdata.truth.RulerTruth;

/** A ruler on the desk: its graduation lies at the height of its thickness, hence its parallax. */
final class RulerLayer implements Layer, Shadows.Caster {
  private final RulerPlan plan;
  private final Frame frame;
  private final Camera camera;
  private final Texture texture;

  RulerLayer(RulerPlan plan, Placement placement, Camera camera, Texture texture) {
    this.plan = plan;
    this.frame = new Frame(placement);
    this.camera = camera;
    this.texture = texture;
  }

  @Override
  public void locate(double px, double py, double[] uvs) {
    double[] xy = new double[2];
    camera.placeAt(px, py, plan.thicknessMm(), xy);
    uvs[0] = frame.ownX(xy[0], xy[1]) + plan.bodyMm() / 2;
    uvs[1] = frame.ownY(xy[0], xy[1]) + plan.widthMm() / 2;
    uvs[2] = 1;
  }

  @Override
  public boolean mayLieIn(double uLow, double uHigh, double vLow, double vHigh) {
    return uHigh > 0 && uLow < plan.bodyMm() && vHigh > 0 && vLow < plan.widthMm();
  }

  @Override
  public float sample(float u, float v, float[] into) {
    if (u < 0 || v < 0 || u > plan.bodyMm() || v > plan.widthMm()) {
      return 0;
    }
    return texture.sample(u, v, into);
  }

  @Override
  public double distance(double x, double y) {
    double ownX = frame.ownX(x, y);
    double ownY = frame.ownY(x, y);
    return Shadows.toRectangle(ownX, ownY, plan.bodyMm() / 2, plan.widthMm() / 2);
  }

  @Override
  public double heightNear(double x, double y) {
    return plan.material() == RulerPlan.Material.TRANSPARENT
        ? 0.25 * plan.thicknessMm()
        : plan.thicknessMm();
  }

  RulerTruth truth() {
    double w = plan.widthMm();
    double l = plan.bodyMm();
    List<RulerTruth.Mark> marks = new ArrayList<>();
    marks(plan.upper(), w, w - 6.5, marks);
    marks(plan.lower(), 0, 6.5, marks);
    return new RulerTruth(
        plan.material().word(),
        plan.thicknessMm(),
        List.of(at(0, w), at(l, w), at(l, 0), at(0, 0)),
        marks);
  }

  private void marks(
      RulerPlan.Graduation graduation, double outer, double inner, List<RulerTruth.Mark> marks) {
    if (graduation == RulerPlan.Graduation.BARE) {
      return;
    }
    boolean inches = graduation == RulerPlan.Graduation.INCHES;
    double step = inches ? 25.4 : 10;
    for (int i = 0; i * step <= plan.lengthMm() + 1e-9; i++) {
      double u = plan.startMm() + i * step;
      marks.add(
          new RulerTruth.Mark(
              inches ? "inch" : "mm", inches ? i : 10 * i, at(u, outer), at(u, inner)));
    }
  }

  private PointPx at(double u, double v) {
    double[] world = frame.toWorld(u - plan.bodyMm() / 2, v - plan.widthMm() / 2);
    return camera.project(world[0], world[1], plan.thicknessMm());
  }
}
