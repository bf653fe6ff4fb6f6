package wickmark.testdata.scene;

import java.util.List;
import java.util.stream.IntStream;
import wickmark.testdata.colour.LinearRgb;
import wickmark.testdata.noise.Dice;
import wickmark.testdata.noise.ValueNoise;

/** Paints desks, in world millimetres. */
final class DeskPainter {
  private final Desk desk;
  private final ValueNoise noise;
  private final ValueNoise other;
  private final double turnCos;
  private final double turnSin;
  private final double shift;

  private DeskPainter(Desk desk, long seed) {
    Dice dice = new Dice(seed);
    this.desk = desk;
    this.noise = new ValueNoise(dice.seed());
    this.other = new ValueNoise(dice.seed());
    double turn = StrictMath.toRadians(dice.pick(List.of(0.0, 90.0)) + dice.between(-12, 12));
    this.turnCos = StrictMath.cos(turn);
    this.turnSin = StrictMath.sin(turn);
    this.shift = dice.between(0, 400);
  }

  static Texture paint(Desk desk, double[] box, double pxPerMm, long seed) {
    DeskPainter painter = new DeskPainter(desk, seed);
    Texture texture = new Texture(box[0], box[1], box[2], box[3], pxPerMm);
    IntStream.range(0, texture.rows)
        .parallel()
        .forEach(
            row -> {
              for (int column = 0; column < texture.columns; column++) {
                LinearRgb colour = painter.turned(texture.x(column), texture.y(row));
                texture.set(column, row, colour.red(), colour.green(), colour.blue(), 1);
              }
            });
    return texture;
  }

  private LinearRgb turned(double x, double y) {
    return colour(turnCos * x + turnSin * y + shift, turnCos * y - turnSin * x + shift);
  }

  private LinearRgb colour(double x, double y) {
    return switch (desk) {
      case PINE -> wood(x, y, LinearRgb.ofSrgb(226, 190, 140), LinearRgb.ofSrgb(198, 150, 96), 95);
      case OAK -> wood(x, y, LinearRgb.ofSrgb(178, 134, 88), LinearRgb.ofSrgb(138, 96, 58), 130);
      case DARK_WOOD -> wood(x, y, LinearRgb.ofSrgb(96, 62, 42), LinearRgb.ofSrgb(62, 38, 26), 110);
      case GREY_LAMINATE -> speckled(x, y, LinearRgb.ofSrgb(150, 150, 148), 0.10);
      case SAND_LAMINATE -> speckled(x, y, LinearRgb.ofSrgb(196, 182, 160), 0.09);
      case WHITE_BENCH ->
          LinearRgb.ofSrgb(233, 233, 230)
              .times(
                  1
                      + 0.012 * noise.octaves(x / 40, y / 40, 3)
                      + 0.008 * other.octaves(x / 0.8, y / 0.8, 2));
      case DARK_BENCH -> slate(x, y);
      case TILES -> tiles(x, y);
      case GREEN_MAT -> mat(x, y);
      case SQUARED_PAPER -> printed(x, y, Math.min(near(x, 5), near(y, 5)));
      case RULED_PAPER -> printed(x, y, near(y, 8));
      default -> cloth(x, y);
    };
  }

  private LinearRgb wood(double x, double y, LinearRgb light, LinearRgb dark, double plankMm) {
    double plank = Math.floor(y / plankMm);
    double tone = noise.lattice((int) plank, 77);
    double inY = y - plank * plankMm;
    double gap = Math.min(inY, plankMm - inY);
    double warp = 9 * noise.octaves(x / 160, y / 45 + 31 * tone, 3);
    double rings =
        0.5 + 0.5 * StrictMath.sin((y + warp) * 0.62 + 1.1 * noise.octaves(x / 38, y / 5, 2));
    double fibre = other.octaves(x / 22, y * 1.4, 3);
    double pore = Math.max(0, other.at(x / 7 + 99, y * 3.1) - 0.5);
    double share = Math.max(0, Math.min(1, 0.35 + 0.35 * rings + 0.28 * fibre + 0.2 * tone));
    double seam = gap < 0.5 ? 0.35 + 1.3 * gap : 1;
    return light.mixedWith(dark, share).times((1 - 0.55 * pore) * seam);
  }

  private LinearRgb speckled(double x, double y, LinearRgb base, double strength) {
    double fine = other.octaves(x / 0.7, y / 0.7, 2);
    double dots = 1.3 * chip(x, y, 1.7, 0) + 0.8 * chip(x + 0.9, y + 0.6, 1.1, 500);
    double slow = noise.octaves(x / 60, y / 60, 2);
    return base.times(1 + strength * (0.6 * fine + dots + 0.3 * slow));
  }

