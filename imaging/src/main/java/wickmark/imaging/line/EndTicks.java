package wickmark.imaging.line;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import wickmark.imaging.paper.DensityMap;
import wickmark.imaging.raster.Raster;
import wickmark.imaging.raster.Selection;

/**
 * Finds fronts that were marked by a short pencil tick at either side of the strip only: a stroke
 * across the left rim and one across the right rim at about one height, with nothing between them.
 */
final class EndTicks {
  /** Where a tick is looked for, from the paper's rim inwards, mm. */
  private static final double NEAR_MM = 0.8;

  private static final double FAR_MM = 3.3;

  /** Where there is no stroke if it is a tick and no line, from the rim inwards, mm. */
  private static final double BEYOND_MM = 7;

  private static final double BEYOND_TO_MM = 10.5;

  /**
   * The same for long ticks: parts of the width where a line right across is seen, and they not.
   */
  private static final double MIDST = 0.4;

  private static final double MIDST_TO = 0.5;

  /** Contrast of what goes on beyond, as a part of the tick's, from which it is no tick. */
  private static final double GOES_ON = 0.4;

  /** Least contrast of a tick, density, and over the noise of its rim. */
  private static final double LEAST = 0.02;

  private static final double LEAST_SIGMAS = 6;

  /** Steepest front between two ticks: 5°. */
  private static final double STEEPEST = 0.09;

  /** Strokes on one rim that are looked at: names and lines have some, too. */
  private static final int MOST = 6;

  private final DensityMap map;
  private final Raster ridge;

  private EndTicks(DensityMap map, Raster ridge) {
    this.map = map;
    this.ridge = ridge;
  }

  /** A stroke on a rim. */
  private record Stroke(double row, double contrast) {}

  /**
   * Returns the pairs of ticks, as lines.
   *
   * @param ridge how much darker than above and below each place is, grey
   * @param middle columns of the lines' bins
   */
  static List<CrossLine> find(DensityMap map, Raster ridge, double[] middle) {
    EndTicks ticks = new EndTicks(map, ridge);
    double[] left = ticks.profile(true, NEAR_MM, FAR_MM);
    double[] right = ticks.profile(false, NEAR_MM, FAR_MM);
    double noise = Math.max(noise(left), noise(right));
    List<CrossLine> lines = new ArrayList<>();
    List<Stroke> onLeft = ticks.strokes(left, true);
    List<Stroke> onRight = ticks.strokes(right, false);
    for (Stroke a : onLeft) {
      for (Stroke b : onRight) {
        if (Math.abs(a.row - b.row) < STEEPEST * map.width()) {
          lines.add(line(a, b, middle, map.width(), noise));
        }
      }
    }
    return lines;
  }

  /** The straight line between two ticks; seen as well as the fainter one. */
  private static CrossLine line(Stroke a, Stroke b, double[] middle, double width, double noise) {
    double[] y = new double[middle.length];
    double[] contrast = new double[middle.length];
    for (int i = 0; i < y.length; i++) {
      y[i] = a.row + (b.row - a.row) * middle[i] / width;
    }
    Arrays.fill(contrast, Math.min(a.contrast, b.contrast));
    return new CrossLine(LineKind.TICKS, middle.clone(), y, contrast, noise);
  }

  /** Mean ridge of each row between two distances from a rim; 0 where there is no paper. */
  private double[] profile(boolean left, double fromMm, double toMm) {
    int h = map.height();
    int from = (int) Math.round(fromMm * map.cellsPerMm());
    int to = (int) Math.round(toMm * map.cellsPerMm());
    double[] out = new double[h];
    for (int y = 0; y < h; y++) {
      int rim = rim(y, left);
      double sum = 0;
      int n = 0;
      for (int d = from; d < to; d++) {
        int x = left ? rim + d : rim - d;
        if (x >= 0 && x < map.width() && map.paper().at(x, y) > 0) {
          sum += ridge.at(x, y);
          n++;
        }
      }
      out[y] = n > (to - from) / 2 ? sum / n : 0;
    }
    return out;
  }

  /** Column of the outermost cell of paper in a row. */
  private int rim(int y, boolean left) {
    int w = map.width();
    for (int d = 0; d < w / 4; d++) {
      int x = left ? d : w - 1 - d;
      if (map.paper().at(x, y) > 0) {
        return x;
      }
    }
    return left ? w : -1;
  }

  private static double noise(double[] profile) {
    double[] size = new double[profile.length];
    int n = 0;
    for (double v : profile) {
      if (v != 0) {
        size[n++] = Math.abs(v);
      }
    }
    return n < 20 ? 1 : Math.max(5e-4, 1.4826 * Selection.median(size, n));
  }

  /** Short strokes on a rim, clearest first. */
  private List<Stroke> strokes(double[] profile, boolean left) {
    double enough = Math.max(LEAST, LEAST_SIGMAS * noise(profile));
    double[] beyond = profile(left, BEYOND_MM, BEYOND_TO_MM);
    double widthMm = map.width() / map.cellsPerMm();
    double midstMm = Math.max(BEYOND_MM, MIDST * widthMm);
    double midstToMm = Math.max(BEYOND_TO_MM, MIDST_TO * widthMm);
    double[] midst = profile(left, midstMm, midstToMm);
    int apart = (int) Math.ceil(map.cellsPerMm());
    int drift = (int) (STEEPEST * midstToMm * map.cellsPerMm());
    List<Stroke> found = new ArrayList<>();
    for (int y = 1; y + 1 < profile.length; y++) {
      boolean peak =
          profile[y] > enough && profile[y] >= profile[y - 1] && profile[y] > profile[y + 1];
      if (peak && most(profile, y, apart) <= profile[y]) {
        double goingOn = GOES_ON * profile[y];
        if (most(beyond, y, apart) <= goingOn || most(midst, y, apart + drift) <= goingOn) {
          found.add(new Stroke(y + 0.5, profile[y]));
        }
      }
    }
    found.sort(Comparator.comparingDouble(stroke -> -stroke.contrast));
    return found.subList(0, Math.min(MOST, found.size()));
  }

  private static double most(double[] values, int at, int reach) {
    double most = Double.NEGATIVE_INFINITY;
    for (int y = Math.max(0, at - reach); y <= Math.min(values.length - 1, at + reach); y++) {
      most = Math.max(most, values[y]);
    }
    return most;
  }
}
