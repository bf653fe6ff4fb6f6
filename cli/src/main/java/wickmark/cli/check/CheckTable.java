package wickmark.cli.check;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import wickmark.cli.table.TextTable;
import wickmark.core.check.HandCheckReport;
import wickmark.core.check.Mark;
import wickmark.core.check.ReaderReport;
import wickmark.core.check.SlipFinding;
import wickmark.core.statistics.SampleMean;
import wickmark.core.uncertainty.Decimals;

/** A check as lines on the screen. */
public final class CheckTable {
  private CheckTable() {}

  /** Returns the lines. */
  public static List<String> lines(String title, HandCheckReport report) {
    List<String> lines = new ArrayList<>();
    lines.add(TextTable.printable(title) + ": " + CheckWords.overview(report));
    lines.addAll(readers(report));
    List<String> differing = differing(report);
    if (!differing.isEmpty()) {
      lines.add("");
      lines.add("Values that differ by more than both uncertainties together allow (|En| > 1):");
      lines.addAll(differing);
    }
    for (ReaderReport reader : report.readers()) {
      if (!reader.slips().isEmpty()) {
        lines.add("");
        lines.add("To " + TextTable.printable(CheckWords.reader(reader)) + ":");
        for (SlipFinding slip : reader.slips()) {
          lines.add("- " + TextTable.printable(slip.message()));
        }
      }
    }
    List<String> together = CheckWords.together(report.together());
    if (!together.isEmpty()) {
      lines.add("");
      together.forEach(sentence -> lines.add(TextTable.printable(sentence)));
    }
    return lines;
  }

  private static List<String> readers(HandCheckReport report) {
    TextTable table =
        new TextTable(
            "lrrrrl", List.of("reader", "values", "agree", "mean mm", "spread mm", "likely slips"));
    for (ReaderReport reader : report.readers()) {
      table.add(
          List.of(
              CheckWords.reader(reader),
              String.valueOf(reader.marks().size()),
              String.valueOf(CheckWords.agreeing(reader)),
              reader.differences().map(d -> CheckWords.signed(d.mean(), 2)).orElse(""),
              reader
                  .differences()
                  .flatMap(SampleMean::standardDeviation)
                  .map(s -> Decimals.text(s, 2))
                  .orElse(""),
              reader.slips().stream()
                  .map(slip -> slip.slip().code())
                  .distinct()
                  .collect(Collectors.joining(", "))));
    }
    return table.lines();
  }

  private static List<String> differing(HandCheckReport report) {
    TextTable table =
        new TextTable(
            "llrlrrrr",
            List.of("reader", "lane", "spot", "", "hand", "machine", "difference", "En"));
    boolean any = false;
    for (ReaderReport reader : report.readers()) {
      for (Mark mark : reader.marks()) {
        if (!mark.agrees()) {
          any = true;
          table.add(
              List.of(
                  CheckWords.reader(reader),
                  mark.row().lane(),
                  CheckWords.place(mark),
                  CheckWords.quantity(mark),
                  CheckWords.hand(mark),
                  CheckWords.machine(mark),
                  CheckWords.difference(mark),
                  CheckWords.en(mark)));
        }
      }
    }
    return any ? table.lines() : List.of();
  }
}
