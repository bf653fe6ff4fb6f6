package wickmark.cli.pool;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import wickmark.cli.report.PageTemplate;
import wickmark.core.pool.PooledStrips;
import wickmark.core.record.RunRecord;

/** Pooled records as a page: a table, and each spot's Rf values on one scale from 0 to 1. */
public final class PoolPage {
  private PoolPage() {}

  /** One row of the table. */
  record Row(
      String lane,
      int number,
      String colour,
      int count,
      String mean,
      String deviation,
      String interval,
      String remarks) {}

  /** Returns the page's text. */
  public static String html(List<RunRecord> records, PooledStrips pooled) {
    Map<String, Object> content = new TreeMap<>();
    content.put("overview", PoolWords.overview(records, pooled));
    content.put("sentences", PoolWords.sentences(pooled));
    content.put("pictures", records.stream().map(record -> record.photo().file()).toList());
    content.put("rows", pooled.spots().stream().map(spot -> row(records, spot)).toList());
    PoolPlot.of(pooled).ifPresent(plot -> content.put("plot", plot));
    return PageTemplate.filled(PoolPage.class, "pool.ftlh", content);
  }

  private static Row row(List<RunRecord> records, PooledStrips.PooledSpot spot) {
    return new Row(
        spot.lane(),
        spot.number(),
        spot.colour(),
        spot.values().size(),
        PoolWords.mean(spot),
        PoolWords.deviation(spot),
        PoolWords.interval(spot),
        PoolWords.remarks(spot, records));
  }
}
