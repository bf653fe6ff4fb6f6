package wickmark.imaging.spot;

import java.util.Arrays;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import wickmark.imaging.line.FittedLine;
import wickmark.imaging.raster.Raster;
import wickmark.imaging.raster.Selection;

/**
 * The trace that a dye leaves in the paper on its whole way from the origin up to its spot. It is
 * often paler than what shows in a single cell, yet long: a fiftieth of the spot's density over
 * some centimetres weighs as much as a tenth of the spot, and drags its centre of mass towards the
 * origin. It is therefore measured below the spot, as the mean over its length at each place across
 * the lane against the blank paper on both sides, and taken off before spots are measured. What a
 * streak may be is said in {@link Streaks}, which tells streaks from spots in the lane's profile.
 *
 * @param originX column of the lane's origin, cells
 * @param lean columns that the trace's middle moves to the right in a cell of height
 * @param firstMm offset of the first column of the cross-section from the trace's middle, mm
 * @param across the cross-section: density at each half millimetre across
 * @param hue the dye's densities in the three channels, a unit vector
 * @param peak the spot that it leads to
 */
record StreakBand(
    double originX, double lean, double firstMm, double[] across, double[] hue, PeakShape peak) {
  /** Step across the lane, mm. */
  private static final double ACROSS_MM = 0.5;

  /** Step along the lane within which a density is averaged, mm. */
  private static final double ALONG_MM = 1;

  /** Blank paper that is looked at on either side, mm. */
  private static final double BLANK_MM = 2;

  /** A spot's rim lies so many standard deviations from its middle. */
  private static final double RIM = 2.4;

  /** Mass over its standard deviation at which a trace is as likely there as not. */
  private static final double CLEAR = 4;

  /** From that to where it is surely there, and surely not. */
  private static final double CLEAR_RAMP = 1;

  /** The map's parts that belong to one lane. */
  record Lane(FittedLine baseline, double originX, int[] cells, Raster mask, double cellsPerMm) {
    private double along(double x, double y) {
      double square = Math.sqrt(1 + baseline.slope() * baseline.slope());
      return (baseline.at(x) - y) / square / cellsPerMm;
    }
  }

  /**
   * Returns the densities without the traces of a fit's peaks, the same rasters where there are
   * none.
   *
   * @param density red, green and blue
   */
  static Raster[] removed(Lane lane, Raster[] density, PeakFit fit, LaneProfile profile) {
    List<Integer> fromTheTop =
        IntStream.range(0, fit.shapes().size())
            .boxed()
            .sorted(Comparator.comparingDouble(j -> -fit.shapes().get(j).centre()))
            .toList();
    Raster[] left = density;
    for (int j : fromTheTop) {
      Optional<StreakBand> band = below(lane, left, fit, j, profile);
      if (band.isPresent()) {
        left = left == density ? copy(density) : left;
        band.get().takeFrom(left, lane);
      }
    }
    return left;
  }

  private static Raster[] copy(Raster[] in) {
    return new Raster[] {in[0].copy(), in[1].copy(), in[2].copy()};
  }

  private static Optional<StreakBand> below(
      Lane lane, Raster[] density, PeakFit fit, int peak, LaneProfile profile) {
    PeakShape spot = fit.shapes().get(peak);
    double to = spot.centre() - 4 * spot.behind();
    double from = Math.max(Streaks.ORIGIN_MM, profile.start());
    Set<Integer> trace = partsOfTrace(fit, peak);
    for (int j = 0; j < fit.shapes().size(); j++) {
      PeakShape other = fit.shapes().get(j);
      if (other.centre() < spot.centre() && !trace.contains(j)) {
        from = Math.max(from, other.centre() + 3 * other.ahead());
      }
    }
    int blocks = (int) ((to - from) / ALONG_MM);
    if (to - from < Streaks.FREE_STREAK_MM) {
      return Optional.empty();
    }
    double[] hue = fit.amount()[peak].clone();
    double height = fit.height(peak);
    for (int c = 0; c < 3; c++) {
      hue[c] /= height;
    }
    double[] middle = middle(lane, density, spot);
    double lean = (middle[0] - lane.originX) / (spot.centre() * lane.cellsPerMm);
    double half = ACROSS_MM * Math.ceil(RIM * middle[1] / lane.cellsPerMm / ACROSS_MM);
    Blocks found = new Blocks(lane, lean, half, from, blocks);
    found.add(density);
    return found.trace(hue, height, spot);
  }

  /**
   * Which peaks stand for the trace itself or lie on it: the low ones of the spot's hue behind it,
   * if one of them is wider than any spot. How many peaks the trace's waves are described by is a
   * matter of chance; the median over its length passes by those that are spots.
   */
  private static Set<Integer> partsOfTrace(PeakFit fit, int peak) {
    Set<Integer> low = new HashSet<>();
    boolean anyWide = false;
    for (int other = 0; other < fit.shapes().size(); other++) {
      PeakShape shape = fit.shapes().get(other);
      if (shape.centre() < fit.shapes().get(peak).centre()
          && fit.height(other) < Streaks.MOST_STREAK * fit.height(peak)
          && StrictMath.cos(fit.colourAngle(other, peak)) > Streaks.STREAK_HUE) {
        low.add(other);
        anyWide |= shape.ahead() + shape.behind() > 2 * Streaks.PLATEAU_MM;
      }
    }
    return anyWide ? low : Set.of();
  }

  /** Column of a spot's middle, and its standard deviation across, cells. */
  private static double[] middle(Lane lane, Raster[] density, PeakShape spot) {
    double sum = 0;
    double first = 0;
    double second = 0;
    int w = density[0].width();
    for (int i : lane.cells) {
      double x = i % w + 0.5;
      int row = i / w;
      if (Math.abs(lane.along(x, row + 0.5) - spot.centre()) < spot.behind()) {
        double d = 0;
        for (Raster channel : density) {
          d += channel.cells()[i];
        }
        sum += Math.max(0, d);
        first += Math.max(0, d) * x;
        second += Math.max(0, d) * x * x;
      }
    }
    if (sum <= 0) {
      return new double[] {lane.originX, 0};
    }
    double mean = first / sum;
    return new double[] {mean, Math.sqrt(Math.max(0, second / sum - mean * mean))};
  }

  /** Mean densities of a stretch of the lane, in pieces along and across. */
  private static final class Blocks {
    private final Lane lane;
    private final double lean;
    private final double half;
    private final double from;
    private final int blocks;
    private final int columns;

    /** Sums by block, column and channel, and the blank paper beside them in one column more. */
    private final double[][][] sum;

    private final double[][] count;

    Blocks(Lane lane, double lean, double half, double from, int blocks) {
      this.lane = lane;
      this.lean = lean;
      this.half = half;
      this.from = from;
      this.blocks = blocks;
      this.columns = (int) Math.round(2 * half / ACROSS_MM);
      this.sum = new double[blocks][columns + 1][3];
      this.count = new double[blocks][columns + 1];
    }

    void add(Raster[] density) {
      double mm = lane.cellsPerMm;
      double reach = (half + BLANK_MM) * mm;
      int w = density[0].width();
      int h = density[0].height();
      double atOrigin = lane.baseline.at(lane.originX);
      int top = (int) Math.max(0, atOrigin - (from + blocks * ALONG_MM + 2) * mm);
      int bottom = (int) Math.min(h - 1.0, atOrigin - (from - 2) * mm);
      for (int y = top; y <= bottom; y++) {
        double middle = middle(y);
        int left = (int) Math.max(0, middle - reach);
        int right = (int) Math.min(w - 1.0, middle + reach);
        for (int x = left; x <= right; x++) {
          double k = (lane.along(x + 0.5, y + 0.5) - from) / ALONG_MM;
          double u = (x + 0.5 - middle) / mm;
          boolean beside = Math.abs(u) >= half;
          // What is stained beside the trace is no blank paper, and 0 is beside the paper.
          boolean counts =
              k >= 0
                  && k < blocks
                  && density[0].at(x, y) != 0
                  && (!beside || lane.mask.at(x, y) == 0);
          if (counts) {
            int column = beside ? columns : (int) ((u + half) / ACROSS_MM);
            count[(int) k][column]++;
            for (int c = 0; c < 3; c++) {
              sum[(int) k][column][c] += density[c].at(x, y);
            }
          }
        }
      }
    }

    private double middle(int y) {
      return lane.originX + lean * (lane.baseline.at(lane.originX) - (y + 0.5));
    }

    /** The trace in these pieces; none where there is none or of another hue. */
    Optional<StreakBand> trace(double[] hue, double height, PeakShape spot) {
      double[] across = new double[columns];
      double[] whole = new double[3];
      double[] mass = new double[blocks];
      for (int u = 0; u < columns; u++) {
        double[] in = new double[3];
        for (int c = 0; c < 3; c++) {
          in[c] = above(u, c, mass, hue[c]);
          whole[c] += in[c] * ACROSS_MM;
          across[u] += in[c] * hue[c];
        }
        across[u] = Math.max(0, across[u]);
      }
      double total = 0;
      double size = 0;
      for (int c = 0; c < 3; c++) {
        total += whole[c] * hue[c];
        size += whole[c] * whole[c];
      }
      double deviation = deviation(mass);
      if (total <= 0 || total >= Streaks.MOST_STREAK * height) {
        return Optional.empty();
      }
      double clear = deviation > 0 ? Streaks.ramp((total / deviation - CLEAR) / CLEAR_RAMP) : 1;
      double part = clear * Streaks.ofTheHue(total / Math.sqrt(size));
      for (int u = 0; u < columns; u++) {
        across[u] *= part;
      }
      return part > 0
          ? Optional.of(new StreakBand(lane.originX, lean, -half, across, hue, spot))
          : Optional.empty();
    }

    /**
     * Median over the length of the density in one column above the blank paper beside it; adds
     * each block's to its mass.
     */
    private double above(int column, int channel, double[] mass, double hue) {
      double[] values = new double[blocks];
      int n = 0;
      for (int k = 0; k < blocks; k++) {
        if (count[k][column] > 0 && count[k][columns] > 0) {
          double value =
              sum[k][column][channel] / count[k][column]
                  - sum[k][columns][channel] / count[k][columns];
          mass[k] += value * hue * ACROSS_MM;
          values[n++] = value;
        }
      }
      return n < Streaks.FREE_STREAK_MM / ALONG_MM ? 0 : Selection.median(values, n);
    }

    /** Standard deviation of the median of these masses. */
    private static double deviation(double[] mass) {
      double[] sorted = mass.clone();
      double median = Selection.median(sorted, sorted.length);
      double[] off = Arrays.stream(mass).map(m -> Math.abs(m - median)).toArray();
      // 1.4826: from the median deviation to the standard one; 1.25: from a mean's to a median's.
      return 1.4826 * 1.25 * Selection.median(off, off.length) / Math.sqrt(off.length);
    }
  }

  /** Takes the trace off a lane's cells. */
  private void takeFrom(Raster[] density, Lane lane) {
    int w = density[0].width();
    double end = peak.centre() + 4 * peak.behind();
    double foot = lane.baseline.at(originX);
    for (int i : lane.cells) {
      double x = i % w + 0.5;
      int row = i / w;
      double y = row + 0.5;
      double along = lane.along(x, y);
      double u = ((x - originX - lean * (foot - y)) / lane.cellsPerMm - firstMm) / ACROSS_MM;
      if (u >= 0 && u < across.length && along < end) {
        // Dye is left behind by the spot, so there is all of it below and none ahead.
        double part = 1 / (1 + StrictMath.exp(1.702 * (along - peak.centre()) / peak.behind()));
        double trace = across[(int) u] * part;
        for (int c = 0; c < 3; c++) {
          density[c].cells()[i] -= (float) (trace * hue[c]);
        }
      }
    }
  }

  StreakBand {
    across = across.clone();
    hue = hue.clone();
  }
}
