package wickmark.imaging.line;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;
import wickmark.imaging.paper.DensityMap;
import wickmark.imaging.raster.Raster;
import wickmark.imaging.raster.Smoothing;

/**
 * Measures a line's course to a part of a cell: the centroid of its density across, in bins along
 * it, then a robust polynomial of the least degree that the points bear out (Bayesian information
 * criterion).
 */
public final class LineRefiner {
  private static final double BIN_MM = 1;

  /** Degrees allowed: a pencil line along a ruler bends only with the paper; a front wanders. */
  private static final int PENCIL_DEGREE = 3;

  private static final int TIDE_DEGREE = 6;

  /** How far from the strip's sides ticks are measured, mm; beyond them there is nothing. */
  private static final double TICKS_MM = 5;

  /** Contrast over the line's typical one from which a point is trusted less. */
  private static final double DARKER = 1.5;

  /** Smoothing before a colour beside a tide mark is read (standard deviation), mm. */
  private static final double COLOUR_SMOOTHING_MM = 0.45;

  /**
   * Colour beyond what the tide mark has itself, density, at which a point is trusted by half: the
   * rim of a dye that ran with the solvent answers to the mark's filter, too.
   */
  private static final double HALF_TRUST_COLOUR = 0.02;

  /** Where no tide mark is, beside one, to tell what the paper's grain alone looks like, mm. */
  private static final double[] BESIDE_MM = {-6, -4, 4, 6};

  /**
   * Shares of the width in which a tide mark is deeper than the mean of the grain beside it: a
   * front is from side to side (0.95 and more in practice pictures), grain is in half of the width,
   * and a course through the rims of spots has nothing between them.
   */
  private static final double SEEN_IN_HALF = 0.5;

  private static final double SEEN_THROUGHOUT = 0.8;

  private final DensityMap map;
  private final Layout.LinePath path;
  private final Raster signal;
  private final @Nullable Raster colour;
  private final double window;

  private LineRefiner(DensityMap map, Layout.LinePath path) {
    this.map = map;
    this.path = path;
    double mm = map.cellsPerMm();
    this.signal =
        switch (path.kind()) {
          case PENCIL, TICKS -> Smoothing.gaussian(map.neutral(), 0.6);
          case INK -> Smoothing.gaussian(map.chroma(), 0.6);
          case TIDE_MARK, BY_HAND -> TideFilter.apply(map, 0.22 * mm);
        };
    this.colour = isDrawn() ? null : Smoothing.gaussian(map.chroma(), COLOUR_SMOOTHING_MM * mm);
    this.window = (isDrawn() ? 1.1 : 1.5) * mm;
  }

  /** Measures the line in a finer map of the same strip. */
  public static FittedLine refine(DensityMap map, Layout.LinePath path) {
    return new LineRefiner(map, path).fit();
  }

  private boolean isDrawn() {
    return path.kind() == LineKind.PENCIL
        || path.kind() == LineKind.INK
        || path.kind() == LineKind.TICKS;
  }

  private FittedLine fit() {
    int bins = Math.max(8, (int) (map.width() / (BIN_MM * map.cellsPerMm())));
    double[] u = new double[bins];
    double[] y = new double[bins];
    double[] contrast = new double[bins];
    double[] tint = new double[bins];
    int n = 0;
    int onPaper = 0;
    int seen = 0;
    double grain = path.kind() == LineKind.TIDE_MARK ? contrastBeside(bins) : 0;
    double ticks = TICKS_MM * map.cellsPerMm();
    for (int b = 0; b < bins; b++) {
      double fromRim = Math.min(b, bins - 1 - b) * map.width() / (double) bins;
      if (path.kind() == LineKind.TICKS && fromRim > ticks) {
        continue;
      }
      int from = b * map.width() / bins;
      int to = (b + 1) * map.width() / bins;
      if (!isOnPaper(from, to, 0)) {
        continue;
      }
      onPaper++;
      double[] point = point(from, to, 0);
      if (point != null) {
        seen += point[2] > grain ? 1 : 0;
        u[n] = (point[0] - map.width() / 2.0) / (map.width() / 2.0);
        y[n] = point[1];
        contrast[n] = point[2];
        tint[n] = point[3];
        n++;
      }
    }
    if (n < 4) {
      return fromPath();
    }
    u = Arrays.copyOf(u, n);
    y = Arrays.copyOf(y, n);
    double[] trust = trust(Arrays.copyOf(contrast, n), Arrays.copyOf(tint, n));
    int most = path.kind() == LineKind.TICKS ? 1 : isDrawn() ? PENCIL_DEGREE : TIDE_DEGREE;
    LinePolynomial best = null;
    for (int degree = 1; degree <= Math.min(most, n / 4); degree++) {
      LinePolynomial p = LinePolynomial.robust(u, y, trust, degree);
      if (best == null || p.criterion() < best.criterion() - 6) {
        best = p;
      }
    }
    if (best == null) {
      return fromPath();
    }
    return new FittedLine(
        path.kind(),
        map.width() / 2.0,
        map.width() / 2.0,
        box(best.coefficients()),
        best.covariance(),
        best.sigma(),
        path.certainty() * throughout(seen / (double) onPaper),
        n / (double) bins);
  }

  /** What is left of a tide mark's certainty that is seen in so much of the width, 0 to 1. */
  private double throughout(double seen) {
    double more = (seen - SEEN_IN_HALF) / (SEEN_THROUGHOUT - SEEN_IN_HALF);
    return path.kind() == LineKind.TIDE_MARK ? Math.max(0, Math.min(1, more)) : 1;
  }

