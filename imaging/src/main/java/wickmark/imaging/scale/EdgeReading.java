package wickmark.imaging.scale;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wickmark.imaging.photo.PhotoPoint;

/** Tells the unit of a followed edge by the lengths of its marks, and checks their numbers by it. */
final class EdgeReading {
  /** Least share of the lengths' variation that a division must explain to be believed at all. */
  private static final double LEAST_EXPLAINED = 0.35;

  /** A run of at least this many marks shows by itself whether its numbers fit the others'. */
  private static final int TELLING_RUN = 12;

  private EdgeReading() {}

  static Optional<RulerEdge> read(CombTrace trace, int factor) {
    List<Tick> ticks = trace.series().ticks();
    DivisionFit best = null;
    double second = 0;
    int side = 1;
    for (int way : new int[] {1, -1}) {
      for (DivisionFit fit : DivisionFit.all(TickLengths.measure(trace, ticks, way))) {
        if (best == null || fit.explained() > best.explained()) {
          second = Math.max(second, rivalry(best, fit));
          best = fit;
          side = way;
        } else {
          second = Math.max(second, rivalry(fit, best));
        }
      }
    }
    if (best == null || best.explained() < LEAST_EXPLAINED) {
      return Optional.empty();
    }
    TickSeries series = trace.series().only(consistent(trace, best, side));
    if (series.ticks().size() < 8) {
      return Optional.empty();
    }
    double periods = (series.last() - series.first()) / (double) best.division().period();
    double confidence =
        best.division().trust()
            * Math.min(1, best.explained() / 0.7)
            * Math.min(1, (best.explained() - second) / 0.2)
            * Math.min(1, periods / 2)
            * Math.min(1, series.shownShare() / 0.6);
    return Optional.of(
        edge(trace, series, factor, best.division().unit(), Math.max(0, confidence)));
  }

  /** Returns how well the weaker fit explains the lengths if it means other numbers. */
  private static double rivalry(@org.jspecify.annotations.Nullable DivisionFit weaker, DivisionFit stronger) {
    return weaker == null || weaker.division().unit() == stronger.division().unit()
        ? 0
        : weaker.explained();
  }

  /** Keeps the runs of marks whose long marks fall where those of the whole edge do. */
  private static List<Tick> consistent(CombTrace trace, DivisionFit fit, int side) {
    List<Tick> kept = new ArrayList<>();
    for (List<Tick> run : trace.series().runs()) {
      if (run.size() < TELLING_RUN || agrees(TickLengths.measure(trace, run, side), fit)) {
        kept.addAll(run);
      }
    }
    return kept;
  }

  private static boolean agrees(TickLengths lengths, DivisionFit fit) {
    double own = DivisionFit.explainedShare(lengths, fit.division(), fit.phase());
    for (int phase = 0; phase < fit.division().period(); phase++) {
      if (DivisionFit.explainedShare(lengths, fit.division(), phase) > own + 0.1) {
        return false;
      }
    }
    return true;
  }

  private static RulerEdge edge(
      CombTrace trace, TickSeries series, int factor, GraduationUnit unit, double confidence) {
    double sigma = series.course().sigma() * factor;
    EdgeFrame frame = trace.band().frame();
    List<Graduation> marks = new ArrayList<>();
    for (Tick tick : series.ticks()) {
      PhotoPoint at =
          new PhotoPoint(frame.x(tick.u(), 0) * factor, frame.y(tick.u(), 0) * factor);
      marks.add(new Graduation(tick.index(), at, sigma));
    }
    return new RulerEdge(marks, unit, confidence, sigma, series.shownShare());
  }
}
