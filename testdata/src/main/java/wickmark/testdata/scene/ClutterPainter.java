package wickmark.testdata.scene;

import wickmark.testdata.colour.LinearRgb;
import wickmark.testdata.noise.ValueNoise;

/** Paints clutter. Own coordinates: around the thing's middle, mm. */
final class ClutterPainter {
  private final Clutter clutter;
  private final ValueNoise noise;
  private final Texture texture;

  private ClutterPainter(Clutter clutter, double pxPerMm, long seed) {
    this.clutter = clutter;
    this.noise = new ValueNoise(seed);
    double w = clutter.kind().widthMm / 2;
    double h = clutter.kind().heightMm / 2;
    this.texture = new Texture(-w, -h, w, h, pxPerMm);
  }

  static Texture paint(Clutter clutter, double pxPerMm, long seed) {
    ClutterPainter painter = new ClutterPainter(clutter, pxPerMm, seed);
    if (clutter.kind() == Clutter.Kind.CLIP) {
      painter.clip();
    } else {
      painter.fill();
    }
    return painter.texture;
  }

  private void fill() {
    for (int row = 0; row < texture.rows; row++) {
      for (int column = 0; column < texture.columns; column++) {
        double x = texture.x(column);
        double y = texture.y(row);
        double opacity = opacity(x, y);
        if (opacity > 0) {
          LinearRgb colour = clutter.colour().times(shade(x, y));
          texture.set(column, row, colour.red(), colour.green(), colour.blue(), opacity);
        }
      }
    }
  }

  private double opacity(double x, double y) {
    double sharp = texture.pxPerMm;
    double w = clutter.kind().widthMm / 2;
    double h = clutter.kind().heightMm / 2;
    double inside = inside(x, y, w, h);
    if (clutter.kind() == Clutter.Kind.RIM) {
      double ring = Math.abs(Math.sqrt(x * x + y * y) - (w - 1.6));
      return inside > 0 ? Math.max(0.05, Math.min(1, (1.1 - ring) * sharp + 0.5) * 0.55) : 0;
    }
    return Math.max(0, Math.min(1, inside * sharp + 0.5));
  }

  /** Returns how far inside the thing's outline a place is, mm; below 0 outside. */
  private double inside(double x, double y, double w, double h) {
    return switch (clutter.kind()) {
      case DISC, RIM -> w - Math.sqrt(x * x + y * y);
      case PEN -> {
        double tip = Math.max(0, (Math.abs(x) - w + 12) / 12);
        yield h * (1 - 0.85 * (x > 0 ? tip : 0.2 * tip)) - Math.abs(y);
      }
      case FINGER -> {
        double past = Math.max(0, y - (h - 9));
        yield w - 0.4 - Math.sqrt(x * x + 0.8 * past * past);
      }
      default -> Math.min(w - Math.abs(x), h - Math.abs(y));
    };
  }

  private double shade(double x, double y) {
    double w = clutter.kind().widthMm / 2;
    double h = clutter.kind().heightMm / 2;
    return switch (clutter.kind()) {
      case DISC -> {
        double r = Math.sqrt(x * x + y * y) / w;
        double rim = r > 0.9 ? 0.25 * (y - x) / w : 0;
        double relief =
            0.22
                * (noise.octaves(x / 2.2, y / 2.2, 3)
                    - noise.octaves(x / 2.2 + 0.2, y / 2.2 - 0.2, 3));
        yield Math.max(0.2, 0.9 + rim + (r < 0.8 ? 4 * relief : 0));
      }
      case PEN -> {
        double round = y / h;
        double bright = StrictMath.exp(-(round - 0.35) * (round - 0.35) / 0.02);
        yield (Math.abs(x) > w - 30 && x < 0 ? 0.55 : 1)
                * (0.55 + 0.45 * Math.sqrt(Math.max(0, 1 - round * round)))
            + 0.9 * bright;
      }
      case FINGER -> {
        double side = x / w;
        boolean nail =
            y > h - 13 && y < h - 2 && Math.abs(x) < 5.2 - 0.03 * (y - h + 8) * (y - h + 8);
        double crease = Math.abs(y - h + 27) < 0.7 ? -0.15 : 0;
        yield (0.55 + 0.45 * Math.sqrt(Math.max(0, 1 - side * side))) * (nail ? 1.18 : 1)
            + crease
            + 0.05 * noise.octaves(x / 2, y / 2, 2);
      }
      case RUBBER -> (x > w * 0.35 ? 1 : 0.92) + 0.05 * noise.octaves(x / 3, y / 3, 2);
      default -> 1 + 0.2 * noise.octaves(x / 6, y / 6, 2);
    };
  }

  private void clip() {
    TexturePen wire = new TexturePen(texture, clutter.colour(), 1);
    TexturePen shine = new TexturePen(texture, new LinearRgb(0.95, 0.95, 0.95), 0.7);
    double[][] way = {
      {-11, -3.6},
      {10, -3.6},
      {14, 0},
      {10, 3.6},
      {-12, 3.6},
      {-15, 0.8},
      {-12, -1.9},
      {7, -1.9},
      {9.5, 0},
      {7, 1.8},
      {-8, 1.8}
    };
    for (int i = 1; i < way.length; i++) {
      wire.line(way[i - 1][0], way[i - 1][1], way[i][0], way[i][1], 0.95);
    }
    for (int i = 1; i < way.length; i++) {
      shine.line(way[i - 1][0], way[i - 1][1] + 0.15, way[i][0], way[i][1] + 0.15, 0.25);
    }
  }
}
