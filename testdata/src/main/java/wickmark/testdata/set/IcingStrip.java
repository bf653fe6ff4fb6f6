package wickmark.testdata.set;

import java.util.List;
import wickmark.testdata.noise.Dice;
import wickmark.testdata.strip.Cut;
import wickmark.testdata.strip.Dye;
import wickmark.testdata.strip.DyeCupboard;
import wickmark.testdata.strip.LanePlan;
import wickmark.testdata.strip.Lead;
import wickmark.testdata.strip.PencilMark;
import wickmark.testdata.strip.SolventFront;
import wickmark.testdata.strip.SpotPlan;
import wickmark.testdata.strip.SpotShape;
import wickmark.testdata.strip.StripPlan;
import wickmark.testdata.strip.StripPlanBuilder;
import wickmark.testdata.truth.PointMm;
import wickmark.testdata.truth.Role;

/**
 * The invented strips of the bakery's icing: the colourings Yolk, Rose, Sky and Leaf (which is a
 * mixture of Yolk's and Sky's dye), and Icing, which holds those of Rose and Sky.
 */
final class IcingStrip {
  private static final double WIDTH_MM = 86;
  private static final double HEIGHT_MM = 130;
  private static final double BASELINE_MM = 20;
  private static final Dye YOLK = DyeCupboard.EGG;
  private static final Dye ROSE = DyeCupboard.ROSE;
  private static final Dye SKY = DyeCupboard.SKY;

  private IcingStrip() {}

  static StripPlan firstRun() {
    return run(41, 113.5, 0.3, new double[] {0.34, 0.56, 0.83});
  }

  static StripPlan secondRun() {
    return run(42, 108, -0.4, new double[] {0.355, 0.575, 0.845});
  }

  /** Paints one run; {@code rf} are those of Rose's, Yolk's and Sky's dye. */
  private static StripPlan run(long seed, double frontMm, double slopeDeg, double[] rf) {
    Dice dice = new Dice(seed);
    StripPlanBuilder builder =
        StripPlan.sheet(WIDTH_MM, HEIGHT_MM)
            .cut(Cut.SCISSORS)
            .baseline(BASELINE_MM, slopeDeg)
            .front(new SolventFront(frontMm, 0.2, 0.6, SolventFront.Mark.PENCIL, 0.012, 0.006))
            .seed(seed);
    lane(builder, "Yolk", Role.REFERENCE, 11, spot(YOLK, rf[1], 0.62, dice));
    lane(builder, "Rose", Role.REFERENCE, 27, spot(ROSE, rf[0], 0.70, dice));
    lane(builder, "Sky", Role.REFERENCE, 43, spot(SKY, rf[2], 0.66, dice));
    lane(
        builder,
        "Leaf",
        Role.REFERENCE,
        59,
        spot(YOLK, rf[1], 0.5, dice),
        spot(SKY, rf[2], 0.42, dice));
    lane(
        builder,
        "Icing",
        Role.UNKNOWN,
        75,
        spot(ROSE, rf[0], 0.42, dice),
        spot(SKY, rf[2], 0.28, dice));
    builder.mark(
        new PencilMark.Lettering("front", new PointMm(74, frontMm + 2.5), 3, 1, Lead.USUAL));
    return builder.build();
  }

  private static void lane(
      StripPlanBuilder builder, String name, Role role, double x, SpotPlan... spots) {
    builder.lane(new LanePlan(name, role, x, 0.3, List.of(spots)));
    builder.mark(
        new PencilMark.Lettering(name, new PointMm(x, BASELINE_MM - 7), 3.4, 0, Lead.USUAL));
    builder.mark(
        new PencilMark.Line(
            new PointMm(x, BASELINE_MM - 1.2), new PointMm(x, BASELINE_MM + 1.2), Lead.USUAL));
  }

  private static SpotPlan spot(Dye dye, double rf, double absorbance, Dice dice) {
    double along = dice.between(1.5, 2.0);
    SpotShape shape =
        new SpotShape(dice.between(2.1, 2.6), along, 0.15 * along * dice.normal(), 0, 0, 0.22);
    return SpotPlan.of(dye, rf + dice.between(-0.004, 0.004), absorbance, shape);
  }
}
