package wickmark.testdata.set;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import wickmark.testdata.colour.LinearRgb;
import wickmark.testdata.noise.Dice;
import wickmark.testdata.strip.Baseline;
import wickmark.testdata.strip.Blemish;
import wickmark.testdata.strip.Cut;
import wickmark.testdata.strip.DyeCupboard;
import wickmark.testdata.strip.Figure;
import wickmark.testdata.strip.LanePlan;
import wickmark.testdata.strip.Lead;
import wickmark.testdata.strip.Paper;
import wickmark.testdata.strip.PencilMark;
import wickmark.testdata.strip.SolventFront;
import wickmark.testdata.strip.SpotPlan;
import wickmark.testdata.strip.StripPlan;
import wickmark.testdata.strip.StripPlanBuilder;
import wickmark.testdata.truth.PointMm;

/** Makes a strip of a set by chance, with the features that are asked for. */
final class StripMaker {
  private final Set<StripFeature> features;
  private final Dice dice;
  private final List<String> names;
  private final double spacing;
  private final double width;
  private final double height;

  StripMaker(Set<StripFeature> features, long seed) {
    this.features = features;
    this.dice = new Dice(seed);
    boolean ribbon = has(StripFeature.RIBBON);
    int lanes = ribbon ? 1 + dice.below(2) : has(StripFeature.WIDE_SHEET) ? 6 : 3 + dice.below(3);
    this.names = new NameMaker(dice).names(has(StripFeature.COLUMN) ? 1 : lanes);
    this.spacing = ribbon ? dice.between(13, 17) : dice.between(13, 18);
    this.width =
        ribbon
            ? Math.max(14, spacing * names.size() + dice.between(0, 8))
            : spacing * (lanes + dice.between(0.2, 0.6));
    this.height = ribbon ? dice.between(130, 210) : dice.between(98, 148);
  }

  /** Returns the strip. */
  StripPlan plan() {
    Figure figure = figure();
    double base = figure.endMm() + dice.between(14, 24);
    double frontTo = frontTo();
    StripPlanBuilder builder =
        StripPlan.sheet(width, height).paper(paper()).cut(cut().to(figure)).seed(dice.seed());
    Baseline baseline = baseline(base);
    SolventFront front = front(frontTo);
    builder.baseline(baseline).front(front);
    if (has(StripFeature.BLANK)) {
      builder.front(new SolventFront(height + 40, 0, 0, SolventFront.Mark.NONE, 0, 0));
      return builder.baseline(new Baseline(base, 0, 0, width, Lead.HARD, false)).build();
    }
    double[] x = places();
    List<LanePlan> lanes = new LaneMaker(features, spacing, frontTo - base, dice).lanes(names, x);
    lanes.forEach(builder::lane);
    Writing writing =
        new Writing(features, builder, new Writing.Room(width, height, spacing), dice);
    writing.lanes(baseline, front, lanes, x);
    writing.remarks(base, frontTo);
    rings(builder, lanes, base, frontTo);
    blemishes(builder, lanes, base, frontTo);
    return builder.build();
  }

  private boolean has(StripFeature feature) {
    return features.contains(feature);
  }

  private double frontTo() {
    if (has(StripFeature.FRONT_OFF_TOP)) {
      return height + 8;
    }
    if (has(StripFeature.HIGH_FRONT)) {
      return height - dice.between(12, 15);
    }
    boolean named = has(StripFeature.NAMES_AT_FRONT) || has(StripFeature.NAMES_AT_BOTH_ENDS);
    return height - dice.between(named ? 12 : 9, 26);
  }

  private Figure figure() {
    if (has(StripFeature.TRAPEZOID)) {
      double narrower = width * dice.between(0.02, 0.08);
      double left = narrower * dice.unit();
      return Figure.trapezoid(left, narrower - left);
    } else if (has(StripFeature.POINTED_END)) {
      return Figure.pointed(width * dice.between(0.35, 0.6));
    } else if (has(StripFeature.ROUND_END)) {
      return Figure.rounded(width * dice.between(0.15, 0.3));
    }
    return Figure.RECTANGLE;
  }

