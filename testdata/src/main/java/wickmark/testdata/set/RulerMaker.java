package wickmark.testdata.set;

import java.util.List;
import java.util.Set;
import wickmark.testdata.noise.Dice;
import wickmark.testdata.scene.RulerPlan;
import wickmark.testdata.scene.RulerPlan.Graduation;
import wickmark.testdata.scene.RulerPlan.Material;

/** Picks a ruler. */
final class RulerMaker {
  private static final List<Material> COMMON =
      List.of(
          Material.WHITE_PLASTIC,
          Material.WHITE_PLASTIC,
          Material.WHITE_PLASTIC,
          Material.WOOD,
          Material.STEEL,
          Material.TRANSPARENT,
          Material.YELLOW_PLASTIC);
  private static final List<Material> COLOURED =
      List.of(Material.YELLOW_PLASTIC, Material.GREEN_PLASTIC, Material.PINK_PLASTIC);

  private final Set<SceneFeature> features;
  private final Dice dice;

  RulerMaker(Set<SceneFeature> features, Dice dice) {
    this.features = features;
    this.dice = dice;
  }

  RulerPlan ruler() {
    if (features.contains(SceneFeature.TAPE_MEASURE)) {
      return new RulerPlan(
          Material.TAPE, 600, dice.between(15, 20), 0.4, Graduation.TAPE, Graduation.BARE);
    }
    Material material = material();
    double length = dice.pick(List.of(150.0, 200.0, 300.0, 300.0));
    double width = material == Material.STEEL ? dice.between(25, 32) : dice.between(25, 38);
    double thickness = features.contains(SceneFeature.THICK_RULER) ? 3 : thickness(material);
    Graduation upper = Graduation.CENTIMETRES;
    Graduation lower =
        dice.pick(
            List.of(
                Graduation.BARE,
                Graduation.CENTIMETRES,
                Graduation.INCHES,
                Graduation.MILLIMETRES));
    if (material == Material.STEEL) {
      upper = dice.pick(List.of(Graduation.MILLIMETRES, Graduation.HALF_MILLIMETRES));
      lower = dice.pick(List.of(Graduation.MILLIMETRES, Graduation.INCHES));
    }
    if (features.contains(SceneFeature.INCH_RULER)) {
      upper = Graduation.INCHES;
      lower = Graduation.CENTIMETRES;
    }
    return new RulerPlan(material, length, width, thickness, upper, lower);
  }

  private double thickness(Material material) {
    return switch (material) {
      case STEEL -> dice.between(0.5, 1);
      case PAPER -> 0.2;
      case WOOD -> dice.between(1, 2.6);
      case TRANSPARENT -> dice.between(0.3, 1.2);
      default -> dice.between(0.6, 1.8);
    };
  }

  private Material material() {
    if (features.contains(SceneFeature.WHITE_RULER)) {
      return Material.WHITE_PLASTIC;
    } else if (features.contains(SceneFeature.STEEL_RULER)) {
      return Material.STEEL;
    } else if (features.contains(SceneFeature.WOODEN_RULER)) {
      return Material.WOOD;
    } else if (features.contains(SceneFeature.TRANSPARENT_RULER)) {
      return Material.TRANSPARENT;
    } else if (features.contains(SceneFeature.COLOURED_RULER)) {
      return dice.pick(COLOURED);
    } else if (features.contains(SceneFeature.PAPER_RULER)) {
      return Material.PAPER;
    }
    return dice.pick(COMMON);
  }
}
