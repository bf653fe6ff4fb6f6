package wickmark.cli;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import wickmark.cli.table.TextTable;

/** What came of a run over pictures: its exit code, how many came out how, and which not. */
final class BatchSummary {
  private static final int MOST_ROWS = 200;

  private final Map<PictureResult.Outcome, Integer> counts =
      new EnumMap<>(PictureResult.Outcome.class);
  private final TextTable table = new TextTable("lll", List.of("picture", "result", "why"));
  private int rows;
  private int pictures;
  private int warned;
  private int exitCode = ExitCode.DONE;
  private boolean holdsRecords;

  void add(PictureResult result) {
    pictures++;
    exitCode = Math.max(exitCode, result.exitCode());
    holdsRecords |= !result.records().isEmpty();
    counts.merge(result.outcome(), 1, Integer::sum);
    warned += result.warnings() > 0 ? 1 : 0;
    String why = why(result);
    if (!why.isEmpty() && rows++ < MOST_ROWS) {
      table.add(List.of(result.picture(), result.outcome().words(), why));
    }
  }

  private static String why(PictureResult result) {
    if (result.exitCode() != ExitCode.DONE) {
      String message = String.join(" ", result.messages());
      String named = result.picture() + ": ";
      String unread = result.picture() + " cannot be read: ";
      return message.startsWith(named)
          ? message.substring(named.length())
          : message.startsWith(unread) ? message.substring(unread.length()) : message;
    }
    int warnings = result.warnings();
    return warnings == 0 ? "" : warnings + (warnings == 1 ? " warning" : " warnings");
  }

  /** Returns the highest exit code of a picture. */
  int exitCode() {
    return exitCode;
  }

  /** Returns whether there is a record of any picture. */
  boolean holdsRecords() {
    return holdsRecords;
  }

  /** Returns what is said at the end of many pictures. */
  List<String> lines() {
    List<String> lines = new ArrayList<>();
    int refused =
        count(PictureResult.Outcome.REFUSED) + count(PictureResult.Outcome.SHORT_OF_MEMORY);
    lines.add(
        pictures
            + " pictures: "
            + count(PictureResult.Outcome.MEASURED)
            + " measured, "
            + count(PictureResult.Outcome.DONE_BEFORE)
            + " measured before, "
            + count(PictureResult.Outcome.MEASURED_IN_PART)
            + " in part, "
            + refused
            + " not measured; "
            + warned
            + " with warnings.");
    if (rows > 0) {
      lines.addAll(table.lines());
    }
    if (rows > MOST_ROWS) {
      lines.add("and " + (rows - MOST_ROWS) + " more, which are told above.");
    }
    return lines;
  }

  private int count(PictureResult.Outcome outcome) {
    return counts.getOrDefault(outcome, 0);
  }
}
