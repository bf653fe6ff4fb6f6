package wickmark.cli.table;

import java.util.ArrayList;
import java.util.List;
import wickmark.core.record.RunRecord;

/** A record as lines on the screen: the table of Rf values and what explains the unknowns. */
public final class ResultTable {
  private ResultTable() {}

  /** Returns the lines. */
  public static List<String> lines(String title, RunRecord record) {
    List<String> lines = new ArrayList<>();
    lines.add(TextTable.printable(title) + ": " + ResultText.overview(record));
    boolean hasScale = record.scale().millimetresPerPixel() != null;
    lines.addAll(hasScale ? withDistances(record) : withoutDistances(record));
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

  private static List<String> withDistances(RunRecord record) {
    TextTable table =
        new TextTable(
            "lrlrrrl", List.of("lane", "spot", "colour", "front mm", "spot mm", "Rf", "remarks"));
    for (RunRecord.Lane lane : record.lanes()) {
      if (lane.spots().isEmpty()) {
        table.add(List.of(lane.name(), "", "no spot", ResultText.front(lane), "", "", ""));
      }
      for (RunRecord.Spot spot : lane.spots()) {
        table.add(
            List.of(
                lane.name(),
                String.valueOf(spot.number()),
                spot.colour(),
                ResultText.front(lane),
                ResultText.distance(spot),
                ResultText.rf(spot),
                ResultText.flags(spot)));
      }
    }
    return table.lines();
  }

  private static List<String> withoutDistances(RunRecord record) {
    TextTable table = new TextTable("lrlrl", List.of("lane", "spot", "colour", "Rf", "remarks"));
    for (RunRecord.Lane lane : record.lanes()) {
      if (lane.spots().isEmpty()) {
        table.add(List.of(lane.name(), "", "no spot", "", ""));
      }
      for (RunRecord.Spot spot : lane.spots()) {
        table.add(
            List.of(
                lane.name(),
                String.valueOf(spot.number()),
                spot.colour(),
                ResultText.rf(spot),
                ResultText.flags(spot)));
      }
    }
    return table.lines();
  }
}
