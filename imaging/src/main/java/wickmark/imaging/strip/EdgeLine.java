package wickmark.imaging.strip;

import wickmark.imaging.raster.Raster;

/**
 * A straight line through the picture with the edge support along it. Points p on it satisfy nx · x
 * + ny · y = offset; the place along it is t = -ny · x + nx · y.
 */
final class EdgeLine {
  /**
   * Weight from which an edge is as good as certain: what counts is that it is there, not how
   * strong it is, or every pencil line would be preferred to the edge of white paper on white.
   */
  private static final double SEEN = 0.45;

  final double nx;
  final double ny;
  final double offset;

  /** Direction of the normal, radians, −π to π. */
  final double normal;

  /** Place along the line of the first entry of the running sums. */
  private final double start;

  private final double[] running;

  /** The picture's own border, which may cut the strip off, rather than an edge that was seen. */
  final boolean border;

  private EdgeLine(
      double nx, double ny, double offset, double start, double[] running, boolean border) {
    this.nx = nx;
    this.ny = ny;
    this.offset = offset;
    this.normal = StrictMath.atan2(ny, nx);
    this.start = start;
    this.running = running;
    this.border = border;
  }

  /**
   * Measures the support along a line.
   *
   * @param reach how far off the line an edge cell may lie, cells: strip sides are hand-cut and
   *     bent
   */
  static EdgeLine along(EdgeMap edges, double nx, double ny, double offset, double reach) {
    double diagonal = Math.hypot(edges.width, edges.height);
    int count = (int) Math.ceil(2 * diagonal) + 1;
    double[] running = new double[count + 1];
    double normal = StrictMath.atan2(ny, nx);
    for (int i = 0; i < count; i++) {
      double t = i - diagonal;
      double x = nx * offset - ny * t;
      double y = ny * offset + nx * t;
      boolean near =
          x >= -reach && y >= -reach && x <= edges.width + reach && y <= edges.height + reach;
      running[i + 1] = running[i] + (near ? support(edges, x, y, nx, ny, normal, reach) : 0);
    }
    return new EdgeLine(nx, ny, offset, -diagonal, running, false);
  }

  /** A border of the picture, with the same modest support everywhere. */
  static EdgeLine border(double nx, double ny, double offset, double support, double diagonal) {
    int count = (int) Math.ceil(2 * diagonal) + 1;
    double[] running = new double[count + 1];
    for (int i = 0; i < count; i++) {
      running[i + 1] = running[i] + support;
    }
    return new EdgeLine(nx, ny, offset, -diagonal, running, true);
  }

  private static double support(
      EdgeMap edges, double x, double y, double nx, double ny, double normal, double reach) {
    double best = 0;
    for (double d = -reach; d <= reach; d += 1) {
      double px = x + nx * d;
      double py = y + ny * d;
      if (px < 0 || py < 0 || px >= edges.width || py >= edges.height) {
        continue;
      }
      int column = (int) px;
      int row = (int) py;
      int i = row * edges.width + column;
      float weight = edges.weight[i];
      if (weight > best && angleBetween(edges.normal[i], normal) < 0.26) {
        best = weight;
      }
    }
    return Math.min(1, best / SEEN);
  }

  /** Angle between two undirected normals, 0 to π/2; they are within ±2π. */
  static double angleBetween(double a, double b) {
    double d = Math.abs(a - b);
    while (d > Math.PI) {
      d -= Math.PI;
    }
    return Math.min(d, Math.PI - d);
  }

  /** Place along the line of a point. */
  double along(double x, double y) {
    return -ny * x + nx * y;
  }

  /** Mean support between two places along the line, 0 to 1. */
  double meanSupport(double from, double to) {
    double a = Math.min(from, to);
    double b = Math.max(from, to);
    if (b - a < 1) {
      return 0;
    }
    return (sumTo(b) - sumTo(a)) / (b - a);
  }

  /** Support along all of the line, cells. */
  double support() {
    return running[running.length - 1];
  }

  private double sumTo(double t) {
    double at = Raster.within(t - start, running.length - 1.0);
    int i = Math.min((int) at, running.length - 2);
    return running[i] + (running[i + 1] - running[i]) * (at - i);
  }

  /** Where this line crosses another as {x, y}; null where they are as good as parallel. */
  double @org.jspecify.annotations.Nullable [] crossing(EdgeLine other) {
    double det = nx * other.ny - ny * other.nx;
    if (Math.abs(det) < 0.2) {
      return null;
    }
    return new double[] {
      (offset * other.ny - ny * other.offset) / det, (nx * other.offset - offset * other.nx) / det
    };
  }
}
