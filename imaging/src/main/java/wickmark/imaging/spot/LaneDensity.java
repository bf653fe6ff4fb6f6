package wickmark.imaging.spot;

import java.util.ArrayList;
import java.util.List;
import wickmark.imaging.lane.DyeMap;
import wickmark.imaging.lane.LaneTrack;
import wickmark.imaging.line.FittedLine;
import wickmark.imaging.raster.Raster;

/**
 * The density along each lane, summed across a band of paper around its way: what a person looks at
 * to see what is a spot and what is not. Nothing is measured from it.
 *
 * @param start distance from the baseline of the first sample's middle, cells
 * @param step between samples, cells
 * @param density summed across, the norm of the three channels over √3, density · mm
 */
public record LaneDensity(double start, double step, List<Double> density) {
  private static final double STEP_MM = 0.5;

  /** Half the widest band, mm: no spot is wider. */
  private static final double HALF_MM = 7;

  /** How far beyond the front it is drawn, mm. */
  private static final double BEYOND_MM = 2;

  public LaneDensity {
    density = List.copyOf(density);
  }

  /** Sums up all lanes. */
  public static List<LaneDensity> of(
      DyeMap dye, FittedLine baseline, FittedLine front, List<LaneTrack> lanes, double mm) {
    List<LaneDensity> all = new ArrayList<>();
    for (int k = 0; k < lanes.size(); k++) {
      double half = HALF_MM * mm;
      double x = lanes.get(k).originX();
      for (int j = Math.max(0, k - 1); j <= Math.min(lanes.size() - 1, k + 1); j++) {
        half = j == k ? half : Math.min(half, Math.abs(lanes.get(j).originX() - x) / 2);
      }
      all.add(along(dye, baseline, front, x, half, mm));
    }
    return all;
  }

  private static LaneDensity along(
      DyeMap dye, FittedLine baseline, FittedLine front, double x, double half, double mm) {
    double step = STEP_MM * mm;
    Raster[] density = dye.density();
    int n = (int) Math.max(1, (baseline.at(x) - front.at(x) + BEYOND_MM * mm) / step);
    double[][] sum = new double[3][n];
    double[] rows = new double[n];
    double slope = baseline.slope();
    double square = Math.sqrt(1 + slope * slope);
    for (int row = 0; row < density[0].height(); row++) {
      double y = row + 0.5;
      int k = (int) Math.floor((baseline.at(x) - y) / square / step);
      if (k < 0 || k >= n) {
        continue;
      }
      double middle = x + (baseline.at(x) - y) * slope;
      rows[k]++;
      int from = (int) Math.max(0, Math.ceil(middle - half));
      int to = (int) Math.min(density[0].width(), middle + half);
      for (int column = from; column < to; column++) {
        for (int c = 0; c < 3; c++) {
          sum[c][k] += density[c].at(column, row) / mm;
        }
      }
    }
    List<Double> profile = new ArrayList<>();
    for (int k = 0; k < n; k++) {
      double norm = 0;
      for (double[] channel : sum) {
        double one = rows[k] == 0 ? 0 : Math.max(0, channel[k] / rows[k]);
        norm += one * one;
      }
      profile.add(Math.sqrt(norm / 3));
    }
    return new LaneDensity(step / 2, step, profile);
  }
}
