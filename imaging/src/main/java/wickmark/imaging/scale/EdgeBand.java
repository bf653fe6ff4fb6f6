package wickmark.imaging.scale;

import wickmark.imaging.raster.Raster;

/** The picture along a ruler's edge with the edge laid flat and the marks set upright. */
final class EdgeBand {
  private final EdgeFrame frame;
  private final double uLow;
  private final int columns;
  private final int reach;
  private final float[] values;

  private EdgeBand(EdgeFrame frame, double uLow, int columns, int reach, float[] values) {
    this.frame = frame;
    this.uLow = uLow;
    this.columns = columns;
    this.reach = reach;
    this.values = values;
  }

  /** Samples v from -reach to reach and u from uLow to uHigh, in steps of one level pixel. */
  static EdgeBand sample(Luminance plane, EdgeFrame frame, double uLow, double uHigh, int reach) {
    int columns = (int) Math.ceil(uHigh - uLow) + 1;
    float[] values = new float[columns * (2 * reach + 1)];
    for (int i = 0; i < columns; i++) {
      double u = uLow + i;
      double lean = frame.slant().at(u);
      double middle = frame.middle().at(u);
      for (int v = -reach; v <= reach; v++) {
        double along = u + lean * v;
        double aside = middle + v;
        values[(v + reach) * columns + i] =
            (float) plane.at(frame.axis().xAt(along, aside), frame.axis().yAt(along, aside));
      }
    }
    return new EdgeBand(frame, uLow, columns, reach, values);
  }

  EdgeFrame frame() {
    return frame;
  }

  int reach() {
    return reach;
  }

  double uLow() {
    return uLow;
  }

  double uHigh() {
    return uLow + columns - 1;
  }

  /** Returns the value at u in row v; beyond the ends that of the end. */
  double at(double u, int v) {
    double t = Raster.within(u - uLow, columns - 1.001);
    int i = (int) t;
    int row = (v + reach) * columns + i;
    return values[row] + (t - i) * (values[row + 1] - values[row]);
  }

  /** Returns the mean over u - halfWidth to u + halfWidth in row v, or NaN outside the band. */
  double mean(double u, int v, double halfWidth) {
    double low = u - uLow - halfWidth;
    double high = u - uLow + halfWidth;
    if (low < 0 || high > columns - 1 || Math.abs(v) > reach) {
      return Double.NaN;
    }
    int row = (v + reach) * columns;
    int steps = Math.max(1, (int) Math.ceil(2 * halfWidth));
    double sum = 0;
    for (int s = 0; s <= steps; s++) {
      double at = low + (high - low) * s / steps;
      int i = Math.min((int) at, columns - 2);
      sum += values[row + i] + (at - i) * (values[row + i + 1] - values[row + i]);
    }
    return sum / (steps + 1);
  }

  /** Returns how much darker the place is than the places half a pitch to both sides. */
  double contrast(double u, int v, double pitch) {
    double side = Math.max(0.5, 0.12 * pitch);
    double background = (mean(u - pitch / 2, v, side) + mean(u + pitch / 2, v, side)) / 2;
    return background - mean(u, v, 0.5);
  }

  /**
   * Returns how much darker (sign 1) or lighter (sign -1) the place is than the clearer one of its
   * two sides: a figure printed close beside a long mark must not hide it.
   */
  double clearerContrast(double u, int v, double pitch, double sign) {
    double side = Math.max(0.5, 0.12 * pitch);
    double left = sign * mean(u - pitch / 2, v, side);
    double right = sign * mean(u + pitch / 2, v, side);
    return Math.max(left, right) - sign * mean(u, v, 0.5);
  }

  /** Returns the profile over the rows from vLow to vHigh, local brightness taken off each row. */
  TickProfile profile(int vLow, int vHigh, double pitch) {
    int low = Math.max(vLow, -reach);
    int high = Math.min(vHigh, reach);
    int window = Math.max(2, (int) Math.round(pitch));
    double[] sum = new double[columns];
    for (int v = low; v <= high; v++) {
      int row = (v + reach) * columns;
      double[] running = new double[columns + 1];
      for (int i = 0; i < columns; i++) {
        running[i + 1] = running[i] + values[row + i];
      }
      for (int i = 0; i < columns; i++) {
        int from = Math.max(0, i - window);
        int to = Math.min(columns, i + window + 1);
        sum[i] += (running[to] - running[from]) / (to - from) - values[row + i];
      }
    }
    double rows = high - low + 1;
    for (int i = 0; i < columns; i++) {
      sum[i] /= rows;
    }
    return TickProfile.smoothed(sum, uLow, Math.max(0.7, 0.1 * pitch));
  }
}