  private double[] places() {
    double[] x = new double[names.size()];
    double first = (width - spacing * (names.size() - 1)) / 2;
    for (int i = 0; i < x.length; i++) {
      x[i] = first + i * spacing + dice.between(-0.6, 0.6);
    }
    return x;
  }

  private Paper paper() {
    if (has(StripFeature.COFFEE_PAPER)) {
      return Paper.COFFEE_FILTER;
    } else if (has(StripFeature.CREAM_PAPER)) {
      return Paper.CREAM;
    } else if (has(StripFeature.BLUISH_PAPER)) {
      return Paper.BLUISH;
    } else if (has(StripFeature.KITCHEN_PAPER)) {
      return Paper.KITCHEN;
    } else if (has(StripFeature.PLATE)) {
      return Paper.PLATE;
    }
    return dice.pick(List.of(Paper.FILTER, Paper.FILTER, Paper.CHROMATOGRAPHY));
  }

  private Cut cut() {
    if (has(StripFeature.ROUND_PAPER)) {
      return new Cut(0.05, 0.25, 0.5, Math.min(4.5, width * width / (8 * 62.5)));
    }
    return has(StripFeature.HAND_CUT)
        ? Cut.HASTY
        : has(StripFeature.PLATE)
            ? Cut.GUILLOTINE
            : dice.pick(List.of(Cut.GUILLOTINE, Cut.SCISSORS));
  }

  private Baseline baseline(double base) {
    double slope =
        has(StripFeature.SLOPED_BASELINE)
            ? dice.between(1.0, 1.8) * (dice.chance(0.5) ? 1 : -1)
            : 0.3 * dice.normal();
    Lead lead =
        has(StripFeature.FAINT_BASELINE)
            ? Lead.HARD.withAbsorbance(0.13)
            : dice.pick(List.of(Lead.HARD, Lead.USUAL, Lead.USUAL, Lead.SOFT));
    boolean short1 = dice.chance(0.2);
    double from = short1 ? dice.between(2, 5) : dice.between(0, 1);
    double to = width - (short1 ? dice.between(2, 5) : dice.between(0, 1));
    return new Baseline(
        base,
        Math.max(-1.9, Math.min(1.9, slope)),
        from,
        to,
        lead,
        !has(StripFeature.INK_BASELINE));
  }

  private SolventFront front(double at) {
    SolventFront.Mark mark =
        has(StripFeature.TICKED_FRONT) || has(StripFeature.LONG_TICKS)
            ? SolventFront.Mark.TICKS
            : has(StripFeature.UNMARKED_FRONT) ? SolventFront.Mark.NONE : SolventFront.Mark.PENCIL;
    double slope =
        has(StripFeature.SLANTED_FRONT)
            ? dice.between(1.5, 3) * (dice.chance(0.5) ? 1 : -1)
            : 0.3 * dice.normal();
    double bow = has(StripFeature.CURVED_FRONT) ? dice.between(1.5, 3.5) : 0;
    if (has(StripFeature.TIDE_ABOVE_FRONT) || has(StripFeature.TIDE_BELOW_FRONT)) {
      // What the solvent left lies elsewhere: see the tide mark among the blemishes.
      return new SolventFront(at, slope, bow, mark, 0, 0);
    }
    double tide = mark == SolventFront.Mark.NONE ? dice.between(0.05, 0.11) : dice.between(0, 0.02);
    SolventFront front = new SolventFront(at, slope, bow, mark, tide, dice.between(0, 0.012));
    return has(StripFeature.LONG_TICKS)
        ? front.withTicks(Math.min(0.36 * width, dice.between(12, 20)))
        : front;
  }

