package wickmark.testdata.scene;

import java.util.List;
import wickmark.testdata.colour.LinearRgb;

/** How much light falls on a place of the desk. */
final class Illumination {
  private final LightPlan plan;
  private final double[] cos;
  private final double[] sin;
  private final List<ShadePattern.Depth> depths;

  Illumination(LightPlan plan) {
    this.plan = plan;
    this.cos = new double[plan.edges().size()];
    this.sin = new double[plan.edges().size()];
    this.depths = plan.patterns().stream().map(ShadePattern::depth).toList();
    for (int i = 0; i < cos.length; i++) {
      cos[i] = StrictMath.cos(StrictMath.toRadians(plan.edges().get(i).normalDeg()));
      sin[i] = StrictMath.sin(StrictMath.toRadians(plan.edges().get(i).normalDeg()));
    }
  }

  /** Puts the light in the three channels into {@code rgb}. */
  void at(double x, double y, float[] rgb) {
    double far = Math.max(0, Math.min(1, 0.5 + x / 600));
    double bright =
        Math.max(0.1, 1 + (plan.slope().perMetreX() * x + plan.slope().perMetreY() * y) / 1000);
    double[] left = {bright, bright, bright};
    for (int i = 0; i < cos.length; i++) {
      LightPlan.ShadowEdge edge = plan.edges().get(i);
      double in = (x - edge.xMm()) * cos[i] + (y - edge.yMm()) * sin[i];
      double t = Math.max(0, Math.min(1, 0.5 + in / edge.softMm()));
      double depth = t * t * (3 - 2 * t);
      darken(left, depth, edge.left());
    }
    for (int i = 0; i < depths.size(); i++) {
      darken(left, depths.get(i).at(x, y), plan.patterns().get(i).left());
    }
    for (int c = 0; c < 3; c++) {
      double colour =
          plan.colour().channel(c)
              + far * (plan.slope().farColour().channel(c) - plan.colour().channel(c));
      rgb[c] = (float) (left[c] * colour);
    }
    for (LightPlan.HotSpot spot : plan.spots()) {
      double dx = (x - spot.xMm()) / spot.radiusMm();
      double dy = (y - spot.yMm()) / spot.radiusMm();
      double glow = spot.strength() / StrictMath.pow(1 + dx * dx + dy * dy, 2);
      LinearRgb colour = spot.colour();
      for (int c = 0; c < 3; c++) {
        rgb[c] += (float) (glow * colour.channel(c));
      }
    }
  }

  private static void darken(double[] light, double depth, LinearRgb left) {
    for (int c = 0; c < 3; c++) {
      light[c] *= 1 - depth * (1 - left.channel(c));
    }
  }
}
