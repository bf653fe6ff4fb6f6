package wickmark.cli.calibration;

import java.io.PrintStream;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import wickmark.core.record.RunRecord;

/**
 * How far the confidence of each kind of finding tells right ones from wrong ones: a line is right
 * if both its ends lie within 1 mm of the true one, an outline if its corners lie within 2 mm of
 * the true ones in the mean.
 */
final class FindingTable {
  private static final double LINE_MM = 1;
  private static final double CORNER_MM = 2;

  private final Map<String, List<List<Double>>> confidences = new LinkedHashMap<>();

  /** Adds what was found in one picture that is to be measured. */
  void add(TruthFile truth, RunRecord record) {
    double mm = truth.millimetresPerPixel();
    if (!truth.corners().isEmpty()) {
      double apart =
          record.strip().cornersPx().stream()
              .mapToDouble(corner -> mm * nearest(corner, truth.corners()))
              .average()
              .orElse(0);
      add("outline", apart < CORNER_MM, record.strip().confidence());
    }
    if (!truth.baseline().isEmpty()) {
      add(
          "baseline",
          mm * farthest(record.baseline().endsPx(), truth.baseline()) < LINE_MM,
          record.baseline().confidence());
    }
    if (!truth.front().isEmpty()) {
      add(
          "front",
          mm * farthest(record.front().endsPx(), truth.front()) < LINE_MM,
          record.front().confidence());
    }
    if (truth.lanes().size() == record.lanes().size()) {
      for (int k = 0; k < truth.lanes().size(); k++) {
        addSpots(truth.lanes().get(k), record.lanes().get(k));
      }
    }
  }

  private void addSpots(TruthFile.Lane truth, RunRecord.Lane lane) {
    List<RunRecord.Spot> found =
        lane.spots().stream().sorted(Comparator.comparingDouble(RunRecord.Spot::rf)).toList();
    int[] pair =
        SpotPairing.of(
            truth.spots().stream().map(TruthFile.Spot::rf).toList(),
            found.stream().map(RunRecord.Spot::rf).toList());
    boolean[] real = new boolean[found.size()];
    for (int j : pair) {
      if (j >= 0) {
        real[j] = true;
      }
    }
    for (int j = 0; j < found.size(); j++) {
      if (found.get(j).rf() >= StripScore.ORIGIN) {
        add("spot", real[j], found.get(j).confidence());
      }
    }
  }

  private void add(String finding, boolean right, double confidence) {
    confidences
        .computeIfAbsent(finding, f -> List.of(new ArrayList<>(), new ArrayList<>()))
        .get(right ? 0 : 1)
        .add(confidence);
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
   * Prints for each kind of finding how many were right and wrong, and the chance that a right one
   * has more confidence than a wrong one (1: they are parted, 0.5: it tells nothing).
   */
  void print(PrintStream out) {
    out.println("| finding | right | median | 5 % | wrong | median | most | told apart |");
    out.println("| --- | ---: | ---: | ---: | ---: | ---: | ---: | ---: |");
    confidences.forEach(
        (finding, lists) -> {
          List<Double> right = lists.get(0).stream().sorted().toList();
          List<Double> wrong = lists.get(1).stream().sorted().toList();
          out.printf(
              Locale.ROOT,
              "| %s | %d | %s | %s | %d | %s | %s | %s |%n",
              finding,
              right.size(),
              at(right, 0.5),
              at(right, 0.05),
              wrong.size(),
              at(wrong, 0.5),
              at(wrong, 1),
              apart(right, wrong));
        });
  }

  private static String at(List<Double> sorted, double share) {
    return sorted.isEmpty()
        ? "–"
        : String.format(Locale.ROOT, "%.2f", sorted.get((int) (share * (sorted.size() - 1))));
  }

  private static String apart(List<Double> right, List<Double> wrong) {
    if (right.isEmpty() || wrong.isEmpty()) {
      return "–";
    }
    double more = 0;
    for (double r : right) {
      for (double w : wrong) {
        more += r > w ? 1 : r == w ? 0.5 : 0;
      }
    }
    return String.format(Locale.ROOT, "%.2f", more / right.size() / wrong.size());
  }
}
