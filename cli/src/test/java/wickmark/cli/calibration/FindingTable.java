package wickmark.cli.calibration;

import java.io.PrintStream;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;
import wickmark.core.record.RunRecord;

/**
 * How far the confidence of each kind of finding tells right ones from wrong ones: an outline is
 * right if its corners lie within 2 mm of the true ones in the mean, the bottom if the strip stands
 * within 45° of how it does, a scale of a right outline if it is within 1 %, a line if both its
 * ends lie within 1 mm of the true one, lanes if their number is right and each origin lies within
 * 2.5 mm of the true one. Spots count where all this is right, since they are known by their Rf.
 */
final class FindingTable {
  private static final double LINE_MM = 1;
  private static final double CORNER_MM = 2;
  private static final double SCALE_PART = 0.01;
  private static final double ORIGIN_MM = 2.5;

  private final Map<Kind, List<Finding>> findings = new EnumMap<>(Kind.class);

  /** A kind of finding and the warning that doubts it. */
  enum Kind {
    OUTLINE("strip-unsure"),
    BOTTOM("bottom-unsure"),
    SCALE("scale-unsure"),
    BASELINE("baseline-unsure"),
    FRONT("front-unsure"),
    LANES("lanes-unsure"),
    SPOT("spots-unsure");

    private final String doubt;

    Kind(String doubt) {
      this.doubt = doubt;
    }
  }

  /**
   * One finding.
   *
   * @param doubted whether the warning of its kind stands in the record
   * @param warned whether any does
   */
  record Finding(Kind kind, boolean right, double confidence, boolean doubted, boolean warned) {}

  /** Whether one of these warnings says that a finding is not sure. */
  static boolean isDoubt(Collection<String> warnings) {
    return Arrays.stream(Kind.values()).anyMatch(kind -> warnings.contains(kind.doubt));
  }

  /** What was found in one picture that is to be measured. */
  static List<Finding> of(TruthFile truth, RunRecord record) {
    List<Finding> out = new ArrayList<>();
    double mm = truth.millimetresPerPixel();
    if (!truth.corners().isEmpty()) {
      double apart =
          record.strip().cornersPx().stream()
              .mapToDouble(corner -> mm * nearest(corner, truth.corners()))
              .average()
              .orElse(0);
      boolean right = apart < CORNER_MM;
      out.add(finding(Kind.OUTLINE, right, record.strip().confidence(), record));
      out.add(
          finding(
              Kind.BOTTOM,
              sameWayUp(truth.corners(), record.strip().cornersPx()),
              record.strip().orientationConfidence(),
              record));
      if (right && record.scale().millimetresPerPixel() != null) {
        double off = Math.abs(record.scale().millimetresPerPixel() / mm - 1);
        out.add(finding(Kind.SCALE, off < SCALE_PART, record.scale().confidence(), record));
      }
    }
    if (!truth.baseline().isEmpty()) {
      boolean right = mm * farthest(record.baseline().endsPx(), truth.baseline()) < LINE_MM;
      out.add(finding(Kind.BASELINE, right, record.baseline().confidence(), record));
    }
    if (!truth.front().isEmpty()) {
      boolean right = mm * farthest(record.front().endsPx(), truth.front()) < LINE_MM;
      out.add(finding(Kind.FRONT, right, record.front().confidence(), record));
    }
    if (!truth.lanes().isEmpty()) {
      double least =
          record.lanes().stream()
              .mapToDouble(lane -> Objects.requireNonNull(lane.confidence()))
              .min()
              .orElse(0);
      out.add(finding(Kind.LANES, sameLanes(truth, record), least, record));
    }
    if (out.stream().allMatch(f -> f.right || f.kind == Kind.SCALE)) {
      addSpots(truth, record, out);
    }
    return out;
  }

  private static Finding finding(
      Kind kind, boolean right, @Nullable Double confidence, RunRecord record) {
    return new Finding(
        kind,
        right,
        Objects.requireNonNull(confidence),
        record.warnings().stream().anyMatch(w -> w.code().equals(kind.doubt)),
        !record.warnings().isEmpty());
  }

  /** Whether the way from the lower to the upper corners is about the same. */
  private static boolean sameWayUp(List<List<Double>> truth, List<List<Double>> found) {
    double along = 0;
    double square = 0;
    double foundSquare = 0;
    for (int k = 0; k < 2; k++) {
      double t = up(truth, k);
      double f = up(found, k);
      along += t * f;
      square += t * t;
      foundSquare += f * f;
    }
    return along > Math.sqrt(0.5 * square * foundSquare);
  }

  private static double up(List<List<Double>> corners, int coordinate) {
    return corners.get(0).get(coordinate)
        + corners.get(1).get(coordinate)
        - corners.get(2).get(coordinate)
        - corners.get(3).get(coordinate);
  }

  private static boolean sameLanes(TruthFile truth, RunRecord record) {
    boolean same = truth.lanes().size() == record.lanes().size();
    for (int k = 0; same && k < truth.lanes().size(); k++) {
      same =
          truth.millimetresPerPixel()
                  * nearest(
                      record.lanes().get(k).originPx(), List.of(truth.lanes().get(k).origin()))
              < ORIGIN_MM;
    }
    return same;
  }

