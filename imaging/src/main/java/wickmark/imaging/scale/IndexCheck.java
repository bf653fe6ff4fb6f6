package wickmark.imaging.scale;

import java.util.ArrayList;
import java.util.List;

/**
 * Checks that the marks' numbers have not slipped where some were not seen: beyond a gap the long
 * marks must come at the same numbers within the period as before it.
 */
final class IndexCheck {
  /** Over this many marks not seen the spacing alone carries the numbers. */
  private static final int SAFE_GAP = 6;

  /** Another phase must explain a run's lengths better by this much to count against it. */
  private static final double BETTER = 0.1;

  private IndexCheck() {}

  /** Returns the longest run and those runs to both sides of it whose numbers are beyond doubt. */
  static List<Tick> consistent(CombTrace trace, DivisionFit fit) {
    List<List<Tick>> runs = trace.series().runs();
    int main = 0;
    for (int i = 1; i < runs.size(); i++) {
      main = runs.get(i).size() > runs.get(main).size() ? i : main;
    }
    List<Tick> kept = new ArrayList<>(runs.get(main));
    int end = last(runs.get(main));
    for (int i = main + 1; i < runs.size(); i++) {
      if (sure(trace, fit, runs.get(i), first(runs.get(i)) - end)) {
        kept.addAll(runs.get(i));
        end = last(runs.get(i));
      }
    }
    int start = first(runs.get(main));
    for (int i = main - 1; i >= 0; i--) {
      if (sure(trace, fit, runs.get(i), start - last(runs.get(i)))) {
        kept.addAll(0, runs.get(i));
        start = first(runs.get(i));
      }
    }
    return kept;
  }

  private static int first(List<Tick> run) {
    return run.get(0).index();
  }

  private static int last(List<Tick> run) {
    return run.get(run.size() - 1).index();
  }

  private static boolean sure(CombTrace trace, DivisionFit fit, List<Tick> run, int step) {
    if (run.size() < fit.division().period() + 2) {
      return step <= SAFE_GAP + 1;
    }
    TickLengths lengths = TickLengths.measure(trace, run, fit.side());
    double own = DivisionFit.explainedShare(lengths, fit.division(), fit.phase());
    for (int phase = 0; phase < fit.division().period(); phase++) {
      if (DivisionFit.explainedShare(lengths, fit.division(), phase) > own + BETTER) {
        return false;
      }
    }
    return own > 0 || step <= SAFE_GAP + 1;
  }
}
