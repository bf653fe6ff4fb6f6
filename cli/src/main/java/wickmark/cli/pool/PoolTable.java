package wickmark.cli.pool;

import java.util.ArrayList;
import java.util.List;
import wickmark.cli.table.TextTable;
import wickmark.core.pool.PooledStrips;
import wickmark.core.record.RunRecord;

/** Pooled records as lines on the screen. */
public final class PoolTable {
  private PoolTable() {}

  /** Returns the lines. */
  public static List<String> lines(List<RunRecord> records, PooledStrips pooled) {
    List<String> lines = new ArrayList<>();
    lines.add(PoolWords.overview(records, pooled));
    TextTable table =
        new TextTable(
            "lrlrrrrl",
            List.of("lane", "spot", "colour", "n", "mean Rf", "SD", "95 % of mean", "remarks"));
    for (PooledStrips.PooledSpot spot : pooled.spots()) {
      table.add(
          List.of(
              spot.lane(),
              String.valueOf(spot.number()),
              spot.colour(),
              String.valueOf(spot.values().size()),
              PoolWords.mean(spot),
              PoolWords.deviation(spot),
              PoolWords.interval(spot),
              PoolWords.remarks(spot, records)));
    }
    lines.addAll(table.lines());
    lines.addAll(PoolWords.sentences(pooled));
    return lines;
  }
}
