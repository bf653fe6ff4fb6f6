package wickmark.cli.check;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import wickmark.cli.table.TextTable;
import wickmark.core.check.HandCheckReport;
import wickmark.core.check.Mark;
import wickmark.core.check.ReaderReport;
import wickmark.core.check.SlipFinding;

/** A check as lines on the screen. */
public final class CheckTable {
  /** A reader with more differing values than this has one slip in all of them, most likely. */
  private static final int MOST_OF_A_READER = 4;

  /** So many of them are listed then; the screen has room for what differs in other ways. */
  private static final int LISTED_OF_MANY = 3;

  private CheckTable() {}

  /** Returns the lines. */
  public static List<String> lines(String title, HandCheckReport report) {
    List<String> lines = new ArrayList<>();
    lines.add(TextTable.printable(title) + ": " + CheckWords.overview(report));
    lines.addAll(readers(report));
    List<String> differing = differing(report);
    if (!differing.isEmpty()) {
      lines.add("");
      lines.add(
          "Values that differ by more than both uncertainties together allow (|En| > 1, the En"
              + " number of ISO 13528):");
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
              CheckWords.mean(reader).orElse(""),
              CheckWords.spread(reader).orElse(""),
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
    List<String> notListed = new ArrayList<>();
    for (ReaderReport reader : report.readers()) {
      List<Mark> differing = reader.marks().stream().filter(mark -> !mark.agrees()).toList();
      boolean tooMany = differing.size() > MOST_OF_A_READER;
      List<Mark> listed = tooMany ? differing.subList(0, LISTED_OF_MANY) : differing;
      listed.forEach(mark -> table.add(row(reader, mark)));
      any |= !listed.isEmpty();
      if (tooMany) {
        notListed.add(CheckWords.reader(reader) + " " + (differing.size() - LISTED_OF_MANY));
      }
    }
    List<String> lines = new ArrayList<>(any ? table.lines() : List.of());
    if (!notListed.isEmpty()) {
      String more = String.join(", ", notListed);
      lines.add(TextTable.printable("More such values are in check.csv: " + more + "."));
    }
    return lines;
  }

  private static List<String> row(ReaderReport reader, Mark mark) {
    return List.of(
        CheckWords.reader(reader),
        mark.row().lane(),
        CheckWords.place(mark),
        CheckWords.quantity(mark),
        CheckWords.hand(mark),
        CheckWords.machine(mark),
        CheckWords.difference(mark),
        CheckWords.en(mark));
  }
}
