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
  private final FlatRectangle body;
  private final Texture texture;

  RulerLayer(RulerPlan plan, Placement placement, Camera camera, Texture texture) {
    this.plan = plan;
    this.frame = new Frame(placement);
    this.camera = camera;
    this.body = new FlatRectangle(frame, camera, plan.thicknessMm(), plan.bodyMm(), plan.widthMm());
    this.texture = texture;
  }

  @Override
  public void locate(double px, double py, double[] uvs) {
    body.locate(px, py, uvs);
  }

  @Override
  public boolean mayLieIn(double uLow, double uHigh, double vLow, double vHigh) {
    return body.mayLieIn(uLow, uHigh, vLow, vHigh);
  }

  @Override
  public float sample(float u, float v, float[] into) {
    return body.contains(u, v) ? texture.sample(u, v, into) : 0;
  }

  @Override
  public double distance(double x, double y) {
    return body.distance(x, y);
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
    marks(plan.upper(), w, w - markMm(plan.upper()), marks);
    marks(plan.lower(), 0, markMm(plan.lower()), marks);
    return new RulerTruth(
        plan.material().word(),
        plan.thicknessMm(),
        List.of(at(0, w), at(l, w), at(l, 0), at(0, 0)),
        marks);
  }

  private double markMm(RulerPlan.Graduation graduation) {
    // Of an inch's mark the truth holds as much as of a centimetre's.
    return graduation == RulerPlan.Graduation.TAPE ? plan.longestMarkMm(graduation) : 6.5;
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
