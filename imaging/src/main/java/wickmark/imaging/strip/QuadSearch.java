package wickmark.imaging.strip;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.IntPredicate;

/**
 * Puts lines together to quadrilaterals and ranks them by how well their sides are seen as edges: a
 * side must be supported between its corners, and a true corner is where the edge ends.
 */
final class QuadSearch {
  /** Greatest angle between opposite sides, radians: perspective up to 30° of tilt. */
  private static final double OPPOSITE = 0.42;

  /** Least angle between neighbouring sides, radians. */
  private static final double NEIGHBOURS = 1.0;

  /** Least area as a part of the picture's: six strips on one scan still pass. */
  private static final double LEAST_AREA = 0.012;

  /** Least length of a side, cells. */
  private static final double LEAST_SIDE = 24;

  /** Least mean support of any side. */
  private static final double LEAST_SUPPORT = 0.22;

  /** Support of a side that cannot be seen: neither for a sheet nor against it. */
  static final double BORDER_SUPPORT = 0.3;

  /** How far off a region's side its edge may lie, cells: regions are found coarsely. */
  private static final double REGION_REACH = 4;

  private final List<EdgeLine> lines;
  private final int width;
  private final int height;
  private final List<Scored> found = new ArrayList<>();

  /** A quad with its edge support, 0 to 1. */
  record Scored(Quad quad, double support) {}

  private QuadSearch(List<EdgeLine> lines, int width, int height) {
    this.lines = lines;
    this.width = width;
    this.height = height;
  }

  static List<Scored> best(List<EdgeLine> lines, int width, int height, int most) {
    QuadSearch search = new QuadSearch(lines, width, height);
    search.enumerate();
    search.found.sort(Comparator.comparingDouble(Scored::support).reversed());
    return search.found.size() > most
        ? new ArrayList<>(search.found.subList(0, most))
        : search.found;
  }

  /**
   * Edge support of a quadrilateral that was found otherwise, 0 to 1; 0 if a side has too little.
   */
  static double supportOf(Quad quad, EdgeMap edges) {
    return supportOf(quad, edges, side -> endsPicture(quad, side, edges));
  }

  /** The same for a quadrilateral of which side 0 is the edge of what lies on the sheet. */
  static double supportOfCovered(Quad quad, EdgeMap edges) {
    return supportOf(quad, edges, side -> side == 0 || endsPicture(quad, side, edges));
  }

  private static double supportOf(Quad quad, EdgeMap edges, IntPredicate isHidden) {
    EdgeLine[] side = new EdgeLine[4];
    for (int i = 0; i < 4; i++) {
      side[i] =
          isHidden.test(i)
              ? EdgeLine.border(
                  normalX(quad, i),
                  normalY(quad, i),
                  offset(quad, i),
                  BORDER_SUPPORT,
                  Math.hypot(edges.width, edges.height))
              : side(quad, i, edges, REGION_REACH);
    }
    return support(side, quad.x(), quad.y());
  }

  /**
   * Edge support of one side alone, between its corners, 0 to 1.
   *
   * @param reach how far off the straight side an edge may lie, cells
   */
  static double supportOfSide(Quad quad, int i, EdgeMap edges, double reach) {
    EdgeLine side = side(quad, i, edges, reach);
    int j = (i + 1) % 4;
    return side.meanSupport(
        side.along(quad.x()[i], quad.y()[i]), side.along(quad.x()[j], quad.y()[j]));
  }

  private static EdgeLine side(Quad quad, int i, EdgeMap edges, double reach) {
    return EdgeLine.along(edges, normalX(quad, i), normalY(quad, i), offset(quad, i), reach);
  }

  private static double normalX(Quad quad, int i) {
    return (quad.y()[(i + 1) % 4] - quad.y()[i]) / quad.side(i);
  }

  private static double normalY(Quad quad, int i) {
    return (quad.x()[i] - quad.x()[(i + 1) % 4]) / quad.side(i);
  }

  private static double offset(Quad quad, int i) {
    return normalX(quad, i) * quad.x()[i] + normalY(quad, i) * quad.y()[i];
  }

  /** Whether a side runs along the picture's border, where the picture and no sheet ends. */
  private static boolean endsPicture(Quad quad, int side, EdgeMap edges) {
    int next = (side + 1) % 4;
    return Math.max(quad.x()[side], quad.x()[next]) < REGION_REACH
        || Math.max(quad.y()[side], quad.y()[next]) < REGION_REACH
        || Math.min(quad.x()[side], quad.x()[next]) > edges.width - REGION_REACH
        || Math.min(quad.y()[side], quad.y()[next]) > edges.height - REGION_REACH;
  }

