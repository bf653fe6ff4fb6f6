package wickmark.testdata.scene;

import wickmark.testdata.colour.LinearRgb;
import wickmark.testdata.lettering.Stroke;
import wickmark.testdata.lettering.StrokeFont;

/** Prints clean lines and figures on a texture. */
final class TexturePen {
  private final Texture texture;
  private final LinearRgb ink;
  private final double opacity;

  TexturePen(Texture texture, LinearRgb ink, double opacity) {
    this.texture = texture;
    this.ink = ink;
    this.opacity = opacity;
  }

  /** Fills an upright rectangle; a grid cell only partly inside gets its share. */
  void bar(double x1, double y1, double x2, double y2) {
    double p = texture.pxPerMm;
    int right = Math.min(texture.columns - 1, (int) Math.ceil((x2 - texture.left) * p + 0.5));
    int high = Math.min(texture.rows - 1, (int) Math.ceil((y2 - texture.low) * p + 0.5));
    for (int row = Math.max(0, (int) Math.floor((y1 - texture.low) * p - 0.5));
        row <= high;
        row++) {
      double up = overlap(texture.y(row), y1, y2);
      for (int column = Math.max(0, (int) Math.floor((x1 - texture.left) * p - 0.5));
          column <= right;
          column++) {
        double share = up * overlap(texture.x(column), x1, x2);
        if (share > 0) {
          texture.cover(column, row, ink.red(), ink.green(), ink.blue(), opacity * share);
        }
      }
    }
  }

  private double overlap(double at, double low, double high) {
    double half = 0.5 / texture.pxPerMm;
    return Math.max(0, Math.min(at + half, high) - Math.max(at - half, low)) / (2 * half);
  }

  /** Draws a line with round ends. */
  void line(double x1, double y1, double x2, double y2, double widthMm) {
    double p = texture.pxPerMm;
    double reach = widthMm / 2 + 1 / p;
    double dx = x2 - x1;
    double dy = y2 - y1;
    double square = dx * dx + dy * dy;
    int right =
        Math.min(
            texture.columns - 1, (int) Math.ceil((Math.max(x1, x2) + reach - texture.left) * p));
    int high =
        Math.min(texture.rows - 1, (int) Math.ceil((Math.max(y1, y2) + reach - texture.low) * p));
    int left = Math.max(0, (int) Math.floor((Math.min(x1, x2) - reach - texture.left) * p));
    for (int row = Math.max(0, (int) Math.floor((Math.min(y1, y2) - reach - texture.low) * p));
        row <= high;
        row++) {
      for (int column = left; column <= right; column++) {
        double px = texture.x(column) - x1;
        double py = texture.y(row) - y1;
        double t = square == 0 ? 0 : Math.max(0, Math.min(1, (px * dx + py * dy) / square));
        double qx = px - t * dx;
        double qy = py - t * dy;
        double share =
            Math.max(0, Math.min(1, (widthMm / 2 - Math.sqrt(qx * qx + qy * qy)) * p + 0.5));
        if (share > 0) {
          texture.cover(column, row, ink.red(), ink.green(), ink.blue(), opacity * share);
        }
      }
    }
  }

  /**
   * Prints words around a middle.
   *
   * @param quarters quarter turns anticlockwise
   */
  void words(String text, double x, double y, double heightMm, int quarters) {
    double half = StrokeFont.width(text) / 2;
    for (Stroke s : StrokeFont.strokes(text)) {
      double[] a = turned(s.x1() - half, s.y1() - 0.5, quarters);
      double[] b = turned(s.x2() - half, s.y2() - 0.5, quarters);
      line(
          x + heightMm * a[0],
          y + heightMm * a[1],
          x + heightMm * b[0],
          y + heightMm * b[1],
          0.13 * heightMm);
    }
  }

  private static double[] turned(double x, double y, int quarters) {
    return switch (Math.floorMod(quarters, 4)) {
      case 1 -> new double[] {-y, x};
      case 2 -> new double[] {-x, -y};
      case 3 -> new double[] {y, -x};
      default -> new double[] {x, y};
    };
  }
}
