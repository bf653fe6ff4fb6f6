package wickmark.cli.check;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import wickmark.cli.report.PageTemplate;
import wickmark.core.check.ClassReport;
import wickmark.core.check.HandCheckReport;
import wickmark.core.check.Mark;
import wickmark.core.check.ReaderReport;
import wickmark.core.check.ReadingProblem;
import wickmark.core.check.SlipFinding;
import wickmark.core.record.RunRecord;
import wickmark.core.uncertainty.Decimals;

/** The pages of a check: one for the teacher, and one with a page for each reader. */
public final class CheckPages {
  private CheckPages() {}

  /** One value of a reader. */
  record Value(
      String lane,
      String spot,
      String quantity,
      String hand,
      String machine,
      String difference,
      String en,
      String verdict) {}

  /** One reader. */
  record Reader(
      String name,
      int values,
      long agree,
      String mean,
      String spread,
      boolean right,
      List<String> messages,
      List<Value> marks) {}

  /** One spot over all readers. */
  record Spot(String name, int readings, String machine, String mean, String deviation) {}

  /** Returns the teacher's page. */
  public static String forTheTeacher(
      RunRecord record, HandCheckReport report, List<ReadingProblem> problems) {
    Map<String, Object> content = together(report, "All readings together");
    content.put("title", title(record));
    content.put("overview", CheckWords.overview(report));
    content.put("readers", report.readers().stream().map(CheckPages::reader).toList());
    content.put("apart", CheckWords.apart(report.together()));
    content.put("problems", problems);
    return PageTemplate.filled(CheckPages.class, "check.ftlh", content);
  }

  /** Returns the section for the strip's own report; it names no reader and no reader's file. */
  public static String forTheReport(HandCheckReport report) {
    return PageTemplate.filled(
        CheckPages.class, "section.ftlh", together(report, "Hand readings against the machine’s"));
  }

  private static Map<String, Object> together(HandCheckReport report, String heading) {
    Map<String, Object> content = new TreeMap<>();
    content.put("heading", heading);
    content.put("sentences", CheckWords.figures(report.together()));
    content.put("spots", report.together().spots().stream().map(CheckPages::spot).toList());
    AgreementPlot.of(report).ifPresent(plot -> content.put("agreement", plot));
    SpotPlot.of(report.together()).ifPresent(plot -> content.put("strips", plot));
    return content;
  }

  /** Returns the readers' page: printed, a sheet of paper each. */
  public static String forTheReaders(RunRecord record, HandCheckReport report) {
    Map<String, Object> content = new TreeMap<>();
    content.put("title", title(record));
    content.put("readers", report.readers().stream().map(CheckPages::reader).toList());
    return PageTemplate.filled(CheckPages.class, "feedback.ftlh", content);
  }

  private static String title(RunRecord record) {
    return String.valueOf(record.settings().getOrDefault("title", record.photo().file()));
  }

  private static Reader reader(ReaderReport report) {
    return new Reader(
        CheckWords.reader(report),
        report.marks().size(),
        CheckWords.agreeing(report),
        CheckWords.mean(report).orElse("–"),
        CheckWords.spread(report).orElse("–"),
        report.isAllRight(),
        report.slips().stream().map(SlipFinding::message).toList(),
        report.marks().stream().map(CheckPages::value).toList());
  }

  private static Value value(Mark mark) {
    return new Value(
        mark.row().lane(),
        CheckWords.place(mark),
        CheckWords.quantity(mark),
        CheckWords.hand(mark),
        CheckWords.machine(mark),
        CheckWords.difference(mark),
        CheckWords.en(mark),
        CheckWords.verdict(mark));
  }

  private static Spot spot(ClassReport.SpotSummary spot) {
    return new Spot(
        spot.lane() + ", spot " + spot.spot(),
        spot.distances().size(),
        Decimals.text(spot.machine(), 1),
        Decimals.text(spot.robustMean(), 1),
        Decimals.text(spot.robustDeviation(), 2));
  }
}
