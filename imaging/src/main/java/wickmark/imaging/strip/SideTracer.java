package wickmark.imaging.strip;

import java.util.Arrays;

/**
 * Follows one side of the sheet: profiles square to the straight line between two corners, the step
 * from outside to inside at each place, and the smooth path of the greatest total step (dynamic
 * programming), refined to a part of a cell by a parabola.
 */
final class SideTracer {
  /** How much of the side is looked at, leaving the corners out. */
  private static final double FROM = 0.02;

  private final SmoothPicture picture;
  private final double reach;
  private final int samples;

  /** Distance between the offsets tried, cells. */
  private static final double STEP = 0.5;

  /** Steps from an offset to the nearer place that is compared on either side. */
  private static final int GAP = 2;

  /**
   * Takes a lightly smoothed picture.
   *
   * @param reach how far off the straight line the edge is looked for, cells
   */
  SideTracer(SmoothPicture picture, double reach, int samples) {
    this.picture = picture;
    this.reach = reach;
    this.samples = samples;
  }

  /** The path found: for each place along the side its offset to the inside, cells. */
  record Trace(double[] along, double[] offset, double[] strength) {}

  /**
   * Traces from corner (x0, y0) to (x1, y1), the sheet on the right of the direction of travel.
   *
   * @param guess offsets to search around, one a sample, or null for the straight line
   */
  Trace trace(
      double x0,
      double y0,
      double x1,
      double y1,
      double @org.jspecify.annotations.Nullable [] guess) {
    double length = Math.hypot(x1 - x0, y1 - y0);
    double dx = (x1 - x0) / length;
    double dy = (y1 - y0) / length;
    int half = (int) Math.ceil(reach / STEP);
    double[][] response = new double[samples][2 * half + 1];
    double[] along = new double[samples];
    double[][][] step = new double[samples][2 * half + 1][];
    for (int k = 0; k < samples; k++) {
      along[k] = length * (FROM + (1 - 2 * FROM) * (k + 0.5) / samples);
      double base = guess == null ? 0 : guess[k];
      steps(x0 + dx * along[k], y0 + dy * along[k], -dy, dx, base, step[k]);
    }
    double[] direction = commonDirection(step, half);
    for (int k = 0; k < samples; k++) {
      for (int m = 0; m <= 2 * half; m++) {
        double[] s = step[k][m];
        double r = s[0] * direction[0] + s[1] * direction[1] + s[2] * direction[2];
        response[k][m] = Math.max(0, r);
      }
    }
    return follow(along, response, half, guess);
  }

  /** Fills in the colour steps from outside to inside at the offsets around one. */
  private void steps(double x, double y, double nx, double ny, double base, double[][] step) {
    int reachSteps = step.length / 2 + 2 * GAP;
    double[][] profile = new double[2 * reachSteps + 1][3];
    for (int i = 0; i < profile.length; i++) {
      double offset = base + (i - reachSteps) * STEP;
      picture.sample(x + nx * offset, y + ny * offset, profile[i]);
    }
    for (int m = 0; m < step.length; m++) {
      int at = m + 2 * GAP;
      double[] d = new double[3];
      for (int c = 0; c < 3; c++) {
        double in = profile[at + GAP][c] + profile[at + 2 * GAP][c];
        double out = profile[at - GAP][c] + profile[at - 2 * GAP][c];
        d[c] = (in - out) / 2;
      }
      step[m] = d;
    }
  }

  /**
   * The colour step that most of the side has in common: at each place the strongest step near the
   * line, then the median of each channel.
   */
  private double[] commonDirection(double[][][] step, int half) {
    double[][] best = new double[3][samples];
    for (int k = 0; k < samples; k++) {
      double most = -1;
      for (int m = 0; m <= 2 * half; m++) {
        double[] s = step[k][m];
        double nearness = 1 - 0.5 * Math.abs(m - half) / (half + 1.0);
        double size = Math.sqrt(s[0] * s[0] + s[1] * s[1] + s[2] * s[2]) * nearness;
        if (size > most) {
          most = size;
          for (int c = 0; c < 3; c++) {
            best[c][k] = s[c];
          }
        }
      }
    }
    double[] direction = new double[3];
    double norm = 0;
    for (int c = 0; c < 3; c++) {
      Arrays.sort(best[c]);
      direction[c] = best[c][samples / 2];
      norm += direction[c] * direction[c];
    }
    norm = Math.sqrt(norm);
    for (int c = 0; c < 3; c++) {
      direction[c] = norm > 1e-9 ? direction[c] / norm : 0.577;
    }
    return direction;
  }

  private Trace follow(
      double[] along,
      double[][] response,
      int half,
      double @org.jspecify.annotations.Nullable [] guess) {
    int width = 2 * half + 1;
    double scale = 1e-9;
    for (double[] row : response) {
      scale += Arrays.stream(row).max().orElse(0);
    }
    scale /= samples;
    double[][] total = new double[samples][width];
    int[][] from = new int[samples][width];
    for (int k = 0; k < samples; k++) {
      for (int m = 0; m < width; m++) {
        double bonus = Math.min(response[k][m] / scale, 1.5);
        if (k == 0) {
          total[k][m] = bonus;
          continue;
        }
        double best = Double.NEGATIVE_INFINITY;
        for (int j = Math.max(0, m - 3); j <= Math.min(width - 1, m + 3); j++) {
          double value = total[k - 1][j] - 0.08 * Math.abs(j - m);
          if (value > best) {
            best = value;
            from[k][m] = j;
          }
        }
        total[k][m] = best + bonus;
      }
    }
    int at = 0;
    for (int m = 1; m < width; m++) {
      if (total[samples - 1][m] > total[samples - 1][at]) {
        at = m;
      }
    }
    double[] offset = new double[samples];
    double[] strength = new double[samples];
    for (int k = samples - 1; k >= 0; k--) {
      double base = guess == null ? 0 : guess[k];
      offset[k] = base + (at - half + parabola(response[k], at)) * STEP;
      strength[k] = response[k][at];
      at = from[k][at];
    }
    return new Trace(along, offset, strength);
  }

  private static double parabola(double[] row, int at) {
    if (at <= 0 || at >= row.length - 1) {
      return 0;
    }
    double bend = row[at - 1] - 2 * row[at] + row[at + 1];
    if (bend >= -1e-12) {
      return 0;
    }
    double shift = 0.5 * (row[at - 1] - row[at + 1]) / bend;
    return Math.max(-1, Math.min(1, shift));
  }
}
