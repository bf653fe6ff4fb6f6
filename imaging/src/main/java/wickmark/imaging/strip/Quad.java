package wickmark.imaging.strip;

import java.util.List;
import java.util.Optional;

/**
 * Four corners in order around the figure (clockwise on the screen), in cells of the shrunken photo
 * or in photo pixels as the user says; side i runs from corner i to corner i + 1.
 */
record Quad(double[] x, double[] y) {
  /**
   * How near corners of one place lie, parts of the root of the smaller figure's area: a line has
   * two edges.
   */
  private static final double JOINED = 0.04;

  Quad {
    if (x.length != 4 || y.length != 4) {
      throw new IllegalArgumentException("a quad has four corners");
    }
  }

  /** The quad with one side moved inwards, by so many cells at its start and at its end. */
  Quad withSideMoved(int side, double start, double end) {
    int i = side;
    int j = (side + 1) % 4;
    double[] mx = x.clone();
    double[] my = y.clone();
    move(i, (i + 3) % 4, start / side((i + 3) % 4), mx, my);
    move(j, (j + 1) % 4, end / side(j), mx, my);
    return new Quad(mx, my);
  }

  private void move(int corner, int towards, double part, double[] mx, double[] my) {
    mx[corner] = x[corner] + part * (x[towards] - x[corner]);
    my[corner] = y[corner] + part * (y[towards] - y[corner]);
  }

  double area() {
    double sum = 0;
    for (int i = 0; i < 4; i++) {
      int j = (i + 1) % 4;
      sum += x[i] * y[j] - x[j] * y[i];
    }
    return sum / 2;
  }

  double side(int i) {
    int j = (i + 1) % 4;
    return Math.hypot(x[j] - x[i], y[j] - y[i]);
  }

  /** Side i from its first to its second corner: x, y, x, y. */
  double[] line(int i) {
    int j = (i + 1) % 4;
    return new double[] {x[i], y[i], x[j], y[j]};
  }

  /** Distance of a place from side i, its ends included. */
  double distance(int i, double px, double py) {
    int j = (i + 1) % 4;
    double dx = x[j] - x[i];
    double dy = y[j] - y[i];
    double along = ((px - x[i]) * dx + (py - y[i]) * dy) / (dx * dx + dy * dy);
    double t = Math.max(0, Math.min(1, along));
    return Math.hypot(px - x[i] - t * dx, py - y[i] - t * dy);
  }

  double perimeter() {
    return side(0) + side(1) + side(2) + side(3);
  }

  boolean isConvexClockwise() {
    for (int i = 0; i < 4; i++) {
      int j = (i + 1) % 4;
      int k = (i + 2) % 4;
      double cross = (x[j] - x[i]) * (y[k] - y[j]) - (y[j] - y[i]) * (x[k] - x[j]);
      if (cross <= 0) {
        return false;
      }
    }
    return true;
  }

  boolean contains(double px, double py) {
    for (int i = 0; i < 4; i++) {
      int j = (i + 1) % 4;
      if ((x[j] - x[i]) * (py - y[i]) - (y[j] - y[i]) * (px - x[i]) < 0) {
        return false;
      }
    }
    return true;
  }

  Quad scaled(double factor) {
    double[] sx = new double[4];
    double[] sy = new double[4];
    for (int i = 0; i < 4; i++) {
      sx[i] = x[i] * factor;
      sy[i] = y[i] * factor;
    }
    return new Quad(sx, sy);
  }

  /** Share of the smaller figure that lies in the other, by a grid of points. */
  double overlap(Quad other) {
    boolean smaller = area() < other.area();
    Quad small = smaller ? this : other;
    Quad large = smaller ? other : this;
    int inside = 0;
    int n = 12;
    for (int i = 0; i < n; i++) {
      for (int j = 0; j < n; j++) {
        double u = (i + 0.5) / n;
        double v = (j + 0.5) / n;
        double px = bilinear(small.x, u, v);
        double py = bilinear(small.y, u, v);
        if (large.contains(px, py)) {
          inside++;
        }
      }
    }
    return inside / (double) (n * n);
  }