  /**
   * Roundish chips strewn over the plane, at most one to a cell: darker or lighter than the rest.
   */
  private double chip(double x, double y, double cellMm, int which) {
    int column = (int) Math.floor(x / cellMm);
    int row = (int) Math.floor(y / cellMm);
    double tone = noise.lattice(column + which, row);
    if (Math.abs(tone) < 0.45) {
      return 0;
    }
    double radius = cellMm * (0.2 + 0.12 * noise.lattice(column + which, row + 7000));
    double offX = x - (column + 0.5 + 0.2 * noise.lattice(column + which, row + 14000)) * cellMm;
    double offY = y - (row + 0.5 + 0.2 * noise.lattice(column + which, row + 21000)) * cellMm;
    double squashed = 1 + 0.5 * noise.lattice(column + which, row + 28000);
    double off =
        Math.sqrt(offX * offX * squashed + offY * offY / squashed)
            + 0.12 * other.at(2.5 * x, 2.5 * y);
    return (tone < 0 ? -1 : 0.8) * Math.max(0, Math.min(1, (radius - off) / 0.1 + 0.5));
  }

  private LinearRgb slate(double x, double y) {
    double dust = Math.max(0, other.at(x / 0.9, y / 0.9) - 0.72);
    double scratch = Math.max(0, noise.octaves(x / 90 + y / 700, (y + 0.4 * x) * 1.1, 2) - 0.62);
    double slow =
        1 + 0.25 * noise.octaves(x / 50, y / 50, 3) + 0.15 * other.octaves(x / 1.3, y / 1.3, 2);
    return LinearRgb.ofSrgb(42, 43, 46).times(slow + 5 * dust + 1.6 * scratch);
  }

  private LinearRgb tiles(double x, double y) {
    double side = 97;
    double gapX =
        Math.min(x - side * Math.floor(x / side), side - (x - side * Math.floor(x / side)));
    double gapY =
        Math.min(y - side * Math.floor(y / side), side - (y - side * Math.floor(y / side)));
    double gap = Math.min(gapX, gapY);
    double tone = noise.lattice((int) Math.floor(x / side), (int) Math.floor(y / side));
    LinearRgb glaze =
        LinearRgb.ofSrgb(208, 214, 210)
            .times(1 + 0.05 * tone + 0.02 * noise.octaves(x / 30, y / 30, 2));
    LinearRgb grout = LinearRgb.ofSrgb(158, 152, 142).times(1 + 0.12 * other.octaves(x, y, 2));
    double round = Math.max(0, Math.min(1, (gap - 1.2) / 0.5));
    double rim = 1 + 0.12 * StrictMath.exp(-(gap - 1.2) * (gap - 1.2) / 2);
    return grout.mixedWith(glaze.times(rim), round);
  }

  private LinearRgb mat(double x, double y) {
    LinearRgb base =
        LinearRgb.ofSrgb(38, 104, 84).times(1 + 0.06 * other.octaves(x / 0.6, y / 0.6, 2));
    double line = Math.min(near(x, 10), near(y, 10));
    double bold = Math.min(near(x, 50), near(y, 50));
    double wear = 0.75 + 0.25 * noise.octaves(x / 18, y / 18, 2);
    double share = Math.max(cover(line, 0.12) * 0.45, cover(bold, 0.2) * 0.75) * wear;
    double cut = Math.max(0, noise.octaves((x + 2 * y) * 0.9, (2 * x - y) / 110, 2) - 0.6);
    return base.mixedWith(LinearRgb.ofSrgb(206, 214, 150), share).times(1 - 0.7 * cut);
  }

  /** Exercise paper, with blue or grey lines a little over a fifth of a millimetre wide. */
  private LinearRgb printed(double x, double y, double offLineMm) {
    LinearRgb paper =
        LinearRgb.ofSrgb(238, 238, 235)
            .times(
                1
                    + 0.008 * noise.octaves(x / 30, y / 30, 2)
                    + 0.01 * other.octaves(x * 5, y * 5, 2));
    // Print lies on the paper's bumps, paler here and there.
    double ink = (0.85 + 0.15 * other.octaves(x / 2, y / 2, 2)) * cover(offLineMm, 0.11);
    LinearRgb line =
        shift < 200 ? LinearRgb.ofSrgb(132, 160, 206) : LinearRgb.ofSrgb(158, 160, 168);
    return paper.mixedWith(line, ink);
  }

  private static double near(double x, double step) {
    double rest = x - step * Math.floor(x / step);
    return Math.min(rest, step - rest);
  }

  private static double cover(double off, double half) {
    return Math.max(0, Math.min(1, (half - off) / 0.06 + 0.5));
  }

  /** A woven table cloth with broad checks. */
  private LinearRgb cloth(double x, double y) {
    double warp = StrictMath.sin(x * 6.0 + 0.8 * noise.at(x / 3, y / 20));
    double weft = StrictMath.sin(y * 6.0 + 0.8 * noise.at(x / 20, y / 3));
    double weave = 1 + 0.10 * warp * weft + 0.06 * other.octaves(x / 0.9, y / 0.9, 2);
    boolean checkX = x - 44 * Math.floor(x / 44) < 22;
    boolean checkY = y - 44 * Math.floor(y / 44) < 22;
    double blue = (checkX ? 0.5 : 0) + (checkY ? 0.5 : 0);
    double wrinkle = 1 + 0.07 * noise.octaves(x / 70, y / 55, 3);
    return LinearRgb.ofSrgb(226, 222, 214)
        .mixedWith(LinearRgb.ofSrgb(74, 98, 142), blue)
        .times(weave * wrinkle);
  }
}
