package wickmark.imaging.spot;

import wickmark.imaging.line.FittedLine;
import wickmark.imaging.paper.DensityMap;
import wickmark.imaging.raster.Raster;

/**
 * A lane's density summed across, along the lane: what a densitometer would draw, in three colours.
 *
 * @param start distance from the baseline of the first sample, mm
 * @param step between samples, mm
 * @param density three channels, each sample in density · mm
 * @param noise standard deviation of each sample, density · mm
 * @param width of the lane at each sample, as far as it was summed, mm
 */
record LaneProfile(double start, double step, double[][] density, double[] noise, double[] width) {
  private static final double STEP_MM = 0.25;

  /**
   * Neighbouring cells share paper texture: the noise of a sum is larger than of independent ones.
   */
  private static final double TEXTURE = 2.5;

  /**
   * Sums the cells of a lane.
   *
   * @param dye red, green and blue density, as far as it counts
   * @param from distance from the baseline where the profile starts, mm: above marks and writing
   * @param to distance where it ends
   */
  static LaneProfile of(
      DensityMap map, Raster[] dye, FittedLine baseline, int[] cells, double from, double to) {
    double mm = map.cellsPerMm();
    int n = Math.max(4, (int) Math.ceil((to - from) / STEP_MM));
    double[][] density = new double[3][n];
    double[] count = new double[n];
    double square = Math.sqrt(1 + baseline.slope() * baseline.slope());
    for (int i : cells) {
      int row = i / map.width();
      double x = i % map.width() + 0.5;
      double y = row + 0.5;
      double along = (baseline.at(x) - y) / square / mm;
      int k = (int) Math.floor((along - from) / STEP_MM);
      if (k < 0 || k >= n) {
        continue;
      }
      count[k]++;
      for (int c = 0; c < 3; c++) {
        density[c][k] += dye[c].cells()[i] / (mm * mm * STEP_MM);
      }
    }
    double[] noise = new double[n];
    double[] width = new double[n];
    double typical = (map.noise()[0] + map.noise()[1] + map.noise()[2]) / 3;
    for (int k = 0; k < n; k++) {
      noise[k] = TEXTURE * typical * Math.sqrt(count[k] + mm * mm * STEP_MM) / (mm * mm * STEP_MM);
      width[k] = count[k] / (mm * mm * STEP_MM);
    }
    return new LaneProfile(from, STEP_MM, density, noise, width);
  }

  int size() {
    return noise.length;
  }

  /** Middle of a sample, mm from the baseline. */
  double place(int k) {
    return start + (k + 0.5) * step;
  }

  /** The sample that a place lies in, mm from the baseline; the first or last for one outside. */
  int sampleAt(double along) {
    return (int) Math.max(0, Math.min(size() - 1.0, (along - start) / step));
  }

  /** All three channels of a sample together, density · mm. */
  double totalAt(int k) {
    return density[0][k] + density[1][k] + density[2][k];
  }

  /** All three channels together, smoothed over so many millimetres (standard deviation). */
  double[] total(double sigma) {
    double[] sum = new double[size()];
    for (int k = 0; k < sum.length; k++) {
      sum[k] = totalAt(k);
    }
    return smooth(sum, sigma);
  }

  /** One channel smoothed. */
  double[] channel(int c, double sigma) {
    return smooth(density[c], sigma);
  }

  private double[] smooth(double[] in, double sigma) {
    int reach = (int) Math.ceil(3 * sigma / step);
    double[] out = new double[in.length];
    for (int k = 0; k < in.length; k++) {
      double weight = 0;
      for (int j = Math.max(0, k - reach); j <= Math.min(in.length - 1, k + reach); j++) {
        double d = (j - k) * step / sigma;
        double w = StrictMath.exp(-d * d / 2);
        out[k] += w * in[j];
        weight += w;
      }
      out[k] /= weight;
    }
    return out;
  }
}
