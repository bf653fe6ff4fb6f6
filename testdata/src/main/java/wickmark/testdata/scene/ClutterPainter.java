package wickmark.testdata.scene;

import java.util.Arrays;
import wickmark.testdata.colour.LinearRgb;
import wickmark.testdata.noise.ValueNoise;

/** Paints clutter. Own coordinates: around the thing's middle, mm. */
final class ClutterPainter {
  private static final double[][] CLIP_WAY = {
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

  /** What of it is in front of a sheet that it holds. */
  private static final double[][] FRONT_LOOP = Arrays.copyOf(CLIP_WAY, 7);

  /** What is seen of its other loop, beyond the sheet's edge, which crosses the clip at -3. */
  private static final double[][] BACK_LEFT = {{-12, -1.9}, {-3.2, -1.9}};

  private static final double[][] BACK_RIGHT = {{-3.2, 1.8}, {-8, 1.8}};

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
    switch (clutter.kind()) {
      case CLIP -> painter.wire(CLIP_WAY);
      case HOLDING_CLIP -> {
        painter.rim();
        painter.wire(BACK_LEFT);
        painter.wire(BACK_RIGHT);
        painter.wire(FRONT_LOOP);
      }
      default -> painter.fill();
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
      case FINGER, PRESSING_FINGER -> {
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
      case FINGER, PRESSING_FINGER -> {
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

  /** The narrow dark rim that a wire leaves on the paper it lies on. */
  private void rim() {
    TexturePen dark = new TexturePen(texture, new LinearRgb(0.02, 0.02, 0.02), 0.12);
    for (double widthMm : new double[] {2.0, 1.6, 1.25}) {
      follow(dark, FRONT_LOOP, 0, widthMm);
    }
  }

  private void wire(double[][] way) {
    TexturePen wire = new TexturePen(texture, clutter.colour(), 1);
    TexturePen shine = new TexturePen(texture, new LinearRgb(0.95, 0.95, 0.95), 0.7);
    follow(wire, way, 0, 0.95);
    follow(shine, way, 0.15, 0.25);
  }

  private static void follow(TexturePen pen, double[][] way, double offMm, double widthMm) {
    for (int i = 1; i < way.length; i++) {
      double[] from = way[i - 1];
      double[] to = way[i];
      pen.line(from[0], from[1] + offMm, to[0], to[1] + offMm, widthMm);
    }
  }
}
