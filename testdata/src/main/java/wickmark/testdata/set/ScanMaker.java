package wickmark.testdata.set;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import wickmark.testdata.noise.Dice;
import wickmark.testdata.picture.PictureTags;
import wickmark.testdata.scene.Placement;
import wickmark.testdata.scene.RulerItem;
import wickmark.testdata.scene.RulerPlan;
import wickmark.testdata.scene.ScanPlan;
import wickmark.testdata.scene.Scanner;
import wickmark.testdata.scene.SensorPlan;
import wickmark.testdata.scene.StripItem;
import wickmark.testdata.strip.StripPlan;

/** Makes a flatbed scan of a set by chance, with the features that are asked for. */
final class ScanMaker {
  private final Set<SceneFeature> features;
  private final Dice dice;
  private final List<StripPlan> strips;

  ScanMaker(List<StripPlan> strips, Set<SceneFeature> features, long seed) {
    this.strips = strips;
    this.features = features;
    this.dice = new Dice(seed);
  }

  private boolean has(SceneFeature feature) {
    return features.contains(feature);
  }

  Shot shot() {
    double dpi =
        has(SceneFeature.COARSE)
            ? 150
            : has(SceneFeature.FINE) ? 600 : dice.pick(List.of(200.0, 300.0));
    ScanPlan.Lid lid =
        has(SceneFeature.BLACK_LID)
            ? ScanPlan.Lid.BLACK
            : has(SceneFeature.GREY_LID) ? ScanPlan.Lid.GREY : ScanPlan.Lid.WHITE;
    ScanPlan plan = strips.size() > 1 ? many(dpi, lid) : one(dpi, lid);
    PictureTags tags =
        new PictureTags(
            1,
            has(SceneFeature.NO_TAG) ? Optional.empty() : Optional.of(dpi),
            OptionalDouble.empty());
    int quality = has(SceneFeature.PNG) ? 0 : has(SceneFeature.JPEG_60) ? 60 : 86 + dice.below(10);
    return new Shot(
        Scanner.scan(plan), tags, quality, TruthJson.ordered("lid", lid.word(), "dpi", dpi));
  }

  private ScanPlan one(double dpi, ScanPlan.Lid lid) {
    StripPlan strip = strips.get(0);
    boolean tight = has(SceneFeature.TIGHT) || has(SceneFeature.CROPPED);
    double around =
        has(SceneFeature.CROPPED) ? -0.8 : tight ? dice.between(0.8, 2) : dice.between(7, 25);
    double turn =
        quarters()
            + (has(SceneFeature.CROPPED)
                ? dice.between(-0.15, 0.15)
                : tight ? dice.between(-0.3, 0.3) : dice.between(-2.5, 2.5));
    double beside = has(SceneFeature.RULER_IN_SCAN) ? 34 : 0;
    double angle = StrictMath.toRadians(turn);
    double cos = Math.abs(StrictMath.cos(angle));
    double sin = Math.abs(StrictMath.sin(angle));
    double w = strip.sheet().widthMm() + beside;
    double h = strip.sheet().heightMm();
    double boxW = (tight && !sideways() ? w : cos * w + sin * h) + 2 * around;
    double boxH = (tight && !sideways() ? h : sin * w + cos * h) + 2 * around;
    // The ruler's room is to the right of the strip, in the strip's own directions.
    double offX = -beside / 2 * StrictMath.cos(angle);
    double offY = -beside / 2 * StrictMath.sin(angle);
    StripItem item = StripItem.of(strip, new Placement(boxW / 2 + offX, -boxH / 2 + offY, turn));
    List<RulerItem> rulers = new ArrayList<>();
    if (has(SceneFeature.RULER_IN_SCAN)) {
      rulers.add(ruler(item.placement(), strip));
    }
    return new ScanPlan(
        dpi, new ScanPlan.Glass(boxW, boxH, lid), List.of(item), rulers, sensor(), dice.seed());
  }

  private boolean sideways() {
    return has(SceneFeature.SIDEWAYS);
  }

  private double quarters() {
    return sideways() ? (dice.chance(0.5) ? 90 : -90) : has(SceneFeature.UPSIDE_DOWN) ? 180 : 0;
  }

  private RulerItem ruler(Placement strip, StripPlan plan) {
    RulerPlan ruler =
        new RulerPlan(
            RulerPlan.Material.WHITE_PLASTIC,
            150,
            28,
            0.8,
            RulerPlan.Graduation.CENTIMETRES,
            RulerPlan.Graduation.BARE);
    double off = plan.sheet().widthMm() / 2 + 4 + 14;
    double angle = StrictMath.toRadians(strip.angleDeg());
    return new RulerItem(
        ruler,
        new Placement(
            strip.xMm() + off * StrictMath.cos(angle),
            strip.yMm() + off * StrictMath.sin(angle),
            strip.angleDeg() + 90 + dice.between(-1, 1)));
  }

  private ScanPlan many(double dpi, ScanPlan.Lid lid) {
    double x = 8;
    double tallest = strips.stream().mapToDouble(s -> s.sheet().heightMm()).max().orElseThrow();
    List<StripItem> items = new ArrayList<>();
    for (StripPlan strip : strips) {
      double w = strip.sheet().widthMm();
      double h = strip.sheet().heightMm();
      double y = -10 - h / 2 - dice.between(0, 1) * (tallest - h);
      items.add(StripItem.of(strip, new Placement(x + w / 2, y, dice.between(-2, 2))));
      x += w + dice.between(6, 10);
    }
    return new ScanPlan(
        dpi, new ScanPlan.Glass(x, tallest + 20, lid), items, List.of(), sensor(), dice.seed());
  }

  private SensorPlan sensor() {
    return new SensorPlan(
        dice.between(0.45, 0.75),
        new SensorPlan.Motion(0, 0),
        dice.between(0.002, 0.006),
        dice.between(0.94, 1.02),
        0,
        new SensorPlan.Finish(dice.between(0, 0.35), 0));
  }
}
