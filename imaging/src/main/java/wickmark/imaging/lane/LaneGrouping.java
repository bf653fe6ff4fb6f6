package wickmark.imaging.lane;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * Parts the strip into lanes. A lane is a stretch in which a name, a mark and stain lie one above
 * the other, each there once; stretches between lanes may hold what belongs to none. All ways to
 * part the strip are compared by dynamic programming, each by what it leaves unexplained, in units
 * of about a negative log-likelihood; how evenly the lanes then lie decides with it how many there
 * are.
 */
final class LaneGrouping {
  /** What one more lane costs, so that nothing is parted for nothing. */
  private static final double LANE = 1;

  /** Least length of evidence that tells where a kind of it lies in a lane, mm. */
  private static final double LEAST_WRITING_MM = 0.75;

  private static final double LEAST_MARKS_MM = 0.25;
  private static final double LEAST_STAIN_MM = 1;

  /** Length of evidence on the strip from which every lane is expected to have some, mm. */
  private static final double SOME_WRITING_MM = 2;

  private static final double SOME_MARKS_MM = 0.5;

  /** How far the middle of each kind lies from where the sample was put (standard deviation). */
  private static final double WRITING_MM = 2;

  private static final double MARKS_MM = 1;

  /** Spots drift aside on their way. */
  private static final double STAIN_MM = 2.5;

  /** A kind of evidence that a lane lacks. */
  private static final double NO_WRITING = 2.5;

  private static final double NO_MARKS = 1;
  private static final double NO_STAIN = 3;

  /** A whole name, mark or spot cut in two by the border of lanes. */
  private static final double CUT_WRITING = 3;

  private static final double CUT_MARK = 3;
  private static final double CUT_STAIN = 5;

  /** A second name, mark or spot beside the first: spots that drift may lie side by side. */
  private static final double SECOND_WRITING = 3;

  private static final double SECOND_MARK = 4;
  private static final double SECOND_STAIN = 3;

  /** A millimetre of evidence that is left to no lane. */
  private static final double STRAY_WRITING = 0.3;

  private static final double STRAY_MARKS = 1.5;
  private static final double STRAY_STAIN = 0.8;

  /** How unevenly people space lanes, as a part of the distance (standard deviation). */
  private static final double UNEVEN = 0.25;

  /** The most that one uneven distance counts. */
  private static final double MOST_UNEVEN = 4;

  /** Gaps within a name, and within one mark, mm. */
  private static final double NAME_GAP_MM = 2.5;

  private static final double MARK_GAP_MM = 1;

  private final LaneEvidence evidence;
  private final SaidOrigins said;
  private final int steps;
  private final CrossProfile writing;
  private final CrossProfile marks;
  private final CrossProfile stain;
  private final double[][] lane;
  private final double[][] stray;
  private final double[] border;

  /**
   * How the strip is parted.
   *
   * @param spans from left to right
   * @param lead how much better this number of lanes explains the evidence than the next best;
   *     infinite where no other is possible, or the number is said and no other explains it better;
   *     below 0 where one does
   */
  record Grouping(List<LaneSpan> spans, double lead) {
    Grouping {
      spans = List.copyOf(spans);
    }
  }

  private LaneGrouping(LaneEvidence evidence, SaidOrigins said) {
    this.evidence = evidence;
    this.said = said;
    this.steps = evidence.steps();
    writing = CrossProfile.ofInk(evidence.writing(), NAME_GAP_MM);
    marks = CrossProfile.ofInk(evidence.marks(), MARK_GAP_MM);
    stain = CrossProfile.ofDensity(evidence.density());
    lane = new double[steps][steps + 1];
    stray = new double[steps][steps + 1];
    boolean written = lengthMm(evidence.writing()) > SOME_WRITING_MM;
    boolean marked = lengthMm(evidence.marks()) > SOME_MARKS_MM;
    for (int from = 0; from < steps; from++) {
      weigh(from, written, marked);
    }
    border = new double[steps];
    for (int i = 1; i < steps; i++) {
      border[i] =
          CUT_WRITING * writing.cutThrough(i)
              + CUT_MARK * marks.cutThrough(i)
              + CUT_STAIN * stain.cutThrough(i);
    }
  }

  /**
   * Parts the strip; no lanes where there is no evidence of any.
   *
   * @param count how many lanes there are, if the person says; fewer come out where the evidence
   *     does not go round
   * @param origins those that the person says; a lane with one needs no other evidence
   */
  static Grouping of(LaneEvidence evidence, OptionalInt count, SaidOrigins origins) {
    return new LaneGrouping(evidence, origins).best(count);
  }

  private static double lengthMm(double[] values) {
    return Arrays.stream(values).sum() * LaneEvidence.STEP_MM;
  }

  /** Costs of all stretches from one step on, as lanes and as none. */
  private void weigh(int from, boolean written, boolean marked) {
    Kind names = new Kind(LEAST_WRITING_MM, WRITING_MM);
    Kind ticks = new Kind(LEAST_MARKS_MM, MARKS_MM);
    Kind spots = new Kind(LEAST_STAIN_MM, STAIN_MM);
    FurtherPeaks moreNames = new FurtherPeaks(writing);
    FurtherPeaks moreMarks = new FurtherPeaks(marks);
    FurtherPeaks moreSpots = new FurtherPeaks(stain);
    for (int i = from; i < steps; i++) {
      names.add(evidence.writing()[i], i);
      ticks.add(evidence.marks()[i], i);
      spots.add(evidence.stain(i), i);
      moreNames.add(writing.values()[i]);
      moreMarks.add(marks.values()[i]);
      moreSpots.add(stain.values()[i]);
      double further =
          LANE
              + SECOND_WRITING * moreNames.count()
              + SECOND_MARK * moreMarks.count()
              + SECOND_STAIN * moreSpots.count();
      OptionalDouble place = said.in(from, i + 1);
      if (place.isPresent()) {
        lane[from][i + 1] = further + apartFrom(place.getAsDouble(), names, ticks, spots);
        stray[from][i + 1] = Double.POSITIVE_INFINITY;
      } else {
        lane[from][i + 1] =
            further
                + (written && !names.isThere() ? NO_WRITING : 0)
                + (marked && !ticks.isThere() ? NO_MARKS : 0)
                + (spots.isThere() ? 0 : NO_STAIN)
                + apart(names, ticks, spots);
        stray[from][i + 1] =
            STRAY_WRITING * names.length + STRAY_MARKS * ticks.length + STRAY_STAIN * spots.length;
      }
    }
  }

