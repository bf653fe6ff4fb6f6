package wickmark.testdata.set;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import wickmark.testdata.colour.LinearRgb;
import wickmark.testdata.noise.Dice;
import wickmark.testdata.scene.LightPlan;
import wickmark.testdata.scene.Placement;
import wickmark.testdata.scene.ShadePattern;
import wickmark.testdata.strip.Sheet;

/** Makes what a window adds to the light on a strip: blinds, leaves, a corner in the sun. */
final class WindowMaker {
  private static final Set<SceneFeature> FEATURES =
      EnumSet.of(
          SceneFeature.BLINDS_ACROSS,
          SceneFeature.BLINDS_ALONG,
          SceneFeature.DAPPLED,
          SceneFeature.BURNT_CORNER);

  private final Set<SceneFeature> features;
  private final Sheet sheet;
  private final Placement placement;
  private final Dice dice;

  /**
   * Makes it for one strip.
   *
   * @param placement where the sheet lies
   */
  WindowMaker(Set<SceneFeature> features, Sheet sheet, Placement placement, Dice dice) {
    this.features = features;
    this.sheet = sheet;
    this.placement = placement;
    this.dice = dice;
  }

  static boolean isAskedFor(Set<SceneFeature> features) {
    return FEATURES.stream().anyMatch(features::contains);
  }

  /** Returns the light with that. */
  LightPlan over(LightPlan light) {
    List<ShadePattern> patterns = new ArrayList<>();
    if (has(SceneFeature.BLINDS_ACROSS)) {
      patterns.add(blinds(90));
    }
    if (has(SceneFeature.BLINDS_ALONG)) {
      patterns.add(blinds(0));
    }
    if (has(SceneFeature.DAPPLED)) {
      patterns.add(new ShadePattern.Leaves(dice.between(16, 26), shade(), dice.seed()));
    }
    LightPlan patterned = light.withPatterns(patterns);
    return has(SceneFeature.BURNT_CORNER) ? patterned.withSpots(List.of(sun(light))) : patterned;
  }

  private boolean has(SceneFeature feature) {
    return features.contains(feature);
  }

  /** The sky still lights what the sun does not, and it is bluer. */
  private LinearRgb shade() {
    double left = dice.between(0.5, 0.7);
    return new LinearRgb(left * 0.95, left, left * 1.06);
  }

  private ShadePattern blinds(double offDeg) {
    double pitch = dice.between(18, 34);
    return new ShadePattern.Blinds(
        placement.angleDeg() + offDeg + dice.between(-12, 12),
        pitch,
        dice.between(0, pitch),
        pitch * dice.between(0.4, 0.6),
        pitch * dice.between(0.25, 0.5),
        shade());
  }

  /** Sun on an upper corner of the sheet, or on a lower one. */
  private LightPlan.HotSpot sun(LightPlan light) {
    double u = (dice.chance(0.5) ? 0.5 : -0.5) * sheet.widthMm();
    double v = (dice.chance(0.5) ? 0.5 : -0.5) * sheet.heightMm();
    double cos = StrictMath.cos(StrictMath.toRadians(placement.angleDeg()));
    double sin = StrictMath.sin(StrictMath.toRadians(placement.angleDeg()));
    return new LightPlan.HotSpot(
        placement.xMm() + cos * u - sin * v,
        placement.yMm() + sin * u + cos * v,
        dice.between(35, 60),
        dice.between(0.4, 0.6),
        light.colour());
  }
}
