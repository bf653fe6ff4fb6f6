package wickmark.imaging.scale;

/** Darkness along a ruler's edge, smoothed; a mark is a peak. */
final class TickProfile {
  private final double[] values;
  private final double uLow;

  private TickProfile(double[] values, double uLow) {
    this.values = values;
    this.uLow = uLow;
  }

  static TickProfile smoothed(double[] raw, double uLow, double sigma) {
    int reach = (int) Math.ceil(3 * sigma);
    double[] kernel = new double[reach + 1];
    double norm = 0;
    for (int i = 0; i <= reach; i++) {
      kernel[i] = StrictMath.exp(-0.5 * i * i / (sigma * sigma));
      norm += i == 0 ? kernel[i] : 2 * kernel[i];
    }
    double[] out = new double[raw.length];
    for (int i = 0; i < raw.length; i++) {
      double sum = kernel[0] * raw[i];
      for (int j = 1; j <= reach; j++) {
        sum += kernel[j] * (raw[Math.max(0, i - j)] + raw[Math.min(raw.length - 1, i + j)]);
      }
      out[i] = sum / norm;
    }
    return new TickProfile(out, uLow);
  }

  /** Returns the profile of light marks on a dark ruler. */
  TickProfile inverted() {
    double[] out = new double[values.length];
    for (int i = 0; i < out.length; i++) {
      out[i] = -values[i];
    }
    return new TickProfile(out, uLow);
  }

  /** Returns the skewness of the values between two places: above 0 where peaks are narrow. */
  double skewness(double low, double high) {
    int from = Math.max(0, (int) (low - uLow));
    int to = Math.min(values.length, (int) (high - uLow));
    double squares = 0;
    double cubes = 0;
    for (int i = from; i < to; i++) {
      squares += values[i] * values[i];
      cubes += values[i] * values[i] * values[i];
    }
    double n = Math.max(1, to - from);
    double deviation = Math.sqrt(squares / n);
    return deviation > 0 ? cubes / n / (deviation * deviation * deviation) : 0;
  }

  double at(double u) {
    double t = u - uLow;
    int i = (int) Math.floor(t);
    if (i < 0 || i >= values.length - 1) {
      return 0;
    }
    return values[i] + (t - i) * (values[i + 1] - values[i]);
  }

  /**
   * Returns the place of the highest peak within u - reach to u + reach, or NaN if there is none.
   */
  double peakNear(double u, double reach) {
    int from = Math.max(1, (int) Math.ceil(u - reach - uLow));
    int to = Math.min(values.length - 2, (int) Math.floor(u + reach - uLow));
    int best = -1;
    for (int i = from; i <= to; i++) {
      boolean peak = values[i] >= values[i - 1] && values[i] > values[i + 1];
      if (peak && values[i] > 0 && (best < 0 || values[i] > values[best])) {
        best = i;
      }
    }
    if (best < 0) {
      return Double.NaN;
    }
    double bend = values[best - 1] - 2 * values[best] + values[best + 1];
    double shift = bend < 0 ? 0.5 * (values[best - 1] - values[best + 1]) / bend : 0;
    return uLow + best + shift;
  }
}
