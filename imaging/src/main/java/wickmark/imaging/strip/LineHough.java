package wickmark.imaging.strip;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Finds straight lines by a Hough transform in which every edge cell votes, with its weight, only
 * for lines square to its own normal. The strongest line is refined by least squares, its cells are
 * taken out, and the next is looked for.
 */
final class LineHough {
  private static final int ANGLES = 180;

  /** How far the line's normal may be from the edge cell's, in angle bins of 1°. */
  private static final int SPREAD = 4;

  /** How far off a line a cell may lie and still belong to it, cells. */
  private static final double BELONGS = 1.8;

  /** How far off a peak's line the cells lie that are looked at for it, cells. */
  private static final double NEAR = 12;

  /** The same for their normals, in angle bins of 1°: belonging takes 0.2 radians. */
  private static final int NEAR_ANGLES = 24;

  /** Greatest angle, radians, between a line's normal and that of a cell that belongs to it. */
  private static final double BELONGS_ANGLE = 0.2;

  /** Lines within this of one another run in one direction, radians. */
  private static final double ONE_DIRECTION = 0.17;

  /**
   * Most of the lines that may run in one direction: the grain of wood has more than are looked
   * for, and a sheet has sides in two.
   */
  private static final double SHARE_OF_A_DIRECTION = 2.0 / 3;

  /** Edge cells with less weight are texture. */
  private static final double LEAST_WEIGHT = 0.12;

  private final EdgeMap edges;
  private final double[] cos = new double[ANGLES];
  private final double[] sin = new double[ANGLES];
  private final int reach;
  private final float[] votes;
  private final boolean[] taken;

  /** For each angle the index of its greatest smoothed vote, or −1 where votes have changed. */
  private final int[] rowPeak = new int[ANGLES];

  /** Indices of the cells that are edges, ascending. */
  private final int[] cells;

  /** The angle bin of the normal of each of them. */
  private final short[] bins;

  /** How many of them lie above each row. */
  private final int[] above;

  private LineHough(EdgeMap edges) {
    this.edges = edges;
    this.reach = (int) Math.ceil(Math.hypot(edges.width, edges.height)) + 2;
    this.votes = new float[ANGLES * (2 * reach + 1)];
    this.taken = new boolean[edges.weight.length];
    this.above = new int[edges.height + 1];
    int[] found = new int[edges.weight.length];
    int count = 0;
    for (int y = 0; y < edges.height; y++) {
      for (int i = y * edges.width; i < (y + 1) * edges.width; i++) {
        if (edges.weight[i] > LEAST_WEIGHT) {
          found[count++] = i;
        }
      }
      above[y + 1] = count;
    }
    this.cells = Arrays.copyOf(found, count);
    this.bins = new short[count];
    for (int k = 0; k < count; k++) {
      bins[k] = (short) bin(cells[k]);
    }
    Arrays.fill(rowPeak, -1);
    for (int a = 0; a < ANGLES; a++) {
      cos[a] = StrictMath.cos(a * Math.PI / ANGLES);
      sin[a] = StrictMath.sin(a * Math.PI / ANGLES);
    }
  }

  private int bin(int cell) {
    return Math.min(ANGLES - 1, (int) (edges.normal[cell] * ANGLES / Math.PI));
  }

  /**
   * Returns the lines with the most votes, strongest first.
   *
   * @param most how many at the most
   * @param leastVotes weight (cells of full weight) below which the search stops
   */
  static List<EdgeLine> find(EdgeMap edges, int most, double leastVotes) {
    LineHough hough = new LineHough(edges);
    hough.voteAll();
    List<EdgeLine> lines = new ArrayList<>();
    for (int tries = 0; tries < 3 * most && lines.size() < most; tries++) {
      int peak = hough.peak();
      if (hough.smoothed(peak) < leastVotes) {
        break;
      }
      EdgeLine line = hough.takeLine(peak);
      if (line != null && alike(line, lines) < most * SHARE_OF_A_DIRECTION) {
        lines.add(line);
      }
    }
    return lines;
  }

