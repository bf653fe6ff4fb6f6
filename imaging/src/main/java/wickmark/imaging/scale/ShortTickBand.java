package wickmark.imaging.scale;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Where along v every mark of an edge is dark, the shortest too: the band between the marks' outer
 * ends and the inner ends of the short ones.
 *
 * @param middle offset of the band's middle from the frame's v = 0, over u
 * @param width middle width of the band in level pixels
 */
record ShortTickBand(RobustPolynomial middle, double width) {
  /** Marks looked at together. */
  private static final int GROUP = 12;

  /**
   * At least half of the marks are short ones in any usual division: less than half are looked at.
   */
  private static final double LOWER = 0.35;

  /** A row in which the marks have less than this share of their contrast lies beyond the band. */
  private static final double SHARE = 0.45;

  static ShortTickBand of(EdgeBand band, TickSeries series, double sign) {
    List<double[]> found = new ArrayList<>();
    List<Tick> ticks = series.ticks();
    int step = Math.max(1, Math.min(GROUP / 2, ticks.size() - GROUP));
    for (int i = 0; i == 0 || i + GROUP <= ticks.size(); i += step) {
      List<Tick> group = ticks.subList(i, Math.min(i + GROUP, ticks.size()));
      double[] extent = extent(band, series, group, sign);
      if (extent.length == 2) {
        double u = group.get(group.size() / 2).u();
        found.add(new double[] {u, (extent[0] + extent[1]) / 2, extent[1] - extent[0]});
      }
    }
    double[] u = found.stream().mapToDouble(f -> f[0]).toArray();
    double[] middle = found.stream().mapToDouble(f -> f[1]).toArray();
    double[] width = found.stream().mapToDouble(f -> f[2]).toArray();
    if (u.length == 0) {
      return new ShortTickBand(RobustPolynomial.constant(0), 0);
    }
    int degree = u.length < 4 ? 0 : u.length < 10 ? 1 : 2;
    return new ShortTickBand(
        RobustPolynomial.fit(u, middle, degree, 0.25), RobustPolynomial.median(width));
  }

  private static double[] extent(EdgeBand band, TickSeries series, List<Tick> group, double sign) {
    double pitch = series.pitchAt(group.get(group.size() / 2).index());
    int reach = band.reach();
    double[] rows = new double[2 * reach + 1];
    for (int v = -reach; v <= reach; v++) {
      int row = v;
      double[] contrasts =
          group.stream()
              .mapToDouble(t -> sign * band.contrast(t.u(), row, pitch))
              .filter(c -> !Double.isNaN(c))
              .toArray();
      rows[v + reach] = RobustPolynomial.quantile(contrasts, LOWER);
    }
    int near = (int) Math.min(reach, Math.round(1.5 * pitch));
    int top = reach;
    for (int v = -near; v <= near; v++) {
      if (rows[v + reach] > rows[top]) {
        top = v + reach;
      }
    }
    double level = SHARE * plateau(rows, top, pitch);
    double low = border(rows, top, -1, level);
    double high = border(rows, top, 1, level);
    return rows[top] > 0 ? new double[] {low - reach, high - reach} : new double[0];
  }

  private static double plateau(double[] rows, int top, double pitch) {
    int half = (int) Math.max(1, Math.round(pitch / 4));
    return RobustPolynomial.median(
        Arrays.copyOfRange(rows, Math.max(0, top - half), Math.min(rows.length, top + half + 1)));
  }

  /** Walks from the top until two rows in a row are below the level; places between rows. */
  private static double border(double[] rows, int top, int way, double level) {
    int i = top;
    while (i + way >= 0 && i + way < rows.length) {
      double next = rows[i + way];
      int two = i + 2 * way;
      boolean both = next < level && (two < 0 || two >= rows.length || rows[two] < level);
      if (both) {
        double drop = rows[i] - next;
        return i + way * (drop > 0 ? Math.min(1, Math.max(0, (rows[i] - level) / drop)) : 0.5);
      }
      i += way;
    }
    return i;
  }
}
