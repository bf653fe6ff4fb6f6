package wickmark.imaging.lane;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import wickmark.imaging.line.FittedLine;
import wickmark.imaging.paper.DensityMap;
import wickmark.imaging.raster.Raster;
import wickmark.imaging.raster.Smoothing;

/**
 * Finds the lanes from all that tells of them: writing below the baseline, marks and left-over dye
 * on it, stain above it. Each half millimetre across the strip has some of this evidence; lanes are
 * the contiguous groups that leave the least spread within groups (an optimal one-dimensional
 * clustering by dynamic programming).
 */
public final class LaneFinder {
  private static final double STEP_MM = 0.5;
  private static final int MOST_LANES = 14;

  /**
   * What one more lane costs, in mm² of weighted spread: groups closer than about 7 mm stay
   * together, a spot of 14 mm is not parted.
   */
  private static final double LANE_COST = 45;

  /** Least evidence of a lane, in half millimetres of full evidence. */
  private static final double LEAST_EVIDENCE = 2.5;

  private final DensityMap map;
  private final FittedLine baseline;
  private final double step;
  private final int columns;
  private final double[] writing;
  private final double[] marks;
  private final double[] stain;

  private LaneFinder(
      DensityMap map, FittedLine baseline, FittedLine front, DyeMap dye, OriginZone zone) {
    this.map = map;
    this.baseline = baseline;
    this.step = STEP_MM * map.cellsPerMm();
    this.columns = Math.max(1, (int) (map.width() / step));
    Raster ink = ink();
    this.writing = inkBetween(ink, 1.4, 11.5, 1, 0.35);
    // Where the line itself ran nothing on it tells of a lane.
    this.marks = zone.ran() ? new double[columns] : inkBetween(ink, 0.7, 2.4, -1, 0.6);
    this.stain = stainAbove(front, dye, zone.ran() ? zone.heightMm() : 2);
  }

  /**
   * Finds the lanes, from left to right.
   *
   * @param said how many there are, if the person says
   */
  public static List<LaneTrack> find(
      DensityMap map,
      FittedLine baseline,
      FittedLine front,
      DyeMap dye,
      OriginZone zone,
      OptionalInt said) {
    return new LaneFinder(map, baseline, front, dye, zone).lanes(said);
  }

  private Raster ink() {
    Raster smooth = Smoothing.gaussian(map.neutral(), 0.12 * map.cellsPerMm());
    Raster out = new Raster(map.width(), map.height());
    double limit = Math.max(0.035, 5 * Math.min(map.noise()[0], map.noise()[1]));
    for (int i = 0; i < out.cells().length; i++) {
      out.cells()[i] = smooth.cells()[i] > limit && map.paper().cells()[i] > 0 ? 1 : 0;
    }
    return out;
  }

  /** For each step across: 1 where at least so many millimetres of ink stand in the band. */
  private double[] inkBetween(
      Raster ink, double fromMm, double toMm, int direction, double enoughMm) {
    double mm = map.cellsPerMm();
    double[] out = new double[columns];
    for (int c = 0; c < columns; c++) {
      int x = (int) Math.min(map.width() - 1.0, (c + 0.5) * step);
      double at = baseline.at(x + 0.5);
      double amount = 0;
      for (double d = fromMm * mm; d <= toMm * mm; d++) {
        int y = (int) Math.floor(at + direction * d);
        if (y >= 0 && y < map.height()) {
          amount += ink.at(x, y) / mm;
        }
      }
      out[c] = Math.min(1, amount / enoughMm);
    }
    return out;
  }

  private double[] stainAbove(FittedLine front, DyeMap dye, double fromMm) {
    double mm = map.cellsPerMm();
    double[] out = new double[columns];
    for (int c = 0; c < columns; c++) {
      int x = (int) Math.min(map.width() - 1.0, (c + 0.5) * step);
      int from = (int) Math.max(0, front.at(x + 0.5) - 2 * mm);
      int to = (int) Math.min(map.height(), baseline.at(x + 0.5) - fromMm * mm);
      double most = 0;
      for (int y = from; y < to; y++) {
        most = Math.max(most, dye.mask().at(x, y) * dye.strength().at(x, y));
      }
      // A pale spot says as much of its lane as a deep one; its rim says less than its middle.
      out[c] = most / (most + 0.04);
    }
    return out;
  }

  private List<LaneTrack> lanes(OptionalInt said) {
    double[] weight = new double[columns];
    double total = 0;
    for (int c = 0; c < columns; c++) {
      weight[c] = 0.25 * (writing[c] + 1.5 * marks[c] + stain[c]) * STEP_MM / 0.5;
      total += weight[c];
    }
    if (total < 0.25) {
      return List.of();
    }
    int[][] groups = said.isPresent() ? partition(weight, said.getAsInt()) : bestPartition(weight);
    List<LaneTrack> lanes = new ArrayList<>();
    double[] origin = new double[groups.length];
    for (int g = 0; g < groups.length; g++) {
      origin[g] = origin(groups[g]);
    }
    for (int g = 0; g < groups.length; g++) {
      double left = g == 0 ? 0 : (origin[g - 1] + origin[g]) / 2;
      double right = g == groups.length - 1 ? map.width() : (origin[g] + origin[g + 1]) / 2;
      lanes.add(new LaneTrack(origin[g], left, right, support(groups[g])));
    }
    return lanes;
  }