  /** How many of the lines run nearly as this one. */
  private static long alike(EdgeLine line, List<EdgeLine> lines) {
    return lines.stream()
        .filter(other -> EdgeLine.angleBetween(other.normal, line.normal) < ONE_DIRECTION)
        .count();
  }

  private void voteAll() {
    for (int i : cells) {
      vote(i % edges.width, i / edges.width, 1);
    }
  }

  private void vote(int x, int y, int sign) {
    int i = y * edges.width + x;
    int middle = (int) Math.round(edges.normal[i] * ANGLES / Math.PI);
    for (int d = -SPREAD; d <= SPREAD; d++) {
      int a = middle + d;
      if (a < 0) {
        a += ANGLES;
      } else if (a >= ANGLES) {
        a -= ANGLES;
      }
      double rho = (x + 0.5) * cos[a] + (y + 0.5) * sin[a];
      votes[a * (2 * reach + 1) + reach + (int) Math.round(rho)] += sign * edges.weight[i];
      rowPeak[a] = -1;
    }
  }

  private int peak() {
    int best = 1;
    for (int a = 0; a < ANGLES; a++) {
      if (rowPeak[a] < 0) {
        rowPeak[a] = peakOfRow(a);
      }
      if (smoothed(rowPeak[a]) > smoothed(best)) {
        best = rowPeak[a];
      }
    }
    return best;
  }

  private int peakOfRow(int angle) {
    int from = angle * (2 * reach + 1);
    int best = from;
    double most = smoothed(best);
    for (int i = from + 1; i <= from + 2 * reach; i++) {
      if (votes[i] > 0) {
        double here = smoothed(i);
        if (here > most) {
          most = here;
          best = i;
        }
      }
    }
    return best;
  }

  /** A line that falls between two offsets shares its votes: count both neighbours. */
  private double smoothed(int i) {
    int before = i > 0 ? i - 1 : 0;
    int after = i < votes.length - 1 ? i + 1 : i;
    return votes[i] + 0.5 * (votes[before] + votes[after]);
  }

  private @org.jspecify.annotations.Nullable EdgeLine takeLine(int peak) {
    int a = peak / (2 * reach + 1);
    double offset = peak % (2 * reach + 1) - reach;
    double[] line = {cos[a], sin[a], offset};
    Nearby nearby = new Nearby(line);
    for (int round = 0; round < 3; round++) {
      double width = round == 0 ? BELONGS + 1 : BELONGS;
      nearby = nearby.holdsAllOf(line, width) ? nearby : new Nearby(line);
      line = fit(line, width, nearby.cells);
    }
    nearby = nearby.holdsAllOf(line, BELONGS) ? nearby : new Nearby(line);
    double removed = remove(line, nearby.cells);
    if (removed <= 0) {
      votes[peak] = 0;
      votes[Math.max(peak - 1, 0)] = 0;
      votes[Math.min(peak + 1, votes.length - 1)] = 0;
      rowPeak[a] = -1;
      return null;
    }
    return EdgeLine.along(edges, line[0], line[1], line[2], 2);
  }

  /**
   * The cells near a line that are not taken, ascending: a fitted line hardly leaves them. They are
   * looked for in the short piece of each row that the line crosses.
   */
  private final class Nearby {
    private final double[] line;
    private final int[] cells;

    Nearby(double[] line) {
      this.line = line;
      int[] near = new int[64];
      int count = 0;
      int middle = (int) Math.round(StrictMath.atan2(line[1], line[0]) * ANGLES / Math.PI);
      for (int y = 0; y < edges.height; y++) {
        double[] columns = columns(line, y);
        for (int k = firstFrom(columns[0], y); k < above[y + 1]; k++) {
          int i = LineHough.this.cells[k];
          int x = i - y * edges.width;
          if (x > columns[1]) {
            break;
          }
          int turned = Math.floorMod(bins[k] - middle + NEAR_ANGLES, ANGLES);
          if (turned <= 2 * NEAR_ANGLES && distance(line, x, y) < NEAR && !taken[i]) {
            near = count == near.length ? Arrays.copyOf(near, 2 * count) : near;
            near[count++] = i;
          }
        }
      }
      this.cells = Arrays.copyOf(near, count);
    }

