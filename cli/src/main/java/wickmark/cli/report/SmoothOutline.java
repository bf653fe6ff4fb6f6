package wickmark.cli.report;

import java.util.List;
import wickmark.core.uncertainty.Decimals;

/**
 * A closed curve through the points of an outline, as the path of an SVG: a Catmull-Rom spline,
 * each piece as a cubic Bézier curve whose handles are a sixth of the chord between its neighbours.
 * It meets every measured point and has no corners that the spot does not have.
 */
final class SmoothOutline {
  private static final double HANDLE = 1 / 6.0;

  private SmoothOutline() {}

  /** Returns the path's data; empty for fewer than three points. */
  static String through(List<double[]> points) {
    int n = points.size();
    if (n < 3) {
      return "";
    }
    StringBuilder path = new StringBuilder("M");
    append(path, points.get(0)[0], points.get(0)[1]);
    for (int i = 0; i < n; i++) {
      double[] before = points.get((i + n - 1) % n);
      double[] from = points.get(i);
      double[] to = points.get((i + 1) % n);
      double[] after = points.get((i + 2) % n);
      path.append(" C");
      append(path, from[0] + HANDLE * (to[0] - before[0]), from[1] + HANDLE * (to[1] - before[1]));
      path.append(' ');
      append(path, to[0] - HANDLE * (after[0] - from[0]), to[1] - HANDLE * (after[1] - from[1]));
      path.append(' ');
      append(path, to[0], to[1]);
    }
    return path.append(" Z").toString();
  }

  private static void append(StringBuilder path, double x, double y) {
    path.append(Decimals.text(x, 1)).append(',').append(Decimals.text(y, 1));
  }
}
