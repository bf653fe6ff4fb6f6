package wickmark.core.check;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import wickmark.core.check.MeasuredSheet.MeasuredLane;
import wickmark.core.check.MeasuredSheet.MeasuredSpot;
import wickmark.core.statistics.DemingLine;
import wickmark.core.statistics.GrubbsTest;
import wickmark.core.statistics.LimitsOfAgreement;
import wickmark.core.statistics.Precision;
import wickmark.core.statistics.RobustMean;

/** Puts the distances of all readers together. */
final class ClassCheck {
  private final MeasuredSheet sheet;
  private final CheckSettings settings;
  private final List<Mark> good;
  private final int leftOut;

  ClassCheck(MeasuredSheet sheet, CheckSettings settings, List<ReaderReport> readers) {
    this.sheet = sheet;
    this.settings = settings;
    List<Mark> all = new ArrayList<>();
    List<Mark> kept = new ArrayList<>();
    for (ReaderReport reader : readers) {
      for (Mark mark : reader.marks()) {
        if (mark.quantity() == Mark.Quantity.DISTANCE) {
          all.add(mark);
          if (!hasLengthSlip(reader, mark)) {
            kept.add(mark);
          }
        }
      }
    }
    this.good = List.copyOf(kept);
    this.leftOut = all.size() - kept.size();
  }

  private static boolean hasLengthSlip(ReaderReport reader, Mark mark) {
    return reader.slips().stream()
        .anyMatch(slip -> slip.slip().isOfLength() && slip.rows().contains(mark.row()));
  }

  ClassReport report() {
    List<Double> differences = good.stream().map(Mark::difference).toList();
    return new ClassReport(
        differences.size() < 2 ? Optional.empty() : Optional.of(LimitsOfAgreement.of(differences)),
        line(),
        precision(),
        spots(),
        leftOut);
  }

  private Optional<DemingLine> line() {
    List<DemingLine.Point> points =
        good.stream().map(mark -> new DemingLine.Point(mark.machine(), mark.hand())).toList();
    return points.size() < 3 ? Optional.empty() : DemingLine.through(points, varianceRatio());
  }

  /** Variance of a hand reading over the mean variance of the machine's distances. */
  private double varianceRatio() {
    double sum = 0;
    for (Mark mark : good) {
      double u = spot(mark).middleUncertainty();
      sum += u * u;
    }
    double machine = Math.max(1e-6, sum / good.size());
    return settings.lengthUncertainty() * settings.lengthUncertainty() / machine;
  }

  private MeasuredSpot spot(Mark mark) {
    return sheet
        .lane(mark.row().lane())
        .flatMap(lane -> lane.spot(mark.row().spot()))
        .orElseThrow();
  }

  /** Each spot is a level of its own; the variances of the levels are averaged. */
  private Optional<Precision> precision() {
    List<Precision> levels = new ArrayList<>();
    for (List<Mark> marks : bySpot().values()) {
      Map<String, List<Double>> byReader = new LinkedHashMap<>();
      for (Mark mark : marks) {
        byReader
            .computeIfAbsent(mark.row().reader(), reader -> new ArrayList<>())
            .add(mark.difference());
      }
      Precision.of(List.copyOf(byReader.values())).ifPresent(levels::add);
    }
    return Precision.averageOf(levels);
  }

  private String key(Mark mark) {
    String lane = sheet.lane(mark.row().lane()).map(MeasuredLane::name).orElseThrow();
    return lane + "\n" + mark.row().spot();
  }

  private Map<String, List<Mark>> bySpot() {
    Map<String, List<Mark>> spots = new LinkedHashMap<>();
    for (Mark mark : good) {
      spots.computeIfAbsent(key(mark), key -> new ArrayList<>()).add(mark);
    }
    return spots;
  }

  private List<ClassReport.SpotSummary> spots() {
    Map<String, List<Mark>> bySpot = bySpot();
    List<ClassReport.SpotSummary> summaries = new ArrayList<>();
    for (MeasuredLane lane : sheet.lanes()) {
      for (int number = 1; number <= lane.spots().size(); number++) {
        List<Mark> marks = bySpot.getOrDefault(lane.name() + "\n" + number, List.of());
        if (!marks.isEmpty()) {
          summaries.add(summary(lane.name(), number, marks));
        }
      }
    }
    return summaries;
  }

  private ClassReport.SpotSummary summary(String lane, int number, List<Mark> marks) {
    List<Double> distances = marks.stream().map(Mark::hand).toList();
    RobustMean robust = RobustMean.of(distances);
    return new ClassReport.SpotSummary(
        lane,
        number,
        marks.get(0).machine(),
        distances,
        robust.mean(),
        robust.standardDeviation(),
        outlier(distances, robust).map(index -> marks.get(index).row()));
  }

  /**
   * Where a class reads more alike than a ruler's divisions let it, the test calls a reading an
   * outlier that is as right as the others; so it must also be further from them than a reading is
   * uncertain.
   */
  private Optional<Integer> outlier(List<Double> distances, RobustMean robust) {
    return GrubbsTest.of(distances)
        .filter(GrubbsTest::isOutlier)
        .map(GrubbsTest::index)
        .filter(
            index ->
                Math.abs(distances.get(index) - robust.mean())
                    > settings.expandedLengthUncertainty());
  }
}