    /** Between which columns a row comes near the line: a little more, that none is left out. */
    private double[] columns(double[] line, int y) {
      double middle = (line[2] - line[1] * (y + 0.5)) / line[0];
      double reach = NEAR / Math.abs(line[0]) + 2;
      return Double.isFinite(middle) && Double.isFinite(reach)
          ? new double[] {middle - reach, middle + reach}
          : new double[] {0, edges.width};
    }

    /** The first edge cell of a row that does not lie before a column. */
    private int firstFrom(double column, int y) {
      if (column <= 0) {
        return above[y];
      }
      int from = y * edges.width + (int) Math.min(column, edges.width);
      int at = Arrays.binarySearch(LineHough.this.cells, above[y], above[y + 1], from);
      return at < 0 ? -at - 1 : at;
    }

    /** Whether all cells that belong to another line are among these. */
    boolean holdsAllOf(double[] other, double width) {
      double turned =
          EdgeLine.angleBetween(
              StrictMath.atan2(line[1], line[0]), StrictMath.atan2(other[1], other[0]));
      double least = Math.PI * (NEAR_ANGLES - 2) / ANGLES;
      return turned + BELONGS_ANGLE < least && farthest(other) + width < NEAR;
    }

    /** How far off this line the other runs within the picture, at the most. */
    private double farthest(double[] other) {
      double sign = line[0] * other[0] + line[1] * other[1] < 0 ? -1 : 1;
      double most = 0;
      for (int corner = 0; corner < 4; corner++) {
        double x = corner % 2 == 0 ? 0 : edges.width;
        double y = corner / 2 == 0 ? 0 : edges.height;
        double here = line[0] * x + line[1] * y - line[2];
        double there = other[0] * x + other[1] * y - other[2];
        most = Math.max(most, Math.abs(here - sign * there));
      }
      return most;
    }
  }

  private static double distance(double[] line, int x, int y) {
    return Math.abs(line[0] * (x + 0.5) + line[1] * (y + 0.5) - line[2]);
  }

  private double[] fit(double[] line, double width, int[] near) {
    double sum = 0;
    double sx = 0;
    double sy = 0;
    double sxx = 0;
    double sxy = 0;
    double syy = 0;
    double normal = StrictMath.atan2(line[1], line[0]);
    for (int i : near) {
      int x = i % edges.width;
      int y = i / edges.width;
      if (!belongs(i, x, y, line, normal, width)) {
        continue;
      }
      double w = edges.weight[i];
      sum += w;
      sx += w * (x + 0.5);
      sy += w * (y + 0.5);
      sxx += w * (x + 0.5) * (x + 0.5);
      sxy += w * (x + 0.5) * (y + 0.5);
      syy += w * (y + 0.5) * (y + 0.5);
    }
    if (sum < 3) {
      return line;
    }
    double mx = sx / sum;
    double my = sy / sum;
    double cxx = sxx / sum - mx * mx;
    double cxy = sxy / sum - mx * my;
    double cyy = syy / sum - my * my;
    double direction = 0.5 * StrictMath.atan2(2 * cxy, cxx - cyy);
    double nx = -StrictMath.sin(direction);
    double ny = StrictMath.cos(direction);
    if (nx * line[0] + ny * line[1] < 0) {
      nx = -nx;
      ny = -ny;
    }
    return new double[] {nx, ny, nx * mx + ny * my};
  }

  private boolean belongs(int i, int x, int y, double[] line, double normal, double width) {
    return !taken[i]
        && distance(line, x, y) < width
        && EdgeLine.angleBetween(edges.normal[i], normal) < BELONGS_ANGLE;
  }

  private double remove(double[] line, int[] near) {
    double removed = 0;
    double normal = StrictMath.atan2(line[1], line[0]);
    for (int i : near) {
      int x = i % edges.width;
      int y = i / edges.width;
      if (belongs(i, x, y, line, normal, BELONGS)) {
        vote(x, y, -1);
        taken[i] = true;
        removed += edges.weight[i];
      }
    }
    return removed;
  }
}