  /** Adds findings. */
  void add(List<Finding> more) {
    more.forEach(f -> findings.computeIfAbsent(f.kind(), k -> new ArrayList<>()).add(f));
  }

  private static void addSpots(TruthFile truth, RunRecord record, List<Finding> out) {
    if (truth.lanes().size() == record.lanes().size()) {
      for (int k = 0; k < truth.lanes().size(); k++) {
        addSpots(truth.lanes().get(k), record.lanes().get(k), record, out);
      }
    }
  }

  private static void addSpots(
      TruthFile.Lane truth, RunRecord.Lane lane, RunRecord record, List<Finding> out) {
    List<RunRecord.Spot> found =
        lane.spots().stream().sorted(Comparator.comparingDouble(RunRecord.Spot::rf)).toList();
    int[] pair = SpotPairing.of(truth.spots(), found.stream().map(RunRecord.Spot::rf).toList());
    boolean[] real = new boolean[found.size()];
    for (int j : pair) {
      if (j >= 0) {
        real[j] = true;
      }
    }
    for (int j = 0; j < found.size(); j++) {
      if (found.get(j).rf() >= TruthFile.Spot.ORIGIN) {
        out.add(finding(Kind.SPOT, real[j], found.get(j).confidence(), record));
      }
    }
  }

  /** Pixels from the end that is farthest from a course of straight pieces to that course. */
  private static double farthest(List<List<Double>> ends, List<List<Double>> course) {
    return ends.stream().mapToDouble(end -> toCourse(end, course)).max().orElse(0);
  }

  private static double toCourse(List<Double> place, List<List<Double>> course) {
    double least = nearest(place, course);
    for (int i = 1; i < course.size(); i++) {
      double ax = course.get(i - 1).get(0);
      double ay = course.get(i - 1).get(1);
      double dx = course.get(i).get(0) - ax;
      double dy = course.get(i).get(1) - ay;
      double along = ((place.get(0) - ax) * dx + (place.get(1) - ay) * dy) / (dx * dx + dy * dy);
      boolean outer = (i == 1 && along < 0) || (i == course.size() - 1 && along > 1);
      if (outer || (along >= 0 && along <= 1)) {
        double off = Math.abs((place.get(1) - ay) * dx - (place.get(0) - ax) * dy);
        least = Math.min(least, off / Math.hypot(dx, dy));
      }
    }
    return least;
  }

  private static double nearest(List<Double> place, List<List<Double>> among) {
    return among.stream()
        .mapToDouble(p -> Math.hypot(p.get(0) - place.get(0), p.get(1) - place.get(1)))
        .min()
        .orElse(Double.POSITIVE_INFINITY);
  }

  /**
   * Prints for each kind of finding how many were right and wrong, how many of each its own warning
   * doubts and any warning goes with, and the chance that a right one has more confidence than a
   * wrong one (1: they are parted, 0.5: it tells nothing).
   */
  void print(PrintStream out) {
    out.println(
        "| finding | right | median | 5 % | doubted | wrong | median | 95 % | doubted | any warning"
            + " | told apart |");
    out.println("| --- | ---: | ---: | ---: | ---: | ---: | ---: | ---: | ---: | ---: | ---: |");
    findings.forEach(
        (kind, all) -> {
          List<Finding> right = all.stream().filter(Finding::right).toList();
          List<Finding> wrong = all.stream().filter(f -> !f.right()).toList();
          out.printf(
              Locale.ROOT,
              "| %s | %d | %s | %s | %s | %d | %s | %s | %s | %s | %s |%n",
              kind.name().toLowerCase(Locale.ROOT),
              right.size(),
              at(right, 0.5),
              at(right, 0.05),
              share(right, Finding::doubted),
              wrong.size(),
              at(wrong, 0.5),
              at(wrong, 0.95),
              share(wrong, Finding::doubted),
              share(wrong, Finding::warned),
              apart(right, wrong));
        });
  }

  private static String at(List<Finding> findings, double share) {
    List<Double> sorted = findings.stream().map(Finding::confidence).sorted().toList();
    return sorted.isEmpty()
        ? "–"
        : String.format(
            Locale.ROOT, "%.2f", sorted.get((int) Math.round(share * (sorted.size() - 1))));
  }

  private static String share(List<Finding> findings, Predicate<Finding> what) {
    return findings.isEmpty()
        ? "–"
        : String.format(
            Locale.ROOT,
            "%.0f %%",
            100.0 * findings.stream().filter(what).count() / findings.size());
  }

  private static String apart(List<Finding> right, List<Finding> wrong) {
    if (right.isEmpty() || wrong.isEmpty()) {
      return "–";
    }
    double more = 0;
    for (Finding r : right) {
      for (Finding w : wrong) {
        double lead = r.confidence() - w.confidence();
        more += lead > 0 ? 1 : lead == 0 ? 0.5 : 0;
      }
    }
    return String.format(Locale.ROOT, "%.2f", more / right.size() / wrong.size());
  }
}
