package wickmark.testdata.set;

import java.util.List;
import java.util.Set;
import wickmark.testdata.lettering.StrokeFont;
import wickmark.testdata.noise.Dice;
import wickmark.testdata.strip.Baseline;
import wickmark.testdata.strip.LanePlan;
import wickmark.testdata.strip.Lead;
import wickmark.testdata.strip.PencilMark;
import wickmark.testdata.strip.SolventFront;
import wickmark.testdata.strip.StripPlanBuilder;
import wickmark.testdata.truth.PointMm;

/** What is written in pencil on a set's strip: names, marks of the origins, remarks. */
final class Writing {
  private static final int DOT = 1;
  private static final int TICK = 2;
  private static final int CROSS = 3;

  private final Set<StripFeature> features;
  private final StripPlanBuilder builder;
  private final Room room;
  private final Dice dice;

  Writing(Set<StripFeature> features, StripPlanBuilder builder, Room room, Dice dice) {
    this.features = features;
    this.builder = builder;
    this.room = room;
    this.dice = dice;
  }

  /** The sheet's size, and how far its lanes are apart. */
  record Room(double widthMm, double heightMm, double spacingMm) {}

  private boolean has(StripFeature feature) {
    return features.contains(feature);
  }

  /** Writes the lanes' names and marks where the samples were put. */
  void lanes(Baseline baseline, SolventFront front, List<LanePlan> lanes, double[] x) {
    double tall = Math.min(dice.between(3.4, 6), room.spacingMm / 3);
    double gapBelow = dice.between(2, 3.5);
    boolean below = !has(StripFeature.NAMELESS) && !has(StripFeature.NAMES_AT_FRONT);
    boolean above = has(StripFeature.NAMES_AT_FRONT) || has(StripFeature.NAMES_AT_BOTH_ENDS);
    int mark = above ? dice.pick(List.of(DOT, CROSS)) : dice.below(4);
    for (int i = 0; i < lanes.size(); i++) {
      double y =
          baseline.heightMm()
              + StrictMath.tan(StrictMath.toRadians(baseline.slopeDeg()))
                  * (x[i] - room.widthMm / 2);
      String name = lanes.get(i).name();
      double fit = Math.min(tall, 0.85 * room.spacingMm / (0.9 * Math.max(1, name.length())));
      if (below) {
        name(name, x[i], Math.max(1, y - gapBelow - fit), fit, baseline.lead());
      }
      if (above) {
        double edge = front.heightAt(x[i], room.widthMm);
        double fitAbove = Math.min(fit, room.heightMm - edge - 4);
        name(name, x[i], edge + dice.between(1.5, 2.5), fitAbove, baseline.lead());
      }
      origin(mark, x[i], y, baseline.lead());
    }
  }

  private void name(String name, double x, double y, double tall, Lead lead) {
    PointMm at = new PointMm(x + dice.between(-0.8, 0.8), y);
    builder.mark(new PencilMark.Lettering(name, at, tall, dice.between(-5, 5), lead));
  }

  /** A dot, a tick or a cross where the sample was put; or nothing. */
  private void origin(int mark, double x, double y, Lead lead) {
    double half = dice.between(0.9, 1.6);
    if (mark == DOT) {
      builder.mark(
          new PencilMark.Line(
              new PointMm(x - 0.15, y),
              new PointMm(x + 0.15, y),
              new Lead(lead.absorbance() * 1.2, 0.9, 0.2)));
    } else if (mark >= TICK) {
      builder.mark(
          new PencilMark.Line(new PointMm(x, y - half), new PointMm(x + 0.1, y + half), lead));
    }
    if (mark == CROSS) {
      builder.mark(
          new PencilMark.Line(new PointMm(x - half, y), new PointMm(x + half, y + 0.1), lead));
    }
  }

  /** Writes what people note beside baseline and front. */
  void remarks(double base, double frontTo) {
    if (has(StripFeature.FRONT_OFF_TOP)) {
      return;
    }
    double above = room.heightMm - frontTo;
    boolean free = !has(StripFeature.NAMES_AT_FRONT) && !has(StripFeature.NAMES_AT_BOTH_ENDS);
    if (free && above > 7 && dice.chance(0.5) && room.widthMm > 45) {
      String word = dice.pick(List.of("front", "SF", "solvent front", "s.f."));
      double tall = Math.min(3.4, above / 2.6);
      double half = tall * StrokeFont.width(word) / 2 + 2;
      double x =
          Math.max(
              half,
              Math.min(
                  room.widthMm - half,
                  dice.chance(0.5) ? room.widthMm * 0.25 : room.widthMm * 0.75));
      builder.mark(
          new PencilMark.Lettering(
              word, new PointMm(x, frontTo + 2), tall, dice.between(-3, 3), Lead.USUAL));
    }
    if (has(StripFeature.REMARKS)) {
      String word =
          dice.pick(List.of("group 4", "water", "salt water", "run 2", "12 min", "Rf = d / f"));
      double x = room.widthMm * dice.between(0.35, 0.65);
      builder.mark(
          new PencilMark.Lettering(word, new PointMm(x, 1.5), 3, dice.between(-3, 3), Lead.USUAL));
      double side = dice.chance(0.5) ? 2.6 : room.widthMm - 2.2;
      builder.mark(
          new PencilMark.Lettering(
              "75 mm", new PointMm(side, base + 0.45 * (frontTo - base)), 2.6, 90, Lead.HARD));
    }
  }
}
