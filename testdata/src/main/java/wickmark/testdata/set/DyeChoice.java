package wickmark.testdata.set;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import wickmark.testdata.noise.Dice;
import wickmark.testdata.strip.Dye;
import wickmark.testdata.strip.DyeCupboard;

/** Which dyes are run in a set's strip, and how far each of them goes in its solvent. */
final class DyeChoice {
  private static final List<Dye> BRIGHT =
      List.of(
          DyeCupboard.LEMON,
          DyeCupboard.EGG,
          DyeCupboard.ORANGE,
          DyeCupboard.CORAL,
          DyeCupboard.RASPBERRY,
          DyeCupboard.ROSE,
          DyeCupboard.FUCHSIA,
          DyeCupboard.PLUM,
          DyeCupboard.VIOLET,
          DyeCupboard.INK,
          DyeCupboard.SKY,
          DyeCupboard.LAGOON,
          DyeCupboard.LEAF);
  private static final List<Dye> DULL =
      List.of(
          DyeCupboard.SLATE,
          DyeCupboard.COCOA,
          DyeCupboard.MOSS,
          DyeCupboard.PLUM,
          DyeCupboard.EGG,
          DyeCupboard.INK);
  private static final double LOWEST = 0.1;
  private static final double HIGHEST = 0.93;

  private final Dice dice;
  private final Set<StripFeature> features;
  private final double gap;
  private final Map<Dye, Double> rf = new LinkedHashMap<>();

  /**
   * @param gap least difference of Rf between two dyes, so that their spots stay apart
   */
  DyeChoice(int count, double gap, Set<StripFeature> features, Dice dice) {
    this.dice = dice;
    this.features = features;
    this.gap = gap;
    List<Dye> shelf = new ArrayList<>(features.contains(StripFeature.DULL_DYES) ? DULL : BRIGHT);
    pairs(shelf);
    while (rf.size() < count && !shelf.isEmpty()) {
      Dye dye = shelf.remove(dice.below(shelf.size()));
      double place = freePlace();
      if (Double.isNaN(place)) {
        return;
      }
      rf.put(dye, place);
    }
    extremes();
  }

  /** Dyes that lie close together on purpose. */
  private void pairs(List<Dye> shelf) {
    if (features.contains(StripFeature.TOUCHING)) {
      boolean warm = dice.chance(0.5);
      put(
          shelf,
          warm ? DyeCupboard.LEMON : DyeCupboard.SKY,
          warm ? DyeCupboard.ORANGE : DyeCupboard.VIOLET,
          0.55 * gap);
    }
    if (features.contains(StripFeature.SAME_HUE)) {
      boolean red = dice.chance(0.5);
      put(
          shelf,
          red ? DyeCupboard.RASPBERRY : DyeCupboard.INK,
          red ? DyeCupboard.CORAL : DyeCupboard.SKY,
          0.04);
    }
  }

  private void put(List<Dye> shelf, Dye lower, Dye upper, double apart) {
    double place = dice.between(0.3, 0.7);
    rf.put(lower, place);
    rf.put(upper, place + apart);
    shelf.remove(lower);
    shelf.remove(upper);
  }

  private double freePlace() {
    for (int tries = 0; tries < 300; tries++) {
      double place = dice.between(LOWEST, HIGHEST);
      if (rf.values().stream().allMatch(other -> Math.abs(other - place) >= gap)) {
        return place;
      }
    }
    return Double.NaN;
  }

  private void extremes() {
    List<Dye> dyes = dyes();
    if (features.contains(StripFeature.FRONT_RUNNER)) {
      Dye highest = dyes.stream().max((a, b) -> Double.compare(rf(a), rf(b))).orElseThrow();
      rf.put(highest, dice.between(0.975, 0.995));
    }
    if (features.contains(StripFeature.STAYER)) {
      Dye lowest = dyes.stream().min((a, b) -> Double.compare(rf(a), rf(b))).orElseThrow();
      rf.put(lowest, 0.0);
    }
  }

  /** Returns the dyes in the order of their choice. */
  List<Dye> dyes() {
    return List.copyOf(rf.keySet());
  }

  double rf(Dye dye) {
    return rf.getOrDefault(dye, 0.5);
  }
}