  /** Mean contrast of courses beside this one, the middle of them; 0 where none is on paper. */
  private double contrastBeside(int bins) {
    double[] means = new double[BESIDE_MM.length];
    int courses = 0;
    for (double aside : BESIDE_MM) {
      double rows = aside * map.cellsPerMm();
      double sum = 0;
      int n = 0;
      for (int b = 0; b < bins; b++) {
        int from = b * map.width() / bins;
        int to = (b + 1) * map.width() / bins;
        if (isOnPaper(from, to, rows)) {
          double[] point = point(from, to, rows);
          sum += point == null ? 0 : point[2];
          n++;
        }
      }
      if (n > 0) {
        means[courses++] = sum / n;
      }
    }
    return courses == 0 ? 0 : median(Arrays.copyOf(means, courses));
  }

  /** The coarse course as it is, where the fine map shows too little of the line. */
  private FittedLine fromPath() {
    double left = path.at(0) * map.height();
    double right = path.at(1) * map.height();
    double variance = map.cellsPerMm() * map.cellsPerMm() * 0.09;
    return new FittedLine(
        path.kind(),
        map.width() / 2.0,
        map.width() / 2.0,
        List.of((left + right) / 2, (right - left) / 2),
        new double[][] {{variance, 0}, {0, variance}},
        Math.sqrt(variance),
        path.certainty() / 2,
        0);
  }

  private static List<Double> box(double[] values) {
    List<Double> list = new ArrayList<>();
    for (double v : values) {
      list.add(v);
    }
    return list;
  }

  /** Row of the coarse course in the middle of a column, and so many rows beside it. */
  private double course(double x, double beside) {
    return path.at(x / map.width()) * map.height() + beside;
  }

  private boolean isOnPaper(int x, double beside) {
    int row = (int) Math.floor(course(x + 0.5, beside));
    return row >= 0 && row < map.height() && map.paper().at(x, row) != 0;
  }

  private boolean isOnPaper(int from, int to, double beside) {
    int used = 0;
    for (int x = from; x < to; x++) {
      used += isOnPaper(x, beside) ? 1 : 0;
    }
    return used >= 0.5 * (to - from);
  }

  /**
   * {column, row, contrast, greatest colour near it} of the line within some columns, or null where
   * it is not seen.
   *
   * @param beside how many rows beside the coarse course it is looked for
   */
  private double @Nullable [] point(int from, int to, double beside) {
    int half = (int) Math.ceil(window);
    double[] profile = new double[2 * half + 1];
    double[] tint = new double[2 * half + 1];
    double column = (from + to) / 2.0;
    int used = 0;
    for (int x = from; x < to; x++) {
      if (!isOnPaper(x, beside)) {
        continue;
      }
      double at = course(x + 0.5, beside);
      used++;
      for (int k = -half; k <= half; k++) {
        profile[k + half] += signal.sample(x + 0.5, at + k);
        tint[k + half] += colour == null ? 0 : colour.sample(x + 0.5, at + k);
      }
    }
    double mostTint = 0;
    for (int k = 0; k < profile.length; k++) {
      profile[k] /= used;
      mostTint = Math.max(mostTint, tint[k] / used);
    }
    double[] peak = peak(profile, half);
    return peak == null
        ? null
        : new double[] {column, course(column, beside) + peak[0], peak[1], mostTint};
  }

  /** Centroid of the upper part of the peak over the straight level between the window's ends. */
  private double @Nullable [] peak(double[] profile, int half) {
    int rim = Math.max(1, half / 4);
    double left = 0;
    double right = 0;
    for (int k = 0; k < rim; k++) {
      left += profile[k] / rim;
      right += profile[profile.length - 1 - k] / rim;
    }
    int top = -1;
    double[] over = new double[profile.length];
    for (int k = 0; k < profile.length; k++) {
      double level = left + (right - left) * k / (profile.length - 1.0);
      over[k] = profile[k] - level;
      if (k >= rim && k < profile.length - rim && (top < 0 || over[k] > over[top])) {
        top = k;
      }
    }
    if (over[top] <= 0.004) {
      return null;
    }
    double floor = 0.4 * over[top];
    double sum = 0;
    double moment = 0;
    for (int k = top; k >= 0 && over[k] > floor; k--) {
      sum += over[k] - floor;
      moment += (over[k] - floor) * k;
    }
    for (int k = top + 1; k < over.length && over[k] > floor; k++) {
      sum += over[k] - floor;
      moment += (over[k] - floor) * k;
    }
    return new double[] {moment / sum - half, over[top]};
  }

  private static double[] trust(double[] contrast, double[] tint) {
    double typical = median(contrast);
    double usual = median(tint);
    double[] trust = new double[contrast.length];
    for (int i = 0; i < trust.length; i++) {
      // What is far darker than the line, or coloured, is writing or dye that crosses it. Both fade
      // away without a border, and so does the trust.
      double ratio = contrast[i] / typical;
      double darker = Math.min(1, DARKER / ratio);
      double beyond = Math.max(0, tint[i] - usual) / HALF_TRUST_COLOUR;
      trust[i] = Math.min(1, ratio) * darker * darker / (1 + beyond * beyond);
    }
    return trust;
  }

  private static double median(double[] values) {
    double[] sorted = values.clone();
    Arrays.sort(sorted);
    return sorted[sorted.length / 2];
  }
}
