package wickmark.imaging.line;

import java.util.Arrays;
import wickmark.imaging.paper.DensityMap;
import wickmark.imaging.raster.Selection;

/** Places on a line that are darker or broader than the line is about them. */
final class LineDots {
  /** How far from the line's middle its own density and a dot's are summed, mm. */
  private static final double REACH_MM = 1;

  /** Half the stretch of the line that a dot is compared with, mm. */
  private static final double BESIDE_MM = 5;

  /** A dot's least length along the line, mm: less is grain. */
  private static final double SHORTEST_MM = 0.3;

  /**
   * The most that its darker half is long, mm: more is a spot that lies across the line. What ran
   * out of a sample is paler than that.
   */
  private static final double LONGEST_MM = 3;

  /** Standard deviations of the line's own unevenness from which it is a dot. */
  private static final double CLEAR = 6;

  /** The same, as a part of the line. */
  private static final double LEAST = 0.3;

  /** Half the stretch over which the line's grain is evened out, mm: thinner than a dot. */
  private static final double GRAIN_MM = 0.3;

  private final DensityMap map;

  LineDots(DensityMap map) {
    this.map = map;
  }

  /** Whether there is one in each of the line's bins. */
  boolean[] bins(CrossLine line) {
    double mm = map.cellsPerMm();
    int bins = line.x().length;
    double[] dark = evened(sums(line));
    double[] excess = new double[dark.length];
    double[] away = new double[dark.length];
    int beside = (int) Math.ceil(BESIDE_MM * mm);
    double[] usual = new double[dark.length];
    for (int x = 0; x < dark.length; x++) {
      double[] around =
          Arrays.copyOfRange(dark, Math.max(0, x - beside), Math.min(dark.length, x + beside + 1));
      usual[x] = Selection.median(around, around.length);
      excess[x] = dark[x] - usual[x];
      away[x] = Math.abs(excess[x]);
    }
    double sigma = 1.4826 * Selection.median(away, away.length);
    boolean[] dotted = new boolean[bins];
    int start = 0;
    for (int x = 0; x <= dark.length; x++) {
      if (x < dark.length && excess[x] > Math.max(CLEAR * sigma, LEAST * usual[x])) {
        continue;
      }
      boolean isDot =
          x - start >= SHORTEST_MM * mm && widthAtHalf(excess, start, x) <= LONGEST_MM * mm;
      if (isDot) {
        dotted[Math.min(bins - 1, (start + x) / 2 * bins / map.width())] = true;
      }
      start = x + 1;
    }
    return dotted;
  }

  /** How many columns have more than half of the most there is, from one to before another. */
  private static int widthAtHalf(double[] excess, int from, int to) {
    double[] run = Arrays.copyOfRange(excess, from, to);
    double half = Arrays.stream(run).max().orElse(0) / 2;
    return (int) Arrays.stream(run).filter(e -> e > half).count();
  }

  /** Means of so many columns around each: a pencil's line is grainy, and a cross has thin arms. */
  private double[] evened(double[] sums) {
    int half = (int) Math.round(GRAIN_MM * map.cellsPerMm());
    double[] evened = new double[sums.length];
    for (int x = 0; x < sums.length; x++) {
      int from = Math.max(0, x - half);
      int to = Math.min(sums.length - 1, x + half);
      for (int i = from; i <= to; i++) {
        evened[x] += sums[i] / (to - from + 1);
      }
    }
    return evened;
  }

  /** Mean density of the channels about the line, summed across it, in each column. */
  private double[] sums(CrossLine line) {
    int reach = (int) Math.ceil(REACH_MM * map.cellsPerMm());
    double[] sums = new double[map.width()];
    for (int x = 0; x < sums.length; x++) {
      int at = (int) Math.floor(line.at(x + 0.5));
      int top = Math.max(0, at - reach);
      for (int y = top; y <= Math.min(map.height() - 1, at + reach); y++) {
        for (int c = 0; c < 3; c++) {
          sums[x] += map.density()[c].at(x, y) / 3;
        }
      }
    }
    return sums;
  }
}
