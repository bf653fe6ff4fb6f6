package wickmark.cli.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wickmark.cli.plot.Axis;
import wickmark.core.check.HandCheckReport;
import wickmark.core.check.Mark;
import wickmark.core.check.ReaderReport;
import wickmark.core.statistics.LimitsOfAgreement;
import wickmark.core.uncertainty.Decimals;

/**
 * Hand minus machine against the mean of both, over the distances that no slip explains, with the
 * mean difference, the limits of agreement and their confidence intervals.
 */
record AgreementPlot(
    int width,
    int height,
    Frame frame,
    List<Axis.Tick> across,
    List<Axis.Tick> up,
    String zero,
    List<Level> levels,
    List<Point> points) {

  private static final int WIDTH = 720;
  private static final int HEIGHT = 360;

  /** The inner rectangle. */
  record Frame(int left, int top, int right, int bottom) {}

  /** A line across with the band of its confidence interval. */
  record Level(String y, String bandTop, String bandHeight, String text, String kind) {}

  /** A reading. */
  record Point(String x, String y) {}

  /** Returns the plot; empty where fewer than two distances can be compared. */
  static Optional<AgreementPlot> of(HandCheckReport report) {
    return report.together().agreement().map(agreement -> of(report, agreement));
  }

  private static AgreementPlot of(HandCheckReport report, LimitsOfAgreement agreement) {
    Frame frame = new Frame(64, 16, WIDTH - 150, HEIGHT - 48);
    List<Mark> marks = distances(report);
    List<Double> values = new ArrayList<>(marks.stream().map(Mark::difference).toList());
    values.add(0.0);
    values.add(agreement.lower().confidence().low());
    values.add(agreement.upper().confidence().high());
    Axis up = Axis.around(values, frame.bottom(), frame.top());
    Axis across =
        Axis.around(marks.stream().map(AgreementPlot::mean).toList(), frame.left(), frame.right());
    return new AgreementPlot(
        WIDTH,
        HEIGHT,
        frame,
        across.ticks(),
        up.ticks(),
        up.place(0),
        List.of(
            level(up, agreement.upper(), "upper limit"),
            level(
                up,
                new LimitsOfAgreement.Limit(agreement.meanDifference(), agreement.meanConfidence()),
                "mean"),
            level(up, agreement.lower(), "lower limit")),
        marks.stream()
            .map(mark -> new Point(across.place(mean(mark)), up.place(mark.difference())))
            .toList());
  }

  private static double mean(Mark mark) {
    return (mark.hand() + mark.machine()) / 2;
  }

  private static List<Mark> distances(HandCheckReport report) {
    List<Mark> marks = new ArrayList<>();
    for (ReaderReport reader : report.readers()) {
      for (Mark mark : reader.marks()) {
        boolean slipped =
            reader.slips().stream()
                .anyMatch(slip -> slip.slip().isOfLength() && slip.rows().contains(mark.row()));
        if (mark.quantity() == Mark.Quantity.DISTANCE && !slipped) {
          marks.add(mark);
        }
      }
    }
    return marks;
  }

  private static Level level(Axis up, LimitsOfAgreement.Limit limit, String name) {
    double top = up.at(limit.confidence().high());
    double bottom = up.at(limit.confidence().low());
    return new Level(
        up.place(limit.value()),
        up.place(limit.confidence().high()),
        Decimals.text(bottom - top, 1),
        name + " " + CheckWords.signed(limit.value(), 2),
        name.equals("mean") ? "mean" : "limit");
  }
}
