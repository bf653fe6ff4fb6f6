package wickmark.testdata.strip;

import wickmark.testdata.lettering.Stroke;
import wickmark.testdata.lettering.StrokeFont;
import wickmark.testdata.noise.Dice;
import wickmark.testdata.noise.ValueNoise;
import wickmark.testdata.truth.PointMm;

/**
 * Draws pencil marks: graphite lies on the bumps of the paper, so strokes are grainy and uneven.
 */
final class PencilPainter {
  private final Raster raster;
  private final PaperTexture paper;
  private final float[] graphite;
  private final Dice dice;
  private final ValueNoise pressure;

  PencilPainter(Raster raster, PaperTexture paper, long seed) {
    this.raster = raster;
    this.paper = paper;
    this.graphite = new float[raster.size()];
    this.dice = new Dice(seed);
    this.pressure = new ValueNoise(seed + 9);
  }

  void draw(PencilMark mark) {
    if (mark instanceof PencilMark.Line line) {
      line(line.from(), line.to(), line.lead(), 0.05);
    } else if (mark instanceof PencilMark.Lettering words) {
      letters(words);
    } else if (mark instanceof PencilMark.Ring ring) {
      ring(ring);
    }
  }

  /**
   * Adds all graphite to the planes; strokes over one another do not get blacker than the blackest.
   */
  void addTo(DensityPlanes planes) {
    for (int i = 0; i < graphite.length; i++) {
      if (graphite[i] > 0) {
        planes.addNeutral(i, graphite[i]);
      }
    }
  }

  private void letters(PencilMark.Lettering words) {
    double size = words.heightMm();
    double half = StrokeFont.width(words.text()) / 2;
    double cos = StrictMath.cos(StrictMath.toRadians(words.angleDeg()));
    double sin = StrictMath.sin(StrictMath.toRadians(words.angleDeg()));
    double slant = dice.between(-0.05, 0.18);
    ValueNoise hand = new ValueNoise(dice.seed());
    for (Stroke stroke : StrokeFont.strokes(words.text())) {
      PointMm[] ends = new PointMm[2];
      for (int end = 0; end < 2; end++) {
        double u = end == 0 ? stroke.x1() : stroke.x2();
        double v = end == 0 ? stroke.y1() : stroke.y2();
        double x = u - half + slant * v + 0.09 * hand.at(1.7 * u, 1.7 * v);
        double y = v + 0.09 * hand.at(1.7 * u + 30, 1.7 * v);
        ends[end] =
            new PointMm(
                words.at().x() + size * (cos * x - sin * y),
                words.at().y() + size * (sin * x + cos * y));
      }
      line(ends[0], ends[1], words.lead(), 0.02 * size);
    }
  }

  private void ring(PencilMark.Ring ring) {
    int pieces = 40;
    double start = dice.between(0, 6);
    PointMm before = null;
    for (int i = 0; i <= pieces + 2; i++) {
      double angle = start + 2 * Math.PI * i / pieces;
      double grow =
          1
              + 0.06
                  * pressure.at(
                      2 * StrictMath.cos(angle) + 5.0 * i / pieces, 2 * StrictMath.sin(angle));
      PointMm place =
          new PointMm(
              ring.centre().x() + grow * ring.acrossMm() * StrictMath.cos(angle),
              ring.centre().y() + grow * ring.alongMm() * StrictMath.sin(angle));
      if (before != null) {
        line(before, place, ring.lead(), 0);
      }
      before = place;
    }
  }

  /** Draws a line that strays from the straight by about {@code strayMm}. */
  void line(PointMm from, PointMm to, Lead lead, double strayMm) {
    double dx = to.x() - from.x();
    double dy = to.y() - from.y();
    double length = StrictMath.hypot(dx, dy);
    double phase = dice.between(0, 1000);
    double reach = lead.widthMm() + strayMm + 0.2;
    int low = raster.firstRow(Math.min(from.y(), to.y()) - reach);
    int high = raster.lastRow(Math.max(from.y(), to.y()) + reach);
    for (int row = low; row <= high; row++) {
      double y = raster.y(row);
      // Only the part of a row that the stroke can touch, so that long lines stay cheap.
      double[] span = span(from, to, y, reach);
      int right = raster.lastColumn(span[1]);
      for (int column = raster.firstColumn(span[0]); column <= right; column++) {
        double px = raster.x(column) - from.x();
        double py = y - from.y();
        double along = length == 0 ? 0 : (px * dx + py * dy) / length;
        double inside = Math.max(0, Math.min(length, along));
        double off = length == 0 ? StrictMath.hypot(px, py) : (px * dy - py * dx) / length;
        off += strayMm * pressure.at((phase + inside) / 14, 3.5);
        double past = along - inside;
        dab(
            row * raster.widthPx() + column,
            Math.sqrt(off * off + past * past),
            lead,
            phase + inside,
            column,
            y);
      }
    }
  }

  private static double[] span(PointMm from, PointMm to, double y, double reach) {
    double low = Math.min(from.x(), to.x()) - reach;
    double high = Math.max(from.x(), to.x()) + reach;
    double dy = to.y() - from.y();
    if (Math.abs(dy) < 1e-9) {
      return new double[] {low, high};
    }
    double slope = (to.x() - from.x()) / dy;
    double wide = reach * (1 + Math.abs(slope));
    double x = from.x() + slope * (y - from.y());
    return new double[] {Math.max(low, x - wide), Math.min(high, x + wide)};
  }

  private void dab(int index, double off, Lead lead, double run, int column, double y) {
    double press = 1 + 0.35 * pressure.octaves(run / 6, 0.5, 2);
    double half = lead.widthMm() * (0.9 + 0.2 * (press - 1)) / 2;
    double soft = 0.5 * lead.widthMm() / 2 + 0.5 / raster.pxPerMm();
    double cover = Math.max(0, Math.min(1, (half - off) / soft + 0.5));
    if (cover <= 0) {
      return;
    }
    double bump = paper.bumpAt(raster.x(column), y);
    double caught = 1 - lead.grain() * Math.max(0, Math.min(1, 0.5 - 1.6 * bump));
    graphite[index] =
        Math.max(graphite[index], (float) (lead.absorbance() * press * cover * caught));
  }
}