  /** The place at parts u along and v down of the figure. */
  double[] at(double u, double v) {
    return new double[] {bilinear(x, u, v), bilinear(y, u, v)};
  }

  /** Share of the other figure that lies in this one, about. */
  double shareOf(Quad other) {
    return overlap(other) * Math.min(1, area() / other.area());
  }

  /**
   * The figure of this one and another that lie side by side, as the parts of a sheet do which a
   * line across it parts: they have a side in common, and those beside it run straight on. Empty
   * where they are not so.
   */
  Optional<Quad> joinedWith(Quad other) {
    double near = JOINED * Math.sqrt(Math.min(area(), other.area()));
    for (int i = 0; i < 4; i++) {
      for (int j = 0; j < 4; j++) {
        boolean shared = apart(i, other, (j + 1) % 4) < near && apart((i + 1) % 4, other, j) < near;
        if (shared) {
          return Optional.of(around(i, other, j))
              .filter(Quad::isConvexClockwise)
              .filter(whole -> whole.runsStraightPast(this, near));
        }
      }
    }
    return Optional.empty();
  }

  /** The corners that two figures do not share, this one's behind its side i first. */
  private Quad around(int i, Quad other, int j) {
    int[] mine = {(i + 2) % 4, (i + 3) % 4};
    int[] others = {(j + 2) % 4, (j + 3) % 4};
    return new Quad(
        new double[] {x[mine[0]], x[mine[1]], other.x[others[0]], other.x[others[1]]},
        new double[] {y[mine[0]], y[mine[1]], other.y[others[0]], other.y[others[1]]});
  }

  /** Whether all corners of a part lie on this figure's sides. */
  private boolean runsStraightPast(Quad part, double near) {
    for (int corner = 0; corner < 4; corner++) {
      double least = Double.POSITIVE_INFINITY;
      for (int side = 0; side < 4; side++) {
        least = Math.min(least, distance(side, part.x[corner], part.y[corner]));
      }
      if (least > near) {
        return false;
      }
    }
    return true;
  }

  /**
   * What lies on either side of a line that crosses two opposite sides, each with the piece of the
   * line as its side 0; none if it does not.
   *
   * @param line x, y, x, y of two of its places
   */
  List<Quad> partsBeside(double[] line) {
    for (int side = 0; side < 2; side++) {
      double first = crossing(side, line);
      double second = crossing(side + 2, line);
      if (first > 0 && first < 1 && second > 0 && second < 1) {
        return List.of(part(side, first, second), part(side + 2, second, first));
      }
    }
    return List.of();
  }

  /** The part beyond the places at which side i and the one opposite are cut, the cut first. */
  private Quad part(int i, double atSide, double atOpposite) {
    int j = (i + 1) % 4;
    int k = (i + 2) % 4;
    int l = (i + 3) % 4;
    return new Quad(
        new double[] {between(x, k, l, atOpposite), between(x, i, j, atSide), x[j], x[k]},
        new double[] {between(y, k, l, atOpposite), between(y, i, j, atSide), y[j], y[k]});
  }

  private static double between(double[] c, int from, int to, double part) {
    return c[from] + part * (c[to] - c[from]);
  }

  /** Where a line cuts side i: 0 at its first corner, 1 at its second. */
  private double crossing(int i, double[] line) {
    double first = beside(line, i);
    double second = beside(line, (i + 1) % 4);
    return first / (first - second);
  }

  private double beside(double[] line, int corner) {
    return (line[2] - line[0]) * (y[corner] - line[1])
        - (line[3] - line[1]) * (x[corner] - line[0]);
  }

  private double apart(int corner, Quad other, int otherCorner) {
    return Math.hypot(x[corner] - other.x[otherCorner], y[corner] - other.y[otherCorner]);
  }

  private static double bilinear(double[] c, double u, double v) {
    return (1 - v) * ((1 - u) * c[0] + u * c[1]) + v * ((1 - u) * c[3] + u * c[2]);
  }
}