  /** Rings round spots and strokes through their middles, as people draw to measure. */
  private void rings(StripPlanBuilder builder, List<LanePlan> lanes, double base, double frontTo) {
    for (LanePlan lane : lanes) {
      for (SpotPlan spot : lane.spots()) {
        PointMm at =
            new PointMm(
                lane.xMm() + lane.driftMm() * spot.rf(), base + spot.rf() * (frontTo - base));
        double across = 2.3 * spot.shape().acrossMm();
        if (has(StripFeature.RINGS) && !spot.residue() && dice.chance(0.8)) {
          builder.mark(new PencilMark.Ring(at, across, 2.3 * spot.shape().alongMm(), Lead.HARD));
        }
        if (has(StripFeature.STROKES) && !spot.residue() && dice.chance(0.8)) {
          builder.mark(
              new PencilMark.Line(
                  new PointMm(at.x() - across, at.y()),
                  new PointMm(at.x() + across, at.y() + dice.between(-0.3, 0.3)),
                  Lead.HARD));
        }
      }
    }
  }

  private void blemishes(
      StripPlanBuilder builder, List<LanePlan> lanes, double base, double frontTo) {
    if (has(StripFeature.STAINED)) {
      PointMm at = new PointMm(width * dice.between(0.1, 0.9), dice.between(0.3, 0.9) * height);
      builder.blemish(
          new Blemish.Stain(at, dice.between(7, 14), new LinearRgb(0.03, 0.045, 0.075)));
    }
    if (has(StripFeature.TIDE_ABOVE_FRONT) || has(StripFeature.TIDE_BELOW_FRONT)) {
      // The solvent creeps on after its front was marked; or its dirt dries before it gets there.
      double above =
          has(StripFeature.TIDE_ABOVE_FRONT) ? dice.between(2, 3.5) : -dice.between(1.6, 2.4);
      builder.blemish(
          new Blemish.TideMark(
              above, dice.between(0.8, 1.6), dice.between(0.07, 0.14), dice.between(0, 0.012)));
    }
    if (has(StripFeature.HOLED)) {
      builder.blemish(
          new Blemish.Hole(
              new PointMm(width * dice.between(0.4, 0.6), height - dice.between(4.5, 6)), 2.5));
    }
    if (has(StripFeature.CREASED)) {
      double y = Math.max(frontTo + 2, height * 0.9);
      builder.blemish(
          new Blemish.Crease(
              new PointMm(0, y + 0.4), new PointMm(width, y - 0.4), dice.between(0.05, 0.09)));
    }
    if (has(StripFeature.TRIMMED)) {
      builder.blemish(
          new Blemish.TrimmedCorner(dice.chance(0.5), dice.chance(0.7), dice.between(4, 8)));
    }
    if (has(StripFeature.TAPED)) {
      builder.blemish(
          new Blemish.Tape(
              new PointMm(width * 0.3, height - dice.between(6, 9)),
              new PointMm(width * 0.62, height + 2)));
    }
    if (has(StripFeature.INK_BASELINE)) {
      builder.blemish(
          new Blemish.RunningLine(
              base, dice.between(5, 12), dice.between(0.3, 0.5), DyeCupboard.INK));
    }
    if (has(StripFeature.STREAKS)) {
      LanePlan lane = dice.pick(lanes);
      SpotPlan spot = lane.spots().get(0);
      builder.blemish(
          new Blemish.Streak(
              lane.xMm(),
              base,
              base + Math.max(0.2, spot.rf()) * (frontTo - base),
              dice.between(0.03, 0.06),
              spot.dye()));
    }
  }

  /** Returns dots of ink that never saw the solvent, on a strip with its own baseline. */
  static StripPlan unused(double width, double height, long seed) {
    Dice dice = new Dice(seed);
    StripPlanBuilder builder = StripPlan.sheet(width, height).cut(Cut.SCISSORS).seed(dice.seed());
    builder.baseline(18, dice.between(-0.5, 0.5));
    builder.front(new SolventFront(height + 50, 0, 0, SolventFront.Mark.NONE, 0, 0));
    List<String> letters = new ArrayList<>(List.of("A", "B", "C", "D"));
    int dots = Math.max(1, (int) (width / 16));
    for (int i = 0; i < Math.min(4, dots); i++) {
      double x = width * (i + 0.5) / Math.min(4, dots);
      builder.namedLane(
          LanePlan.reference(
              letters.get(i),
              x,
              SpotPlan.residue(
                  dice.pick(DyeCupboard.all()), dice.between(0.5, 1.0), dice.between(0.8, 1.3))));
    }
    return builder.build();
  }
}
