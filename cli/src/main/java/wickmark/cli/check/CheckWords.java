package wickmark.cli.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import wickmark.core.check.ClassReport;
import wickmark.core.check.HandCheckReport;
import wickmark.core.check.Mark;
import wickmark.core.check.ReaderReport;
import wickmark.core.statistics.Interval;
import wickmark.core.statistics.SampleMean;
import wickmark.core.uncertainty.Decimals;

/** The words and numbers that screen, spreadsheet and pages share. */
final class CheckWords {
  private static final int RF_DECIMALS = 3;
  private static final int MM_DECIMALS = 1;

  private CheckWords() {}

  static String reader(ReaderReport report) {
    return report.reader().isEmpty() ? "the reader" : report.reader();
  }

  static String quantity(Mark mark) {
    return switch (mark.quantity()) {
      case DISTANCE -> "spot, mm";
      case FRONT -> "front, mm";
      case RF -> "Rf";
    };
  }

  static String place(Mark mark) {
    return mark.quantity() == Mark.Quantity.FRONT ? "" : String.valueOf(mark.row().spot());
  }

  /** The number as the person wrote it. */
  static String hand(Mark mark) {
    return switch (mark.quantity()) {
      case DISTANCE -> mark.row().distance().orElseThrow().toPlainString();
      case FRONT -> mark.row().front().orElseThrow().toPlainString();
      case RF -> mark.row().rf().orElseThrow().toPlainString();
    };
  }

  static String machine(Mark mark) {
    return Decimals.text(mark.machine(), decimals(mark));
  }

  static String difference(Mark mark) {
    return signed(mark.difference(), decimals(mark));
  }

  static String en(Mark mark) {
    return signed(mark.en(), 1);
  }

  static String verdict(Mark mark) {
    return mark.agrees() ? "agrees" : "differs";
  }

  private static int decimals(Mark mark) {
    return mark.quantity() == Mark.Quantity.RF ? RF_DECIMALS : MM_DECIMALS;
  }

  static String signed(double value, int decimals) {
    String text = Decimals.text(value, decimals);
    return value > 0 && Double.parseDouble(text) != 0 ? "+" + text : text;
  }

  static String millimetres(double value) {
    return Decimals.text(value, 2) + " mm";
  }

  static long agreeing(ReaderReport report) {
    return report.marks().stream().filter(Mark::agrees).count();
  }

  /** Mean of hand minus machine, mm, over the lengths that no slip explains. */
  static Optional<String> mean(ReaderReport report) {
    return report.differences().map(d -> signed(d.mean(), 2));
  }

  /** Their standard deviation, mm. */
  static Optional<String> spread(ReaderReport report) {
    return report
        .differences()
        .flatMap(SampleMean::standardDeviation)
        .map(deviation -> Decimals.text(deviation, 2));
  }

  /** One line about everything. */
  static String overview(HandCheckReport report) {
    int values = report.readers().stream().mapToInt(reader -> reader.marks().size()).sum();
    long agree = report.readers().stream().mapToLong(CheckWords::agreeing).sum();
    return count(report.readers().size(), "reader")
        + ", "
        + count(values, "value")
        + ": "
        + agree
        + " agree, "
        + (values - agree)
        + " differ";
  }

  static String count(int number, String thing) {
    return number + " " + thing + (number == 1 ? "" : "s");
  }

  /** What the readings of all say together, in sentences. */
  static List<String> together(ClassReport report) {
    List<String> sentences = new ArrayList<>(figures(report));
    sentences.addAll(apart(report));
    return sentences;
  }

  /** The figures of the class, in sentences that name nobody. */
  static List<String> figures(ClassReport report) {
    List<String> sentences = new ArrayList<>();
    report
        .agreement()
        .ifPresent(
            agreement ->
                sentences.add(
                    "Hand minus machine over "
                        + count(agreement.count(), "distance")
                        + ": mean "
                        + signed(agreement.meanDifference(), 2)
                        + " mm "
                        + interval(agreement.meanConfidence(), 2)
                        + "; 95 of 100 differences lie between "
                        + signed(agreement.lower().value(), 2)
                        + " mm "
                        + interval(agreement.lower().confidence(), 2)
                        + " and "
                        + signed(agreement.upper().value(), 2)
                        + " mm "
                        + interval(agreement.upper().confidence(), 2)
                        + ", the limits of agreement after Bland and Altman (Lancet 1986)."));
    report
        .line()
        .ifPresent(
            line ->
                sentences.add(
                    "Hand against machine is a line of slope "
                        + Decimals.text(line.slope(), 3)
                        + " ("
                        + Decimals.text(line.slopeConfidence().low(), 3)
                        + " to "
                        + Decimals.text(line.slopeConfidence().high(), 3)
                        + ")"
                        + " with "
                        + signed(line.intercept(), 2)
                        + " mm "
                        + interval(line.interceptConfidence(), 2)
                        + " at zero (Deming regression, for errors in both; Statistical Adjustment of"
                        + " Data, 1943)."));
    report
        .precision()
        .ifPresent(
            precision ->
                sentences.add(
                    "The same reader repeats a distance to "
                        + millimetres(precision.repeatability())
                        + ", different readers to "
                        + millimetres(precision.reproducibility())
                        + " (standard deviations of repeatability and reproducibility, ISO 5725-2)."));
    if (report.leftOut() > 0) {
      sentences.add(
          "Left out of these figures: "
              + count(report.leftOut(), "distance")
              + " that a slip explains or that should be read again.");
    }
    return sentences;
  }

  /** Which readings lie apart from the others, and where they are written. */
  static List<String> apart(ClassReport report) {
    List<String> sentences = new ArrayList<>();
    for (ClassReport.SpotSummary spot : report.spots()) {
      spot.outlier()
          .ifPresent(
              row ->
                  sentences.add(
                      "Lane "
                          + spot.lane()
                          + ", spot "
                          + spot.spot()
                          + ": "
                          + row.distance().orElseThrow().toPlainString()
                          + " mm ("
                          + row.place()
                          + ") lies apart from the other readings, by more than chance gives"
                          + " (Grubbs' test at 5 %, ISO 5725-2) and by more than a reading with a ruler is"
                          + " uncertain (k = 2)."));
    }
    return sentences;
  }

  private static String interval(Interval interval, int decimals) {
    return String.format(
        Locale.ROOT,
        "(%s to %s)",
        signed(interval.low(), decimals),
        signed(interval.high(), decimals));
  }
}