  /** Where the sample was put: marks tell best, then writing, then stain. */
  private double origin(int[] group) {
    double sum = 0;
    double moment = 0;
    for (int c = group[0]; c < group[1]; c++) {
      double w = writing[c] + 4 * marks[c] + 0.7 * stain[c];
      sum += w;
      moment += w * (c + 0.5) * step;
    }
    return sum > 0 ? moment / sum : (group[0] + group[1]) * step / 2;
  }

  private double support(int[] group) {
    double w = 0;
    double m = 0;
    double s = 0;
    for (int c = group[0]; c < group[1]; c++) {
      w += writing[c];
      m += marks[c];
      s += stain[c];
    }
    double kinds = Math.min(1, w / 3) + Math.min(1, m / 2) + Math.min(1, s / 3);
    return Math.min(1, kinds / 2);
  }

  private int[][] bestPartition(double[] weight) {
    int[][] best = partition(weight, 1);
    double bestCost = cost(weight, best) + LANE_COST;
    for (int n = 2; n <= MOST_LANES; n++) {
      int[][] p = partition(weight, n);
      if (p.length < n) {
        break;
      }
      double cost = cost(weight, p) + n * LANE_COST;
      if (cost < bestCost) {
        bestCost = cost;
        best = p;
      }
    }
    return withoutStray(weight, best);
  }

  private int[][] withoutStray(double[] weight, int[][] groups) {
    List<int[]> kept = new ArrayList<>();
    for (int[] g : groups) {
      double sum = 0;
      for (int c = g[0]; c < g[1]; c++) {
        sum += weight[c];
      }
      if (4 * sum >= LEAST_EVIDENCE) {
        kept.add(g);
      }
    }
    return kept.isEmpty() ? groups : kept.toArray(new int[0][]);
  }

  private double cost(double[] weight, int[][] groups) {
    double sum = 0;
    for (int[] g : groups) {
      sum += new Spread(weight, g[0], g[1]).value();
    }
    return sum;
  }

  /** The weighted spread of a stretch, in mm², about its own mean. */
  private record Spread(double sum, double moment, double square) {
    Spread(double[] weight, int from, int to) {
      this(total(weight, from, to, 0), total(weight, from, to, 1), total(weight, from, to, 2));
    }

    private static double total(double[] weight, int from, int to, int power) {
      double sum = 0;
      for (int c = from; c < to; c++) {
        double x = (c + 0.5) * STEP_MM;
        sum += weight[c] * (power == 0 ? 1 : power == 1 ? x : x * x);
      }
      return sum;
    }

    double value() {
      return sum > 0 ? Math.max(0, square - moment * moment / sum) : 0;
    }
  }

  /** The best n contiguous groups of the columns that have evidence: {from, to} each. */
  private int[][] partition(double[] weight, int n) {
    double[] w = new double[columns + 1];
    double[] wx = new double[columns + 1];
    double[] wxx = new double[columns + 1];
    for (int c = 0; c < columns; c++) {
      double x = (c + 0.5) * STEP_MM;
      w[c + 1] = w[c] + weight[c];
      wx[c + 1] = wx[c] + weight[c] * x;
      wxx[c + 1] = wxx[c] + weight[c] * x * x;
    }
    double[][] best = new double[n + 1][columns + 1];
    int[][] cut = new int[n + 1][columns + 1];
    for (double[] row : best) {
      java.util.Arrays.fill(row, Double.POSITIVE_INFINITY);
    }
    best[0][0] = 0;
    for (int k = 1; k <= n; k++) {
      for (int to = 1; to <= columns; to++) {
        for (int from = k - 1; from < to; from++) {
          double sum = w[to] - w[from];
          if (best[k - 1][from] == Double.POSITIVE_INFINITY || sum < 0.05) {
            continue;
          }
          double moment = wx[to] - wx[from];
          double cost = best[k - 1][from] + wxx[to] - wxx[from] - moment * moment / sum;
          if (cost < best[k][to]) {
            best[k][to] = cost;
            cut[k][to] = from;
          }
        }
      }
    }
    int groups = n;
    while (groups > 1 && best[groups][columns] == Double.POSITIVE_INFINITY) {
      groups--;
    }
    int[][] out = new int[groups][];
    int to = columns;
    for (int k = groups; k > 0; k--) {
      out[k - 1] = new int[] {cut[k][to], to};
      to = cut[k][to];
    }
    return out;
  }
}
