package wickmark.imaging.strip;

import georegression.fitting.polygon.ConvexHullAndrewMonotone_F64;
import georegression.struct.point.Point2D_F64;
import georegression.struct.point.Point2D_I32;
import georegression.struct.shapes.Polygon2D_F64;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.ddogleg.struct.FastArray;

/** The convex hull of a contour, as corners in clockwise order on the screen. */
final class ConvexOutline {
  private final List<double[]> corners;

  private ConvexOutline(List<double[]> corners) {
    this.corners = corners;
  }

  static ConvexOutline of(List<Point2D_I32> contour) {
    FastArray<Point2D_F64> points = new FastArray<>(Point2D_F64.class);
    contour.forEach(p -> points.add(new Point2D_F64(p.x, p.y)));
    Polygon2D_F64 hull = new Polygon2D_F64();
    new ConvexHullAndrewMonotone_F64().process(points, hull);
    List<double[]> corners = new ArrayList<>();
    double area = 0;
    for (int i = 0; i < hull.size(); i++) {
      Point2D_F64 p = hull.get(i);
      Point2D_F64 q = hull.get((i + 1) % hull.size());
      area += p.x * q.y - q.x * p.y;
      corners.add(new double[] {p.x, p.y});
    }
    if (area < 0) {
      Collections.reverse(corners);
    }
    return new ConvexOutline(corners);
  }

  /** Positive where the way turns clockwise on the screen. */
  private static double turn(double[] a, double[] b, double[] c) {
    return (b[0] - a[0]) * (c[1] - b[1]) - (b[1] - a[1]) * (c[0] - b[0]);
  }

  /**
   * The quadrilateral around the hull that is left when, again and again, the side is dropped whose
   * neighbours meet with the least area added. Empty where there is none.
   */
  double[][] reducedToQuad() {
    List<double[]> p = new ArrayList<>(corners);
    while (p.size() > 4) {
      int drop = -1;
      double least = Double.POSITIVE_INFINITY;
      double[] meeting = {};
      for (int i = 0; i < p.size(); i++) {
        double[] a = p.get((i + p.size() - 1) % p.size());
        double[] b = p.get(i);
        double[] c = p.get((i + 1) % p.size());
        double[] d = p.get((i + 2) % p.size());
        double[] m = meeting(a, b, d, c);
        if (m.length == 2) {
          double added = Math.abs(turn(b, m, c)) / 2;
          if (added < least) {
            least = added;
            drop = i;
            meeting = m;
          }
        }
      }
      if (drop < 0) {
        return new double[0][];
      }
      p.set(drop, meeting);
      p.remove((drop + 1) % p.size());
    }
    return p.size() == 4 ? p.toArray(double[][]::new) : new double[0][];
  }

  /** Where the lines a-b and d-c meet beyond b and c; empty where they do not. */
  private static double[] meeting(double[] a, double[] b, double[] d, double[] c) {
    double ux = b[0] - a[0];
    double uy = b[1] - a[1];
    double vx = c[0] - d[0];
    double vy = c[1] - d[1];
    double det = ux * vy - uy * vx;
    if (Math.abs(det) < 1e-9) {
      return new double[0];
    }
    double t = ((c[0] - b[0]) * vy - (c[1] - b[1]) * vx) / det;
    double s = ((c[0] - b[0]) * uy - (c[1] - b[1]) * ux) / det;
    return t >= 0 && s >= 0 ? new double[] {b[0] + t * ux, b[1] + t * uy} : new double[0];
  }
}