  /** One kind of evidence in a growing stretch. */
  private static final class Kind {
    private final double leastMm;
    private final double sigmaMm;
    private double length;
    private double moment;

    Kind(double leastMm, double sigmaMm) {
      this.leastMm = leastMm;
      this.sigmaMm = sigmaMm;
    }

    void add(double value, int step) {
      length += value * LaneEvidence.STEP_MM;
      moment += value * LaneEvidence.STEP_MM * LaneEvidence.middleMm(step);
    }

    boolean isThere() {
      return length > leastMm;
    }

    double middle() {
      return moment / length;
    }

    double weight() {
      return 1 / (sigmaMm * sigmaMm);
    }
  }

  /** How far the kinds lie from one common place; infinite where there is none of any. */
  private static double apart(Kind... kinds) {
    double sum = 0;
    double moment = 0;
    double square = 0;
    for (Kind kind : kinds) {
      if (kind.isThere()) {
        sum += kind.weight();
        moment += kind.weight() * kind.middle();
        square += kind.weight() * kind.middle() * kind.middle();
      }
    }
    return sum == 0 ? Double.POSITIVE_INFINITY : Math.max(0, square - moment * moment / sum) / 2;
  }

  /** How far the kinds lie from the place that is said. */
  private static double apartFrom(double mm, Kind... kinds) {
    double sum = 0;
    for (Kind kind : kinds) {
      double off = kind.isThere() ? kind.middle() - mm : 0;
      sum += kind.weight() * off * off;
    }
    return sum / 2;
  }

  private Grouping best(OptionalInt count) {
    Path[][] paths = paths();
    int most = Math.min(SaidLanes.MOST, steps);
    double[] cost = new double[most + 1];
    Arrays.fill(cost, Double.POSITIVE_INFINITY);
    int best = 0;
    for (int n = 1; n <= most; n++) {
      if (paths[n][steps].cost < Double.POSITIVE_INFINITY) {
        cost[n] = paths[n][steps].cost + unevenness(spans(paths, n));
        boolean better = count.isPresent() ? n <= count.getAsInt() : cost[n] < cost[best];
        best = better ? n : best;
      }
    }
    if (best == 0) {
      return new Grouping(List.of(), Double.POSITIVE_INFINITY);
    }
    double next = Double.POSITIVE_INFINITY;
    for (int n = 1; n <= most; n++) {
      next = n == best ? next : Math.min(next, cost[n]);
    }
    double lead = next - cost[best];
    return new Grouping(
        spans(paths, best), count.isPresent() && lead >= 0 ? Double.POSITIVE_INFINITY : lead);
  }

  /**
   * The best way to part what lies left of a step.
   *
   * @param from where its last stretch begins
   * @param isLane whether that is a lane
   */
  private record Path(double cost, int from, boolean isLane) {}

  /** By number of lanes, then by the step up to which the strip is parted. */
  private Path[][] paths() {
    Path[][] best = new Path[SaidLanes.MOST + 1][steps + 1];
    for (int n = 0; n <= SaidLanes.MOST; n++) {
      best[n][0] = new Path(n == 0 ? 0 : Double.POSITIVE_INFINITY, 0, false);
      for (int to = 1; to <= steps; to++) {
        double cost = Double.POSITIVE_INFINITY;
        int start = 0;
        boolean isLane = false;
        for (int from = 0; from < to; from++) {
          double without = best[n][from].cost + stray[from][to] + border[from];
          double with =
              n == 0 || !said.allows(n - 1, from, to)
                  ? Double.POSITIVE_INFINITY
                  : best[n - 1][from].cost + lane[from][to] + border[from];
          if (Math.min(with, without) < cost) {
            cost = Math.min(with, without);
            start = from;
            isLane = with < without;
          }
        }
        best[n][to] = new Path(cost, start, isLane);
      }
    }
    return best;
  }

  private static List<LaneSpan> spans(Path[][] paths, int lanes) {
    List<LaneSpan> spans = new ArrayList<>();
    int n = lanes;
    int to = paths[n].length - 1;
    while (to > 0) {
      Path path = paths[n][to];
      if (path.isLane) {
        spans.add(0, new LaneSpan(path.from, to));
        n--;
      }
      to = path.from;
    }
    return spans;
  }

  private double unevenness(List<LaneSpan> spans) {
    if (spans.size() < 3) {
      return 0;
    }
    double first = originMm(spans.get(0));
    double mean = (originMm(spans.get(spans.size() - 1)) - first) / (spans.size() - 1);
    double sum = 0;
    double before = first;
    for (LaneSpan span : spans.subList(1, spans.size())) {
      double origin = originMm(span);
      double off = ((origin - before) / mean - 1) / UNEVEN;
      sum += Math.min(MOST_UNEVEN, off * off / 2);
      before = origin;
    }
    return sum;
  }

  private double originMm(LaneSpan span) {
    return said.in(span.from(), span.to()).orElseGet(() -> evidence.originMm(span));
  }
}
