package wickmark.cli.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wickmark.cli.plot.Ink;
import wickmark.cli.plot.Plot;
import wickmark.core.check.HandCheckReport;
import wickmark.core.check.Mark;
import wickmark.core.check.ReaderReport;
import wickmark.core.statistics.LimitsOfAgreement;
import wickmark.core.statistics.LimitsOfAgreement.Limit;

/**
 * Hand minus machine against the mean of both, over the distances that no slip explains, with the
 * mean difference, the limits of agreement and their confidence intervals.
 */
final class AgreementPlot {
  /** Share of the width that is left for the names of the lines. */
  private static final double ROOM_FOR_NAMES = 0.28;

  /** How far above its line a name stands, as a share of the height. */
  private static final double LIFT = 0.035;

  private final List<Plot.Place> values;
  private final double left;
  private final double right;

  private AgreementPlot(List<Plot.Place> values) {
    this.values = values;
    double least = values.stream().mapToDouble(Plot.Place::x).min().orElse(0);
    double most = values.stream().mapToDouble(Plot.Place::x).max().orElse(0);
    double width = Math.max(1, most - least);
    this.left = least - 0.04 * width;
    this.right = most + ROOM_FOR_NAMES * width;
  }

  /** Returns the plot as SVG; empty where fewer than two distances can be compared. */
  static Optional<String> of(HandCheckReport report) {
    return report
        .together()
        .agreement()
        .map(agreement -> new AgreementPlot(distances(report)).svg(agreement));
  }

  private String svg(LimitsOfAgreement agreement) {
    Limit mean = new Limit(agreement.meanDifference(), agreement.meanConfidence());
    Plot plot =
        new Plot(720, 380)
            .across("mean of hand and machine, mm")
            .up("hand minus machine, mm")
            .band(from(agreement.upper()), to(agreement.upper()))
            .band(from(mean), to(mean))
            .band(from(agreement.lower()), to(agreement.lower()))
            .line(
                new Plot.Place(left, 0), new Plot.Place(right, 0), Plot.Stroke.SOLID, Ink.QUIET, 1);
    double lift =
        LIFT * (agreement.upper().confidence().high() - agreement.lower().confidence().low());
    addLevel(plot, agreement.upper(), lift, "upper limit", Plot.Stroke.DOTTED);
    addLevel(plot, mean, lift, "mean", Plot.Stroke.DASHED);
    addLevel(plot, agreement.lower(), lift, "lower limit", Plot.Stroke.DOTTED);
    return plot.values(values, Plot.Shape.RING)
        .svg(
            "agreement",
            "Hand minus machine against the mean of both, in millimetres",
            values.size()
                + " distances; mean difference "
                + CheckWords.signed(mean.value(), 2)
                + ", limits of agreement "
                + CheckWords.signed(agreement.lower().value(), 2)
                + " and "
                + CheckWords.signed(agreement.upper().value(), 2)
                + ".");
  }

  private Plot.Place from(Limit limit) {
    return new Plot.Place(left, limit.confidence().low());
  }

  private Plot.Place to(Limit limit) {
    return new Plot.Place(right, limit.confidence().high());
  }

  private void addLevel(Plot plot, Limit limit, double lift, String name, Plot.Stroke stroke) {
    plot.line(
            new Plot.Place(left, limit.value()),
            new Plot.Place(right, limit.value()),
            stroke,
            Ink.MAIN,
            2)
        .text(
            new Plot.Place(right, limit.value() + lift),
            name + " " + CheckWords.signed(limit.value(), 2));
  }

  private static List<Plot.Place> distances(HandCheckReport report) {
    List<Plot.Place> places = new ArrayList<>();
    for (ReaderReport reader : report.readers()) {
      for (Mark mark : reader.marks()) {
        boolean slipped =
            reader.slips().stream()
                .anyMatch(slip -> slip.slip().isOfLength() && slip.rows().contains(mark.row()));
        if (mark.quantity() == Mark.Quantity.DISTANCE && !slipped) {
          places.add(new Plot.Place((mark.hand() + mark.machine()) / 2, mark.difference()));
        }
      }
    }
    return places;
  }
}
