package wickmark.imaging.scale;

import java.util.List;

/**
 * How far each mark of an edge reaches to one side, in pitches of the edge's middle.
 *
 * <p>In perspective lengths across the ruler shrink with the distance and those along it with its
 * square, so a length is compared with the root of the pitch at its place.
 *
 * @param indices of the marks, ascending
 * @param lengths from the middle of the short marks, in pitches
 */
record TickLengths(int[] indices, double[] lengths) {
  /** A mark ends where its contrast has fallen below this share of that of its foot. */
  private static final double SHARE = 0.4;

  /** Measures to the side of growing v ({@code side} 1) or falling v (-1). */
  static TickLengths measure(CombTrace trace, List<Tick> ticks, int side) {
    int n = ticks.size();
    int[] indices = new int[n];
    double[] lengths = new double[n];
    for (int i = 0; i < n; i++) {
      Tick tick = ticks.get(i);
      indices[i] = tick.index();
      lengths[i] = length(trace, tick, side);
    }
    return new TickLengths(indices, lengths);
  }

  private static double length(CombTrace trace, Tick tick, int side) {
    EdgeBand band = trace.band();
    double pitch = trace.series().pitchAt(tick.index());
    int start = (int) Math.round(trace.shortTicks().middle().at(tick.u()));
    int half = (int) Math.max(1, Math.round(0.3 * trace.shortTicks().width()));
    double[] foot = new double[2 * half + 1];
    for (int v = -half; v <= half; v++) {
      foot[v + half] = finite(band.clearerContrast(tick.u(), start + v, pitch, trace.sign()));
    }
    double level = SHARE * RobustPolynomial.median(foot);
    int patience = (int) Math.max(2, Math.round(0.25 * pitch));
    int end = 0;
    int below = 0;
    for (int step = 0; below < patience && Math.abs(start + side * step) < band.reach(); step++) {
      double contrast =
          finite(band.clearerContrast(tick.u(), start + side * step, pitch, trace.sign()));
      if (contrast >= level && level > 0) {
        end = step;
        below = 0;
      } else {
        below++;
      }
    }
    return end / Math.sqrt(pitch * trace.series().middlePitch());
  }

  private static double finite(double value) {
    return Double.isNaN(value) ? 0 : value;
  }
}
