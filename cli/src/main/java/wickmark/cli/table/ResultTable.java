package wickmark.cli.table;

import java.util.ArrayList;
import java.util.List;
import wickmark.core.record.RunRecord;

/** A record as lines on the screen: the table of Rf values and what explains the unknowns. */
public final class ResultTable {
  private static final List<String> HEADER =
      List.of("lane", "spot", "colour", "front mm", "spot mm", "Rf", "remarks");

  /** The columns of millimetres stand together: the first of them, and how many they are. */
  private static final int FRONT = 3;

  private static final int MILLIMETRE_COLUMNS = 2;

  private ResultTable() {}

  /** Returns the lines. */
  public static List<String> lines(String title, RunRecord record) {
    List<String> lines = new ArrayList<>();
    lines.add(TextTable.printable(title) + ": " + ResultText.overview(record));
    lines.addAll(table(record));
    lines.add("± is the expanded uncertainty, k = 2 (about 95 of 100 true values lie within).");
    ResultText.rfOfAnotherPoint(record).ifPresent(lines::add);
    HandWords.of(record).map(TextTable::printable).ifPresent(lines::add);
    for (RunRecord.Unknown unknown : record.unknowns()) {
      for (String sentence : ResultText.answers(unknown)) {
        lines.add(TextTable.printable(sentence));
      }
    }
    return lines;
  }

  private static List<String> table(RunRecord record) {
    boolean hasScale = record.scale().millimetresPerPixel() != null;
    TextTable table =
        hasScale
            ? new TextTable("lrlrrrl", HEADER)
            : new TextTable("lrlrl", withoutMillimetres(HEADER));
    for (List<String> row : rows(record)) {
      table.add(hasScale ? row : withoutMillimetres(row));
    }
    return table.lines();
  }

  private static List<List<String>> rows(RunRecord record) {
    List<List<String>> rows = new ArrayList<>();
    for (RunRecord.Lane lane : record.lanes()) {
      String front = ResultText.front(lane);
      if (lane.spots().isEmpty()) {
        rows.add(List.of(lane.name(), "", "no spot", front, "", "", ""));
      }
      for (RunRecord.Spot spot : lane.spots()) {
        rows.add(
            List.of(
                lane.name(),
                String.valueOf(spot.number()),
                spot.colour(),
                front,
                ResultText.distance(spot),
                ResultText.rf(spot),
                ResultText.flags(spot)));
      }
    }
    return rows;
  }

  private static List<String> withoutMillimetres(List<String> row) {
    List<String> cells = new ArrayList<>(row.subList(0, FRONT));
    cells.addAll(row.subList(FRONT + MILLIMETRE_COLUMNS, row.size()));
    return cells;
  }
}
