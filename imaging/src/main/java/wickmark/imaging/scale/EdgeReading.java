package wickmark.imaging.scale;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import wickmark.imaging.photo.PhotoPoint;

/**
 * Tells the unit of a followed edge by the lengths of its marks, and checks their numbers by it.
 */
final class EdgeReading {
  /** Least share of the lengths' variation that a division must explain to be believed at all. */
  private static final double LEAST_EXPLAINED = 0.3;

  /**
   * Share from which nothing is in doubt any more: that much, and this much over the number of
   * periods seen, for a pattern that comes back again and again may be blurred.
   */
  private static final double SURE = 0.4;

  private static final double SURE_OF_ONE_PERIOD = 0.7;

  /** Confidence left where the pattern may as well be that of tenths of an inch. */
  private static final double AMBIGUOUS = 0.4;

  /** Below this a reading is no more than a coincidence and is not given. */
  private static final double LEAST_CONFIDENCE = 0.25;

  /** A pattern that is not seen once as a whole is no pattern; seen twice it is beyond chance. */
  private static final double LEAST_PERIODS = 0.9;

  /** Marks scatter by less than this share of the pitch about their even spacing. */
  private static final double MOST_SCATTER = 0.1;

  private EdgeReading() {}

  static Optional<RulerEdge> read(CombTrace trace) {
    List<Tick> ticks = trace.series().ticks();
    List<DivisionFit> fits = new ArrayList<>();
    for (int way : new int[] {1, -1}) {
      fits.addAll(DivisionFit.all(TickLengths.measure(trace, ticks, way), way));
    }
    fits.removeIf(fit -> fits.stream().anyMatch(finer -> finer.refutes(fit)));
    fits.sort(Comparator.comparingDouble(DivisionFit::explained).reversed());
    if (fits.isEmpty() || fits.get(0).explained() < LEAST_EXPLAINED) {
      return Optional.empty();
    }
    DivisionFit best = fits.get(0);
    double second =
        fits.stream()
            .filter(best::meansOtherNumbersThan)
            .mapToDouble(DivisionFit::explained)
            .max()
            .orElse(0);
    TickSeries series = trace.series().only(IndexCheck.consistent(trace, best));
    if (series.ticks().size() < 8) {
      return Optional.empty();
    }
    double periods = (series.last() - series.first()) / (double) best.division().period();
    double reach = best.longest(TickLengths.measure(trace, series.ticks(), best.side()));
    double sure = SURE + SURE_OF_ONE_PERIOD / Math.max(1, periods);
    double confidence =
        (reach < best.division().leastReach() ? AMBIGUOUS : 1)
            * best.division().trust()
            * Math.min(1, (best.explained() - LEAST_EXPLAINED) / (sure - LEAST_EXPLAINED))
            * Math.min(1, (best.explained() - second) / 0.2)
            * Math.max(0, Math.min(1, (periods - LEAST_PERIODS) / (2 - LEAST_PERIODS)))
            * Math.min(1, series.shownShare() / 0.6);
    boolean even = series.course().sigma() < MOST_SCATTER * series.middlePitch();
    return even && confidence >= LEAST_CONFIDENCE
        ? Optional.of(edge(trace, series, best.division().unit(), confidence))
        : Optional.empty();
  }

  private static RulerEdge edge(
      CombTrace trace, TickSeries series, GraduationUnit unit, double confidence) {
    double factor = trace.reduction();
    double sigma = series.course().sigma() * factor;
    EdgeFrame frame = trace.band().frame();
    List<Graduation> marks = new ArrayList<>();
    for (Tick tick : series.ticks()) {
      PhotoPoint at = new PhotoPoint(frame.x(tick.u(), 0) * factor, frame.y(tick.u(), 0) * factor);
      marks.add(new Graduation(tick.index(), at, sigma));
    }
    double aside = trace.shortTicks().middle().sigma() * factor;
    return new RulerEdge(marks, unit, confidence, sigma, aside, series.shownShare());
  }
}
