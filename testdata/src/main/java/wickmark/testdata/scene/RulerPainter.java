package wickmark.testdata.scene;

import java.util.Locale;
import wickmark.testdata.colour.LinearRgb;
import wickmark.testdata.noise.ValueNoise;

/** Paints rulers. Own coordinates: u along from the left end, v across from the lower edge, mm. */
final class RulerPainter {
  private static final double INCH_MM = 25.4;

  private final RulerPlan plan;
  private final Texture texture;
  private final ValueNoise noise;

  private RulerPainter(RulerPlan plan, double pxPerMm, long seed) {
    this.plan = plan;
    this.texture = new Texture(0, 0, plan.bodyMm(), plan.widthMm(), pxPerMm);
    this.noise = new ValueNoise(seed);
  }

  static Texture paint(RulerPlan plan, double pxPerMm, long seed) {
    RulerPainter painter = new RulerPainter(plan, pxPerMm, seed);
    painter.body();
    painter.graduate(plan.upper(), true);
    painter.graduate(plan.lower(), false);
    return painter.texture;
  }

  private void body() {
    for (int row = 0; row < texture.rows; row++) {
      for (int column = 0; column < texture.columns; column++) {
        double u = texture.x(column);
        double v = texture.y(row);
        LinearRgb colour = colour(u, v);
        double edge = Math.min(Math.min(v, plan.widthMm() - v), Math.min(u, plan.bodyMm() - u));
        texture.set(column, row, colour.red(), colour.green(), colour.blue(), opacity(v, edge));
      }
    }
  }

  private double opacity(double v, double edge) {
    if (plan.material() != RulerPlan.Material.TRANSPARENT) {
      return 1;
    }
    double bevel = Math.abs(v - plan.widthMm() + 9) < 0.25 ? 0.25 : 0;
    return edge < 0.5 ? 0.5 : 0.13 + bevel;
  }

  private LinearRgb colour(double u, double v) {
    double fine = noise.octaves(u * 2, v * 2, 2);
    double bevel = v > plan.widthMm() - 9 ? 1.03 : 1;
    double shade = bevel * (1 + 0.015 * noise.octaves(u / 30, v / 8, 2) + 0.006 * fine);
    return switch (plan.material()) {
      case YELLOW_PLASTIC -> LinearRgb.ofSrgb(246, 214, 74).times(shade);
      case GREEN_PLASTIC -> LinearRgb.ofSrgb(150, 206, 142).times(shade);
      case PINK_PLASTIC -> LinearRgb.ofSrgb(238, 150, 178).times(shade);
      case TRANSPARENT -> LinearRgb.ofSrgb(228, 238, 240);
      case WOOD -> wood(u, v);
      case STEEL -> {
        double brushed = 0.10 * noise.octaves(u / 14, v * 9, 3);
        double sheen = 0.30 * noise.octaves(u / 55, v / 60 + 8, 2);
        yield LinearRgb.ofSrgb(176, 179, 182).times(Math.max(0.2, 1 + brushed + sheen));
      }
      case TAPE -> {
        double weave = StrictMath.sin(7 * u) * StrictMath.sin(7 * v);
        yield LinearRgb.ofSrgb(240, 222, 150).times(1 + 0.03 * weave + 0.02 * fine);
      }
      case PAPER -> LinearRgb.ofSrgb(240, 240, 238).times(1 + 0.01 * fine);
      default -> LinearRgb.ofSrgb(236, 236, 231).times(shade);
    };
  }

  private LinearRgb wood(double u, double v) {
    double rings = 0.5 + 0.5 * StrictMath.sin(3.2 * v + 2.5 * noise.octaves(u / 60, v / 9, 2));
    double pores = Math.max(0, noise.at(u / 3.5, v * 5) - 0.45);
    double brass = plan.widthMm() - v < 0.8 ? 1.12 : 1;
    return LinearRgb.ofSrgb(222, 184, 122)
        .mixedWith(LinearRgb.ofSrgb(196, 150, 88), 0.55 * rings)
        .times(brass * (1 - 0.5 * pores));
  }

  private LinearRgb ink() {
    return switch (plan.material()) {
      case WOOD -> LinearRgb.ofSrgb(60, 40, 26);
      case STEEL -> LinearRgb.ofSrgb(38, 38, 40);
      case YELLOW_PLASTIC -> LinearRgb.ofSrgb(20, 22, 60);
      default -> LinearRgb.ofSrgb(28, 28, 30);
    };
  }

  private void graduate(RulerPlan.Graduation graduation, boolean upper) {
    if (graduation == RulerPlan.Graduation.BARE) {
      return;
    }
    TexturePen pen =
        new TexturePen(texture, ink(), plan.material() == RulerPlan.Material.WOOD ? 0.85 : 0.92);
    boolean inches = graduation == RulerPlan.Graduation.INCHES;
    boolean tape = graduation == RulerPlan.Graduation.TAPE;
    double step =
        inches ? INCH_MM / 16 : graduation == RulerPlan.Graduation.HALF_MILLIMETRES ? 0.5 : 1;
    int whole = inches ? 16 : (int) Math.round(10 / step);
    int count = (int) Math.floor(plan.lengthMm() / step + 1e-9);
    double thick = plan.material() == RulerPlan.Material.WOOD ? 0.26 : step < 1 ? 0.13 : 0.2;
    for (int i = 0; i <= count; i++) {
      double length = length(i, whole, graduation);
      double at = plan.startMm() + i * step;
      double outer = upper ? plan.widthMm() : 0;
      double inner = upper ? plan.widthMm() - length : length;
      pen.bar(at - thick / 2, Math.min(outer, inner), at + thick / 2, Math.max(outer, inner));
      // A tape's first number stands before its first long mark, so there is none at zero.
      if (i % whole == 0 && !(tape && i == 0)) {
        number(pen, graduation, i / whole, at - (tape ? 5 : 0), upper);
      }
    }
    String unit = inches ? "inch" : graduation == RulerPlan.Graduation.CENTIMETRES ? "cm" : "mm";
    if (tape) {
      return;
    }
    pen.words(unit, plan.startMm() + 5, upper ? plan.widthMm() - 12.5 : 12.5, 2, 0);
  }

  /**
   * Length of a graduation: whole units longest, halves in between; on inches also quarters and
   * eighths.
   */
  private double length(int index, int whole, RulerPlan.Graduation graduation) {
    boolean inches = graduation == RulerPlan.Graduation.INCHES;
    if (index % whole == 0) {
      return plan.longestMarkMm(graduation);
    }
    if (index % (whole / 2) == 0) {
      return inches ? 6.5 : 5;
    }
    if (inches) {
      return index % 4 == 0 ? 5 : index % 2 == 0 ? 3.8 : 2.8;
    }
    return whole == 20 && index % 2 == 1 ? 2.2 : 3.5;
  }

  private void number(
      TexturePen pen, RulerPlan.Graduation graduation, int value, double at, boolean upper) {
    boolean centimetres =
        graduation != RulerPlan.Graduation.MILLIMETRES
            && graduation != RulerPlan.Graduation.HALF_MILLIMETRES;
    String text = String.format(Locale.ROOT, "%d", centimetres ? value : 10 * value);
    boolean tape = graduation == RulerPlan.Graduation.TAPE;
    double off = tape ? 8 : graduation == RulerPlan.Graduation.INCHES ? 10.5 : 8.8;
    pen.words(text, at, upper ? plan.widthMm() - off : off, tape ? 4 : 2.6, upper ? 0 : 2);
  }
}
