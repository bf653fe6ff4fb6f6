package wickmark.imaging.scale;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Follows the marks of an edge from a seed to both ends and finds their exact places.
 *
 * @param band the band along the edge in which the marks were last seen
 * @param series the marks
 * @param shortTicks the part of the band where all marks are
 * @param sign 1 for dark marks, -1 for light ones
 * @param reduction photo pixels per level pixel
 */
record CombTrace(
    EdgeBand band, TickSeries series, ShortTickBand shortTicks, double sign, int reduction) {
  private static final int ROUNDS = 4;
  private static final int LEAST_TICKS = 8;

  /** Rows kept to both sides of the marks while following, and at last, in pitches. */
  private static final double NARROW = 6;

  private static final double WIDE = 9;

  /** Longest marks reach this far from the middle of the short ones, in lengths of the short ones. */
  private static final double LONGEST = 3;

  /** Strokes this near to the marks, in pitches, belong to the same edge. */
  private static final double BESIDE = 5;

  /** Part of the short marks' length that is used to find them, about their middle. */
  private static final double CORE = 0.35;

  static @Nullable CombTrace follow(Luminance plane, CombSeed seed) {
    double pitch = seed.pitchPx();
    RobustPolynomial flat = RobustPolynomial.fit(new double[1], new double[1], 0, 1);
    EdgeFrame frame = new EdgeFrame(seed.axis(), flat, seed.slant());
    double[] range = inside(plane, seed.axis());
    double low = Math.max(range[0], seed.uLow() - 3 * pitch);
    double high = Math.min(range[1], seed.uHigh() + 3 * pitch);
    double start = (low + high) / 2;
    double core = 0.7 * pitch;
    @Nullable CombTrace trace = null;
    for (int round = 0; round < ROUNDS; round++) {
      boolean last = round == ROUNDS - 1;
      double longest = trace == null ? 0 : LONGEST * trace.shortTicks().width();
      int reach = (int) Math.ceil(last ? Math.max(WIDE * pitch, longest) : NARROW * pitch);
      EdgeBand band = EdgeBand.sample(plane, frame, low, high, reach);
      double sign = trace == null ? sign(band, core, pitch, start) : trace.sign();
      TickProfile dark = band.profile((int) -core, (int) core, pitch);
      TickProfile profile = sign > 0 ? dark : dark.inverted();
      TickSeries series = TickSeries.of(new TickWalk(profile, low, high).from(start, pitch));
      if (series.ticks().size() < LEAST_TICKS) {
        return null;
      }
      ShortTickBand shortTicks = ShortTickBand.of(band, series, sign);
      trace = new CombTrace(band, series, shortTicks, sign, plane.factor());
      pitch = series.middlePitch();
      core = Math.max(1, CORE * shortTicks.width());
      frame = trace.better(round < 2);
      start = series.ticks().get(series.ticks().size() / 2).u();
      low = range[0];
      high = range[1];
    }
    return trace;
  }

  /** Returns the place of the middle mark, in level pixels, with the direction of the edge. */
  CombSeed.Axis middle() {
    double u = series.course().at((series.first() + series.last()) / 2.0);
    CombSeed.Axis axis = band.frame().axis();
    return new CombSeed.Axis(band.frame().x(u, 0), band.frame().y(u, 0), axis.dx(), axis.dy());
  }

  /** Tells whether the place, in level pixels, lies on the marks or on the figures beside them. */
  boolean covers(double x, double y) {
    EdgeFrame frame = band.frame();
    double u = frame.axis().u(x, y);
    double v = frame.axis().v(x, y) - frame.middle().at(u);
    double pitch = series.middlePitch();
    double slack = BESIDE * pitch;
    double first = series.course().at(series.first());
    double last = series.course().at(series.last());
    return Math.abs(v) < slack
        && u > Math.min(first, last) - slack
        && u < Math.max(first, last) + slack;
  }

  /** Dark or light marks: whichever makes the sharper peaks. */
  private static double sign(EdgeBand band, double core, double pitch, double start) {
    TickProfile dark = band.profile((int) -core, (int) core, pitch);
    double cubes = 0;
    for (double u = start - 6 * pitch; u <= start + 6 * pitch; u++) {
      double value = dark.at(u);
      cubes += value * value * value;
    }
    return cubes >= 0 ? 1 : -1;
  }

  /** Moves the frame onto the middle of the short marks and leans it with the marks. */
  private EdgeFrame better(boolean coarse) {
    EdgeFrame frame = band.frame();
    double[] u = series.ticks().stream().mapToDouble(Tick::u).toArray();
    double[] middle = new double[u.length];
    for (int i = 0; i < u.length; i++) {
      middle[i] = frame.middle().at(u[i]) + shortTicks.middle().at(u[i]);
    }
    double half = Math.max(2, 0.45 * shortTicks.width());
    RobustPolynomial slant = coarse ? SlantSearch.corrected(band, series, half) : fineSlant();
    return new EdgeFrame(
        frame.axis(), RobustPolynomial.fit(u, middle, u.length < 30 ? 1 : 2, 0.05), slant);
  }

  /** Leans the frame by the offset of the marks' upper halves from their lower ones. */
  private RobustPolynomial fineSlant() {
    double width = shortTicks.width();
    int half = Math.max(1, (int) Math.round(0.42 * width));
    int inner = Math.max(1, half / 3);
    double pitch = series.middlePitch();
    TickProfile lower = part(-half, -inner, pitch);
    TickProfile upper = part(inner, half, pitch);
    List<double[]> leans = new ArrayList<>();
    for (Tick tick : series.ticks()) {
      double a = lower.peakNear(tick.u(), 0.3 * pitch);
      double b = upper.peakNear(tick.u(), 0.3 * pitch);
      if (!Double.isNaN(a) && !Double.isNaN(b)) {
        double lean = band.frame().slant().at(tick.u()) + (b - a) / (half + inner);
        leans.add(new double[] {tick.u(), lean});
      }
    }
    if (leans.size() < LEAST_TICKS) {
      return band.frame().slant();
    }
    double[] u = leans.stream().mapToDouble(l -> l[0]).toArray();
    double[] lean = leans.stream().mapToDouble(l -> l[1]).toArray();
    return RobustPolynomial.fit(u, lean, leans.size() < 16 ? 0 : 1, 0.002);
  }

  private TickProfile part(int low, int high, double pitch) {
    TickProfile dark = band.profile(low, high, pitch);
    return sign > 0 ? dark : dark.inverted();
  }

  /** Returns the range of u over which the axis lies within the picture. */
  private static double[] inside(Luminance plane, CombSeed.Axis axis) {
    double low = Double.NEGATIVE_INFINITY;
    double high = Double.POSITIVE_INFINITY;
    double[][] limits = {{axis.x(), axis.dx(), plane.width()}, {axis.y(), axis.dy(), plane.height()}};
    for (double[] limit : limits) {
      if (Math.abs(limit[1]) > 1e-9) {
        double a = (1 - limit[0]) / limit[1];
        double b = (limit[2] - 1 - limit[0]) / limit[1];
        low = Math.max(low, Math.min(a, b));
        high = Math.min(high, Math.max(a, b));
      }
    }
    return new double[] {low, high};
  }
}
