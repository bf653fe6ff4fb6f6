package wickmark.imaging.scale;

import java.util.ArrayList;
import java.util.List;

/**
 * The marks of one edge, with the smooth course of their places over their index.
 *
 * @param ticks in the order of their index
 * @param course place u over index
 */
record TickSeries(List<Tick> ticks, RobustPolynomial course) {
  /** A mark off its place by more than this share of the pitch is another thing. */
  private static final double MOST_OFF = 0.18;

  /** More marks than this missing in a row part the series into runs. */
  private static final int RUN_GAP = 2;

  private static final int LEAST_RUN = 4;

  /** Drops what does not fit: marks off the course, and short runs beyond a gap. */
  static TickSeries of(List<Tick> walked) {
    List<Tick> kept = walked;
    if (kept.size() < LEAST_RUN) {
      return new TickSeries(List.of(), RobustPolynomial.constant(0));
    }
    RobustPolynomial course = fit(kept);
    for (int round = 0; round < 3; round++) {
      List<Tick> next = new ArrayList<>();
      for (Tick tick : kept) {
        double off = Math.abs(tick.u() - course.at(tick.index()));
        double pitch = Math.abs(course.slopeAt(tick.index()));
        if (off < Math.min(MOST_OFF * pitch, Math.max(5 * course.sigma(), 0.5))) {
          next.add(tick);
        }
      }
      kept = withoutShortRuns(next);
      if (kept.size() < LEAST_RUN) {
        return new TickSeries(List.of(), course);
      }
      course = fit(kept);
    }
    return new TickSeries(List.copyOf(kept), course);
  }

  private static RobustPolynomial fit(List<Tick> ticks) {
    int span = ticks.isEmpty() ? 0 : ticks.get(ticks.size() - 1).index() - ticks.get(0).index();
    int degree = span < 12 ? 1 : span < 30 ? 2 : span < 60 ? 3 : 4;
    return RobustPolynomial.fit(
        ticks.stream().mapToDouble(Tick::index).toArray(),
        ticks.stream().mapToDouble(Tick::u).toArray(),
        degree,
        0.03);
  }

  private static List<Tick> withoutShortRuns(List<Tick> ticks) {
    List<Tick> kept = new ArrayList<>();
    for (List<Tick> run : runs(ticks)) {
      if (run.size() >= LEAST_RUN) {
        kept.addAll(run);
      }
    }
    return kept;
  }

  private static List<List<Tick>> runs(List<Tick> ticks) {
    List<List<Tick>> runs = new ArrayList<>();
    for (int i = 0; i < ticks.size(); i++) {
      if (i == 0 || ticks.get(i).index() - ticks.get(i - 1).index() > RUN_GAP + 1) {
        runs.add(new ArrayList<>());
      }
      runs.get(runs.size() - 1).add(ticks.get(i));
    }
    return runs;
  }

  /** Returns the runs of marks between which more than two in a row are missing. */
  List<List<Tick>> runs() {
    return runs(ticks);
  }

  /** Returns the same series without the marks that are not in {@code kept}. */
  TickSeries only(List<Tick> kept) {
    return new TickSeries(List.copyOf(kept), fit(kept));
  }

  int first() {
    return ticks.get(0).index();
  }

  int last() {
    return ticks.get(ticks.size() - 1).index();
  }

  double pitchAt(int index) {
    return Math.abs(course.slopeAt(index));
  }

  double middlePitch() {
    return pitchAt((first() + last()) / 2);
  }

  /** Tells whether most marks have their next neighbour: if not, the pitch is a wrong one. */
  boolean dense() {
    int next = 0;
    for (int i = 1; i < ticks.size(); i++) {
      next += ticks.get(i).index() - ticks.get(i - 1).index() == 1 ? 1 : 0;
    }
    return 3 * next >= 2 * (ticks.size() - 1);
  }

  double shownShare() {
    return ticks.size() / (double) (last() - first() + 1);
  }
}
