package wickmark.testdata.set;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import wickmark.testdata.colour.ColourTemperature;
import wickmark.testdata.colour.LinearRgb;
import wickmark.testdata.noise.Dice;
import wickmark.testdata.scene.LightPlan;

/** Makes the light of a photograph. */
final class LightMaker {
  private final Set<SceneFeature> features;
  private final Dice dice;

  LightMaker(Set<SceneFeature> features, Dice dice) {
    this.features = features;
    this.dice = dice;
  }

  LightPlan light() {
    double kelvin =
        has(SceneFeature.WARM)
            ? dice.between(2700, 3300)
            : has(SceneFeature.COOL) ? dice.between(7000, 7500) : dice.between(4300, 6800);
    double left =
        has(SceneFeature.WARM) || has(SceneFeature.COOL)
            ? dice.between(0.35, 0.6)
            : dice.between(0.05, 0.3);
    LinearRgb colour = ColourTemperature.cast(kelvin, left);
    LinearRgb far = has(SceneFeature.MIXED) ? ColourTemperature.cast(2900, 0.5) : colour;
    double steep = has(SceneFeature.WINDOW) ? dice.between(2.2, 3.2) : dice.between(0, 0.7);
    double way = dice.between(0, 2 * Math.PI);
    LightPlan.Slope slope =
        new LightPlan.Slope(steep * StrictMath.cos(way), steep * StrictMath.sin(way), far);
    LightPlan.Direction direction =
        new LightPlan.Direction(
            StrictMath.toDegrees(way),
            has(SceneFeature.WINDOW) ? dice.between(25, 40) : dice.between(40, 70));
    return new LightPlan(colour, slope, direction, edges(), spots(colour));
  }

  private boolean has(SceneFeature feature) {
    return features.contains(feature);
  }

  private List<LightPlan.ShadowEdge> edges() {
    List<LightPlan.ShadowEdge> edges = new ArrayList<>();
    if (has(SceneFeature.HARD_SHADOW)) {
      double left = dice.between(0.38, 0.6);
      edges.add(edge(dice.between(0.8, 2.5), new LinearRgb(left * 0.94, left, left * 1.08)));
    }
    if (has(SceneFeature.SOFT_SHADOW)) {
      double left = dice.between(0.5, 0.72);
      edges.add(edge(dice.between(20, 60), new LinearRgb(left * 0.97, left, left * 1.03)));
    }
    return edges;
  }

  private LightPlan.ShadowEdge edge(double soft, LinearRgb left) {
    return new LightPlan.ShadowEdge(
        dice.between(-18, 18), dice.between(-25, 25), dice.between(0, 360), soft, left);
  }

  private List<LightPlan.HotSpot> spots(LinearRgb colour) {
    if (!has(SceneFeature.HOT_SPOT)) {
      return List.of();
    }
    double way = dice.between(0, 2 * Math.PI);
    double far = dice.between(25, 60);
    return List.of(
        new LightPlan.HotSpot(
            far * StrictMath.cos(way),
            far * StrictMath.sin(way),
            dice.between(45, 80),
            dice.between(0.35, 0.7),
            colour));
  }
}
