package wickmark.imaging.scale;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Follows the marks of an edge from a seed to both ends and finds their exact places. */
final class CombFollower {
  private static final int ROUNDS = 3;

  /** Rounds in which the lean is still looked for in wide steps. */
  private static final int COARSE_ROUNDS = 2;

  private static final int LEAST_TICKS = 8;

  /** Rows kept to both sides of the marks while following, and at last, in pitches. */
  private static final double NARROW = 6;

  private static final double WIDE = 9;

  /**
   * Longest marks reach this far from the middle of the short ones, in lengths of the short ones.
   */
  private static final double LONGEST = 3;

  /** Part of the short marks' length that is used to find them, about their middle. */
  private static final double CORE = 0.35;

  /** Peaks this much sharper than valleys, as skewness, leave no doubt which are the marks. */
  private static final double CLEAR_SKEW = 0.6;

  private Luminance plane;
  private double[] range;
  private EdgeFrame frame;
  private double low;
  private double high;
  private double start;
  private double pitch;
  private double core;
  private double longest;

  private CombFollower(Luminance plane, CombSeed seed) {
    this.plane = plane;
    RobustPolynomial flat = RobustPolynomial.constant(0);
    this.frame = new EdgeFrame(seed.axis(), flat, seed.slant());
    this.range = inside(plane, seed.axis());
    this.pitch = seed.pitchPx();
    this.low = Math.max(range[0], seed.uLow() - 3 * pitch);
    this.high = Math.min(range[1], seed.uHigh() + 3 * pitch);
    this.start = (low + high) / 2;
    this.core = 0.7 * pitch;
  }

  /**
   * Returns the marks of the edge; where dark and light strokes are alike both readings, with the
   * likelier first; nothing where the marks cannot be followed.
   */
  static List<CombTrace> follow(Luminance plane, CombSeed seed) {
    return new CombFollower(plane, seed).follow(plane);
  }

  /** The same, with the marks measured at last on a plane of half the reduction. */
  static List<CombTrace> follow(Luminance plane, CombSeed seed, Luminance fine) {
    return new CombFollower(plane, seed).follow(fine);
  }

  private List<CombTrace> follow(Luminance fine) {
    for (int round = 0; round < ROUNDS; round++) {
      int reach = (int) Math.ceil(NARROW * pitch);
      EdgeBand band = EdgeBand.sample(plane, frame, low, high, reach);
      CombTrace trace = trace(band, skewness(band) >= 0 ? 1 : -1);
      if (trace == null) {
        return List.of();
      }
      improve(trace, round < COARSE_ROUNDS);
      longest = LONGEST * trace.shortTicks().width();
    }
    if (fine != plane) {
      refine(fine);
    }
    return measured();
  }

  /** Takes the last, wider band, in which the marks' lengths can be seen too. */
  private List<CombTrace> measured() {
    int reach = (int) Math.ceil(Math.max(WIDE * pitch, longest));
    EdgeBand band = EdgeBand.sample(plane, frame, low, high, reach);
    double skew = skewness(band);
    double likelier = skew >= 0 ? 1 : -1;
    CombTrace first = trace(band, likelier);
    CombTrace other = Math.abs(skew) < CLEAR_SKEW ? trace(band, -likelier) : null;
    return Stream.of(first, other).filter(Objects::nonNull).toList();
  }

  /** Above 0 where dark strokes are narrower than the light between them. */
  private double skewness(EdgeBand band) {
    return band.profile((int) -core, (int) core, pitch)
        .skewness(start - 8 * pitch, start + 8 * pitch);
  }

  private @Nullable CombTrace trace(EdgeBand band, double sign) {
    TickProfile dark = band.profile((int) -core, (int) core, pitch);
    TickProfile profile = sign > 0 ? dark : dark.inverted();
    TickSeries series = TickSeries.of(new TickWalk(profile, low, high).from(start, pitch));
    if (series.ticks().size() < LEAST_TICKS || !series.dense()) {
      return null;
    }
    return new CombTrace(band, series, ShortTickBand.of(band, series, sign), sign, plane.factor());
  }

  private void refine(Luminance fine) {
    plane = fine;
    frame = frame.enlarged(2);
    range = inside(plane, frame.axis());
    low = range[0];
    high = range[1];
    start *= 2;
    pitch *= 2;
    core *= 2;
    longest *= 2;
  }

  /** After the first round the whole length of the picture is walked. */
  private void improve(CombTrace trace, boolean coarse) {
    List<Tick> ticks = trace.series().ticks();
    pitch = trace.series().middlePitch();
    core = Math.max(1, CORE * trace.shortTicks().width());
    frame = better(trace, coarse);
    start = ticks.get(ticks.size() / 2).u();
    low = range[0];
    high = range[1];
  }

  /** Moves the frame onto the middle of the short marks and leans it with the marks. */
  private static EdgeFrame better(CombTrace trace, boolean coarse) {
    EdgeBand band = trace.band();
    TickSeries series = trace.series();
    EdgeFrame frame = band.frame();
    double[] u = series.ticks().stream().mapToDouble(Tick::u).toArray();
    double[] middle = new double[u.length];
    for (int i = 0; i < u.length; i++) {
      middle[i] = frame.middle().at(u[i]) + trace.shortTicks().middle().at(u[i]);
    }
    double half = Math.max(2, 0.45 * trace.shortTicks().width());
    RobustPolynomial slant = coarse ? SlantSearch.corrected(band, series, half) : fineSlant(trace);
    return new EdgeFrame(
        frame.axis(), RobustPolynomial.fit(u, middle, u.length < 30 ? 1 : 2, 0.05), slant);
  }

  /** Leans the frame by the offset of the marks' upper halves from their lower ones. */
  private static RobustPolynomial fineSlant(CombTrace trace) {
    EdgeBand band = trace.band();
    TickSeries series = trace.series();
    double width = trace.shortTicks().width();
    int half = Math.max(1, (int) Math.round(0.42 * width));
    int inner = Math.max(1, half / 3);
    double pitch = series.middlePitch();
    TickProfile lower = part(trace, -half, -inner, pitch);
    TickProfile upper = part(trace, inner, half, pitch);
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

  private static TickProfile part(CombTrace trace, int low, int high, double pitch) {
    TickProfile dark = trace.band().profile(low, high, pitch);
    return trace.sign() > 0 ? dark : dark.inverted();
  }

  /** Returns the range of u over which the axis lies within the picture. */
  private static double[] inside(Luminance plane, CombSeed.Axis axis) {
    double low = Double.NEGATIVE_INFINITY;
    double high = Double.POSITIVE_INFINITY;
    double[][] limits = {
      {axis.x(), axis.dx(), plane.width()}, {axis.y(), axis.dy(), plane.height()}
    };
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