  private void enumerate() {
    List<int[]> pairs = new ArrayList<>();
    for (int i = 0; i < lines.size(); i++) {
      for (int j = i + 1; j < lines.size(); j++) {
        if (angle(lines.get(i), lines.get(j)) < OPPOSITE) {
          pairs.add(new int[] {i, j});
        }
      }
    }
    double[][][] corners = corners();
    boolean[][] square = new boolean[lines.size()][lines.size()];
    for (int i = 0; i < lines.size(); i++) {
      for (int j = 0; j < lines.size(); j++) {
        square[i][j] = angle(lines.get(i), lines.get(j)) > NEIGHBOURS;
      }
    }
    for (int p = 0; p < pairs.size(); p++) {
      for (int q = p + 1; q < pairs.size(); q++) {
        int[] a = pairs.get(p);
        int[] b = pairs.get(q);
        if (square[a[0]][b[0]] && square[a[1]][b[1]]) {
          consider(new int[] {a[0], b[0], a[1], b[1]}, corners);
        }
      }
    }
  }

  /**
   * Where each line crosses each other one in the picture or close to it; empty where they do not.
   */
  private double[][][] corners() {
    double margin = 0.03 * Math.max(width, height);
    double[][][] corners = new double[lines.size()][lines.size()][];
    for (int i = 0; i < lines.size(); i++) {
      for (int j = 0; j < lines.size(); j++) {
        double[] corner = lines.get(i).crossing(lines.get(j));
        boolean isOutside =
            corner == null
                || corner[0] < -margin
                || corner[1] < -margin
                || corner[0] > width + margin
                || corner[1] > height + margin;
        corners[i][j] = isOutside ? new double[0] : corner;
      }
    }
    return corners;
  }

  private static double angle(EdgeLine a, EdgeLine b) {
    return EdgeLine.angleBetween(a.normal, b.normal);
  }

  /** Looks at the figure that four lines enclose, given by their numbers, one after another. */
  private void consider(int[] number, double[][][] corners) {
    for (int i = 0; i < 4; i++) {
      if (corners[number[(i + 3) % 4]][number[i]].length == 0) {
        return;
      }
    }
    EdgeLine[] side = new EdgeLine[4];
    double[] x = new double[4];
    double[] y = new double[4];
    for (int i = 0; i < 4; i++) {
      double[] corner = corners[number[(i + 3) % 4]][number[i]];
      side[i] = lines.get(number[i]);
      x[i] = corner[0];
      y[i] = corner[1];
    }
    Quad quad = new Quad(x, y);
    boolean turned = quad.area() < 0;
    if (turned) {
      quad = new Quad(reversed(x), reversed(y));
    }
    if (quad.area() < LEAST_AREA * width * height || !quad.isConvexClockwise()) {
      return;
    }
    double support = support(side, x, y);
    if (support > 0) {
      found.add(new Scored(quad, support));
    }
  }

  private static double[] reversed(double[] c) {
    return new double[] {c[0], c[3], c[2], c[1]};
  }

  private static double support(EdgeLine[] side, double[] x, double[] y) {
    double sum = 0;
    double length = 0;
    int borders = 0;
    for (int i = 0; i < 4; i++) {
      int j = (i + 1) % 4;
      double dx = x[j] - x[i];
      double dy = y[j] - y[i];
      double l = Math.sqrt(dx * dx + dy * dy);
      if (l < LEAST_SIDE) {
        return 0;
      }
      EdgeLine line = side[i];
      double from = line.along(x[i], y[i]);
      double to = line.along(x[j], y[j]);
      double mean = line.meanSupport(from, to);
      if (mean < LEAST_SUPPORT) {
        return 0;
      }
      borders += line.border ? 1 : 0;
      double beyond = line.border ? 0 : beyond(line, from, to, l);
      sum += l * (mean - 0.35 * beyond);
      length += l;
    }
    return borders > 2 ? 0 : sum / length;
  }

  /** Support just past the corners, where a side of the paper has ended. */
  private static double beyond(EdgeLine line, double from, double to, double length) {
    double step = Math.max(8, 0.12 * length) * Math.signum(to - from);
    double gap = 3 * Math.signum(to - from);
    return (line.meanSupport(from - gap - step, from - gap)
            + line.meanSupport(to + gap, to + gap + step))
        / 2;
  }
}
