package wickmark.imaging.spot;

import wickmark.imaging.line.FittedLine;
import wickmark.imaging.paper.DensityMap;
import wickmark.imaging.raster.Raster;

/**
 * Shares out each cell's density among a lane's peaks in the proportion in which the fitted peaks
 * have it there, channel by channel; within the window of the map that the lane's cells take up.
 */
final class PeakShares {
  private final FittedLine baseline;
  private final Raster[] density;
  private final double originMm;
  private final int[] cells;
  private final PeakFit fit;
  private final double mm;

  /** Cells of the map in a row. */
  private final int across;

  /** Cells up a column for a cell square to the baseline. */
  private final double square;

  private final int left;
  private final int top;
  private final int width;
  private final int height;

  /**
   * Shares of one lane.
   *
   * @param originMm distance from the baseline below which nothing is anybody's, mm
   * @param cells of the lane, row by row
   */
  PeakShares(
      DensityMap map,
      FittedLine baseline,
      Raster[] density,
      double originMm,
      int[] cells,
      PeakFit fit) {
    this.baseline = baseline;
    this.density = density;
    this.originMm = originMm;
    this.cells = cells;
    this.fit = fit;
    this.mm = map.cellsPerMm();
    this.across = map.width();
    this.square = Math.sqrt(1 + baseline.slope() * baseline.slope());
    int x0 = Integer.MAX_VALUE;
    int y0 = Integer.MAX_VALUE;
    int x1 = 0;
    int y1 = 0;
    for (int i : cells) {
      x0 = Math.min(x0, i % across);
      x1 = Math.max(x1, i % across);
      y0 = Math.min(y0, i / across);
      y1 = Math.max(y1, i / across);
    }
    this.left = x0;
    this.top = y0;
    this.width = x1 - x0 + 1;
    this.height = y1 - y0 + 1;
  }

  int left() {
    return left;
  }

  int top() {
    return top;
  }

  int width() {
    return width;
  }

  int height() {
    return height;
  }

  /** Distance of a cell of the map from the baseline, mm. */
  double along(int x, int y) {
    return (baseline.at(x + 0.5) - (y + 0.5)) / square / mm;
  }

  /** What belongs to a spot of each cell of the window: red, green and blue density. */
  Raster[] own(SpotPeaks peaks) {
    Raster[] own = {
      new Raster(width, height), new Raster(width, height), new Raster(width, height)
    };
    int n = fit.shapes().size();
    double[] claim = new double[n];
    double[] streak = new double[n];
    double[] height = new double[n];
    double[] whole = new double[n];
    for (int j = 0; j < n; j++) {
      whole[j] = fit.height(j);
    }
    for (int i : cells) {
      int x = i % across;
      int y = i / across;
      double along = along(x, y);
      if (along < originMm) {
        continue;
      }
      for (int j = 0; j < n; j++) {
        PeakShape shape = fit.shapes().get(j);
        claim[j] = shape.claim(along);
        streak[j] = shape.streakAt(along);
        height[j] = shape.at(along);
      }
      for (int c = 0; c < 3; c++) {
        double claims = 1e-12;
        double mine = 0;
        double model = 1e-9;
        double streaks = 0;
        for (int j = 0; j < n; j++) {
          // A channel that a dye hardly absorbs in still has its paper's noise: a little for all.
          double share = (fit.amount()[j][c] + 0.02 * whole[j]) * claim[j];
          claims += share;
          mine += peaks.holds(j) ? share : 0;
          streaks += fit.amount()[j][c] * streak[j];
          model += fit.amount()[j][c] * height[j];
        }
        double spots = density[c].cells()[i] * (1 - Math.min(1, streaks / model));
        own[c].set(x - left, y - top, (float) (spots * mine / claims));
      }
    }
    return own;
  }

  /** How much of the spot's own ground other peaks cover, 0 to 1. */
  double overlap(SpotPeaks peaks) {
    int peak = peaks.highest();
    PeakShape s = fit.shapes().get(peak);
    double mine = 0;
    double others = 0;
    for (double t = -2; t <= 2; t += 0.1) {
      double along = s.centre() + t * (t > 0 ? s.ahead() : s.behind());
      double h = s.peak(along);
      mine += h * fit.height(peak);
      for (int j = 0; j < fit.shapes().size(); j++) {
        if (!peaks.holds(j)) {
          others += h * Math.min(fit.height(peak), fit.height(j) * fit.shapes().get(j).peak(along));
        }
      }
    }
    return others / (mine + 1e-9);
  }
}
