package wickmark.imaging.scale;

import java.util.List;

/**
 * Neighbouring patches of the same direction and spacing, and the line through them.
 *
 * @param axis the line, its zero at the middle of the patches
 * @param uLow where on the line the patches begin, in level pixels
 * @param uHigh where they end
 * @param pitchPx their middle spacing in level pixels
 * @param slant offset along the line per pixel square to it, of the strokes, as a line over u
 * @param weight sum of the patches' scores
 */
record CombSeed(
    Axis axis, double uLow, double uHigh, double pitchPx, RobustPolynomial slant, double weight) {

  /**
   * A straight line with a zero and a direction; v grows to the right of the direction (y down).
   */
  record Axis(double x, double y, double dx, double dy) {
    double u(double px, double py) {
      return (px - x) * dx + (py - y) * dy;
    }

    double v(double px, double py) {
      return (py - y) * dx - (px - x) * dy;
    }

    Axis enlarged(int by) {
      return new Axis(x * by, y * by, dx, dy);
    }

    double xAt(double u, double v) {
      return x + u * dx - v * dy;
    }

    double yAt(double u, double v) {
      return y + u * dy + v * dx;
    }
  }

  /** Returns the same seed on a plane whose pixels are finer by a whole factor. */
  CombSeed enlarged(int by) {
    return new CombSeed(
        axis.enlarged(by), uLow * by, uHigh * by, pitchPx * by, slant.stretched(by), weight);
  }

  /** Makes a seed of patches that belong together. */
  static CombSeed of(List<PeriodicCell> cells) {
    double mx = cells.stream().mapToDouble(PeriodicCell::x).average().orElse(0);
    double my = cells.stream().mapToDouble(PeriodicCell::y).average().orElse(0);
    double direction = direction(cells, mx, my);
    Axis axis = new Axis(mx, my, StrictMath.cos(direction), StrictMath.sin(direction));
    int n = cells.size();
    double[] u = new double[n];
    double[] lean = new double[n];
    double[] pitches = new double[n];
    double weight = 0;
    for (int i = 0; i < n; i++) {
      PeriodicCell cell = cells.get(i);
      u[i] = axis.u(cell.x(), cell.y());
      double turn = cell.angle() - direction;
      lean[i] = -StrictMath.tan(turn - Math.PI * Math.rint(turn / Math.PI));
      pitches[i] = cell.pitchPx() / Math.cos(StrictMath.atan(lean[i]));
      weight += cell.score();
    }
    double low = java.util.Arrays.stream(u).min().orElse(0);
    double high = java.util.Arrays.stream(u).max().orElse(0);
    double pitch = RobustPolynomial.median(pitches);
    int degree = n > 20 && high - low > 20 * pitch ? 1 : 0;
    return new CombSeed(
        axis, low, high, pitch, RobustPolynomial.fit(u, lean, degree, 0.01), weight);
  }

  /** The line's direction: that of the patches' spread, unless they are a mere blot. */
  private static double direction(List<PeriodicCell> cells, double mx, double my) {
    double cos = 0;
    double sin = 0;
    double xx = 0;
    double xy = 0;
    double yy = 0;
    for (PeriodicCell cell : cells) {
      cos += StrictMath.cos(2 * cell.angle());
      sin += StrictMath.sin(2 * cell.angle());
      xx += (cell.x() - mx) * (cell.x() - mx);
      xy += (cell.x() - mx) * (cell.y() - my);
      yy += (cell.y() - my) * (cell.y() - my);
    }
    double across = StrictMath.atan2(sin, cos) / 2;
    double spread = StrictMath.atan2(2 * xy, xx - yy) / 2;
    double root = Math.sqrt((xx - yy) * (xx - yy) + 4 * xy * xy);
    boolean elongated = xx + yy - root < 0.1 * (xx + yy + root);
    double turn = Math.abs(StrictMath.sin(spread - across));
    return elongated && turn < 0.45 ? spread : across;
  }
}
