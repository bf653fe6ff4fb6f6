package wickmark.testdata.strip;

import java.util.function.DoubleUnaryOperator;
import wickmark.testdata.colour.LinearRgb;
import wickmark.testdata.noise.ValueNoise;
import wickmark.testdata.truth.PointMm;

/**
 * Paints what is on the paper besides dye and pencil: creases, stains, tape, the solvent's own
 * traces.
 */
final class BlemishPainter {
  private static final LinearRgb BROWNISH = new LinearRgb(0.45, 0.62, 1);
  private static final LinearRgb TAPE = new LinearRgb(0.5, 0.6, 1);

  private final StripPlan plan;
  private final DensityPlanes planes;
  private final Raster raster;
  private final ValueNoise noise;

  BlemishPainter(StripPlan plan, DensityPlanes planes, long seed) {
    this.plan = plan;
    this.planes = planes;
    this.raster = planes.raster;
    this.noise = new ValueNoise(seed);
  }

  void paintAll() {
    front();
    for (Blemish blemish : plan.blemishes()) {
      if (blemish instanceof Blemish.Crease crease) {
        crease(crease);
      } else if (blemish instanceof Blemish.Stain stain) {
        stain(stain);
      } else if (blemish instanceof Blemish.TideMark mark) {
        tideMark(mark);
      } else if (blemish instanceof Blemish.Tape tape) {
        tape(tape);
      } else if (blemish instanceof Blemish.RunningLine line) {
        runningLine(line);
      } else if (blemish instanceof Blemish.Streak streak) {
        streak(streak);
      }
    }
  }

  /** Dirt gathers at the front, and the washed paper below it has another tone. */
  private void front() {
    SolventFront front = plan.lines().front();
    double width = plan.sheet().widthMm();
    dirt(x -> front.heightAt(x, width), front.tide(), front.toned());
  }

  private void tideMark(Blemish.TideMark mark) {
    SolventFront front = plan.lines().front();
    double width = plan.sheet().widthMm();
    dirt(
        x ->
            front.heightAt(x, width)
                + mark.aboveFrontMm()
                + mark.wanderMm() * noise.octaves(x / 16, 500, 2),
        mark.absorbance(),
        mark.toned());
  }

  /** Paints a line of dried dirt at a height across, and the tone of the paper below it. */
  private void dirt(DoubleUnaryOperator height, double absorbance, double toned) {
    for (int column = 0; column < raster.widthPx(); column++) {
      double x = raster.x(column);
      double edge = height.applyAsDouble(x) + 0.25 * noise.octaves(x / 5, 60, 3);
      double strength = absorbance * (1 + 0.5 * noise.octaves(x / 9, 90, 2));
      for (int row = 0; row < raster.heightPx(); row++) {
        double below = edge - raster.y(row);
        double tone = toned * logistic(below / 0.4);
        double line = strength * (below > 0 ? gaussian(below / 0.9) : gaussian(below / 0.35));
        if (tone != 0 || line > 1e-6) {
          planes.add(row * raster.widthPx() + column, tone + line, BROWNISH);
        }
      }
    }
  }

  private void crease(Blemish.Crease crease) {
    PointMm from = crease.from();
    double dx = crease.to().x() - from.x();
    double dy = crease.to().y() - from.y();
    double length = StrictMath.hypot(dx, dy);
    forEach(
        from.x(),
        crease.to().x(),
        from.y(),
        crease.to().y(),
        2,
        (index, x, y) -> {
          double off =
              ((x - from.x()) * dy - (y - from.y()) * dx) / length + 0.1 * noise.at(x / 4, y / 4);
          double dark = gaussian((off - 0.25) / 0.22) - 0.8 * gaussian((off + 0.25) / 0.3);
          planes.addNeutral(index, crease.strength() * dark);
        });
  }

  private void stain(Blemish.Stain stain) {
    double radius = stain.radiusMm();
    PointMm centre = stain.centre();
    forEach(
        centre.x() - radius,
        centre.x() + radius,
        centre.y() - radius,
        centre.y() + radius,
        radius,
        (index, x, y) -> {
          double dx = x - centre.x();
          double dy = y - centre.y();
          double r =
              StrictMath.hypot(dx, dy) / radius * (1 + 0.35 * noise.octaves(x / 7, y / 7 + 300, 3));
          double body = logistic((1 - r) / 0.03);
          double rim = gaussian((r - 0.96) / 0.05);
          planes.add(index, 0.6 * body + rim, stain.colour());
        });
  }

  private void tape(Blemish.Tape tape) {
    forEach(
        tape.from().x(),
        tape.to().x(),
        tape.from().y(),
        tape.to().y(),
        0,
        (index, x, y) -> planes.add(index, 0.035 + 0.02 * noise.octaves(x / 3, y / 12, 2), TAPE));
  }

  private void runningLine(Blemish.RunningLine line) {
    double width = plan.sheet().widthMm();
    forEach(
        0,
        width,
        line.heightMm() - 2,
        line.heightMm() + line.runMm() * 1.5,
        0,
        (index, x, y) -> {
          double up = y - line.heightMm();
          double run = line.runMm() * (1 + 0.3 * noise.octaves(x / 6, 200, 2));
          double trail = up > 0 ? Math.max(0, 1 - up / run) * (0.4 + 0.6 * up / run) : 0;
          double body =
              0.7 * gaussian(up / 0.35)
                  + 0.8 * trail * (1 + 0.25 * noise.octaves(x / 1.5, y / 6, 2));
          planes.add(index, line.absorbance() * body, line.dye().absorption());
        });
  }

  private void streak(Blemish.Streak streak) {
    forEach(
        streak.xMm() - 4,
        streak.xMm() + 4,
        streak.fromMm(),
        streak.toMm(),
        3,
        (index, x, y) -> {
          double ends = logistic((y - streak.fromMm()) / 0.8) * logistic((streak.toMm() - y) / 0.8);
          double side = gaussian((x - streak.xMm() - 0.6 * noise.at(y / 12, 400)) / 1.5);
          planes.add(index, streak.absorbance() * ends * side, streak.dye().absorption());
        });
  }

  private interface Brush {
    void at(int index, double x, double y);
  }

  private void forEach(double x1, double x2, double y1, double y2, double around, Brush brush) {
    int right = raster.lastColumn(Math.max(x1, x2) + around);
    int top = raster.lastRow(Math.max(y1, y2) + around);
    for (int row = raster.firstRow(Math.min(y1, y2) - around); row <= top; row++) {
      for (int column = raster.firstColumn(Math.min(x1, x2) - around); column <= right; column++) {
        brush.at(row * raster.widthPx() + column, raster.x(column), raster.y(row));
      }
    }
  }

  private static double gaussian(double t) {
    return t * t > 60 ? 0 : StrictMath.exp(-t * t / 2);
  }

  private static double logistic(double t) {
    return t > 30 ? 1 : t < -30 ? 0 : 1 / (1 + StrictMath.exp(-t));
  }
}
