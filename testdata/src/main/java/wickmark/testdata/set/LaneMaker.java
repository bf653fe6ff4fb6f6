package wickmark.testdata.set;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import wickmark.testdata.noise.Dice;
import wickmark.testdata.strip.Dye;
import wickmark.testdata.strip.DyeCupboard;
import wickmark.testdata.strip.LanePlan;
import wickmark.testdata.strip.SpotPlan;
import wickmark.testdata.strip.SpotShape;
import wickmark.testdata.truth.Role;

/**
 * Makes the lanes of a set's strip: references of one or two dyes, and unknowns mixed from them.
 */
final class LaneMaker {
  private final Set<StripFeature> features;
  private final Dice dice;
  private final double spacingMm;
  private final double frontMm;

  LaneMaker(Set<StripFeature> features, double spacingMm, double frontMm, Dice dice) {
    this.features = features;
    this.dice = dice;
    this.spacingMm = spacingMm;
    this.frontMm = frontMm;
  }

  /**
   * Returns the lanes at the given places; the last name is the unknown's, which may stand
   * anywhere.
   */
  List<LanePlan> lanes(List<String> names, double[] x) {
    if (features.contains(StripFeature.COLUMN)) {
      return List.of(lane(names.get(0), Role.REFERENCE, x[0], column()));
    }
    if (names.size() == 1) {
      return List.of(alone(names.get(0), x[0]));
    }
    int references = names.size() - 1;
    DyeChoice choice = new DyeChoice(references + 1, gap(), features, dice);
    List<List<Dye>> contents = contents(references, choice);
    int unknownAt = dice.chance(0.7) ? references : dice.below(names.size());
    List<LanePlan> lanes = new ArrayList<>();
    for (int i = 0, reference = 0; i < names.size(); i++) {
      boolean unknown = i == unknownAt;
      int content = unknown ? references : reference++;
      List<SpotPlan> spots = new ArrayList<>();
      for (Dye dye : contents.get(content)) {
        spots.add(spot(dye, choice.rf(dye), unknown));
      }
      residue(spots);
      lanes.add(lane(names.get(content), unknown ? Role.UNKNOWN : Role.REFERENCE, x[i], spots));
    }
    return lanes;
  }

  /** One sample with nothing to compare it with. */
  private LanePlan alone(String name, double x) {
    DyeChoice choice = new DyeChoice(2 + dice.below(3), gap(), features, dice);
    List<SpotPlan> spots = new ArrayList<>();
    choice.dyes().forEach(dye -> spots.add(spot(dye, choice.rf(dye), true)));
    residue(spots);
    return lane(name, Role.REFERENCE, x, spots);
  }

  /** Spots reach to about 2.2 standard deviations; two of them must not meet. */
  private double gap() {
    return Math.max(0.09, 2.3 * 2 * longest() / frontMm);
  }

  private double longest() {
    return features.contains(StripFeature.SAME_HUE) ? 1.15 : 2.0;
  }

  private List<List<Dye>> contents(int references, DyeChoice choice) {
    List<Dye> dyes = choice.dyes();
    List<List<Dye>> contents = new ArrayList<>();
    List<Dye> mixed = new ArrayList<>();
    for (int i = 0; i < references; i++) {
      List<Dye> reference = new ArrayList<>(List.of(dyes.get(i % dyes.size())));
      if (references > 2
          && i == references - 1
          && dice.chance(0.35)
          && !features.contains(StripFeature.TOUCHING)) {
        reference.add(dyes.get(0));
      }
      contents.add(reference);
      boolean pair =
          i < 2
              && (features.contains(StripFeature.TOUCHING)
                  || features.contains(StripFeature.SAME_HUE));
      if (pair || mixed.isEmpty() || dice.chance(0.5)) {
        reference.stream().filter(dye -> !mixed.contains(dye)).forEach(mixed::add);
      }
    }
    if (dyes.size() > references && dice.chance(0.3)) {
      mixed.add(dyes.get(references));
    }
    contents.add(mixed);
    return contents;
  }

  private SpotPlan spot(Dye dye, double rf, boolean unknown) {
    double low = unknown ? 0.16 : 0.25;
    double absorbance = low * StrictMath.pow(unknown ? 4.5 : 3.6, dice.unit());
    if (features.contains(StripFeature.FAINT) && unknown && dice.chance(0.6)) {
      absorbance = dice.between(0.065, 0.1);
    }
    if (features.contains(StripFeature.OVERLOADED) && dice.chance(0.5)) {
      absorbance = dice.between(0.9, 1.5);
    }
    double jitter = rf == 0 ? 0 : dice.between(-0.006, 0.006);
    double place = Math.max(0, Math.min(0.995, rf + jitter));
    return SpotPlan.of(dye, place, absorbance, shape(absorbance));
  }

  private SpotShape shape(double absorbance) {
    double widest = Math.min(2.9, spacingMm / 5.2);
    double across = dice.between(0.62, 1) * widest;
    double along = dice.between(0.6, 1) * longest();
    if (features.contains(StripFeature.BLEEDING)) {
      across = spacingMm * dice.between(0.19, 0.26);
    }
    SpotShape shape =
        new SpotShape(across, along, 0.12 * along * dice.normal(), 0, 0, dice.between(0.12, 0.32));
    if (features.contains(StripFeature.TAILS) && dice.chance(0.6)) {
      shape = shape.withTail(dice.between(2.5, 7));
    }
    if (features.contains(StripFeature.CRESCENTS) && dice.chance(0.7)) {
      shape = shape.withCrescent(along * dice.between(0.45, 0.8));
    }
    if (features.contains(StripFeature.OVERLOADED) && absorbance > 0.85) {
      shape = shape.withFlatness(dice.between(2, 4));
    }
    return shape;
  }

  private void residue(List<SpotPlan> spots) {
    double chance = features.contains(StripFeature.RESIDUES) ? 0.8 : 0.12;
    if (dice.chance(chance)) {
      Dye dye = dice.chance(0.5) ? DyeCupboard.SLATE : spots.get(0).dye();
      spots.add(SpotPlan.residue(dye, dice.between(0.1, 0.4), dice.between(0.7, 1.3)));
    }
    if (features.contains(StripFeature.WASHED_OUT)) {
      SpotShape smear = new SpotShape(spacingMm * 0.3, 2.2, -0.3, 0, 0, 0.4);
      spots.add(new SpotPlan(spots.get(0).dye(), 0.0, dice.between(0.08, 0.16), smear, true));
    }
  }

  /** The dyes of a felt-tip black, from the origin up, running into one another. */
  private List<SpotPlan> column() {
    List<Dye> order =
        dice.chance(0.5)
            ? List.of(
                DyeCupboard.EGG,
                DyeCupboard.ORANGE,
                DyeCupboard.RASPBERRY,
                DyeCupboard.VIOLET,
                DyeCupboard.SKY)
            : List.of(
                DyeCupboard.FUCHSIA,
                DyeCupboard.ORANGE,
                DyeCupboard.LEMON,
                DyeCupboard.LAGOON,
                DyeCupboard.INK);
    int count = 3 + dice.below(3);
    double step = dice.between(0.13, 0.17);
    double first = dice.between(0.12, 0.9 - step * (count - 1));
    List<SpotPlan> spots = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      double along = step * frontMm / dice.between(2.7, 3.3);
      SpotShape shape =
          new SpotShape(dice.between(2.2, 3.2), along, 0.5, 0, 0, dice.between(0.1, 0.2));
      spots.add(SpotPlan.of(order.get(i), first + i * step, dice.between(0.35, 0.9), shape));
    }
    if (dice.chance(0.5)) {
      spots.add(SpotPlan.residue(DyeCupboard.SLATE, dice.between(0.15, 0.5), 1.2));
    }
    return spots;
  }

  private LanePlan lane(String name, Role role, double x, List<SpotPlan> spots) {
    double drift =
        features.contains(StripFeature.DRIFT) ? dice.between(-3, 3) : dice.between(-0.7, 0.7);
    return new LanePlan(name, role, x, drift, spots);
  }
}
