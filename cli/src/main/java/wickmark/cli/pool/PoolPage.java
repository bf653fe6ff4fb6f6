package wickmark.cli.pool;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import wickmark.cli.plot.Axis;
import wickmark.cli.report.PageTemplate;
import wickmark.core.pool.PooledStrips;
import wickmark.core.record.RunRecord;

/** Pooled records as a page: a table, and each spot's Rf values on one scale from 0 to 1. */
public final class PoolPage {
  private static final int WIDTH = 720;
  private static final int ROW = 38;
  private static final int TOP = 10;
  private static final int FOOT = 46;
  private static final int LEFT = 150;
  private static final int RIGHT = WIDTH - 20;

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

  /** The plot. */
  record Plot(
      int width, int height, int left, int right, List<Axis.Tick> across, List<PlotRow> rows) {}

  /** One spot in the plot: its values, its mean and the confidence interval of that. */
  record PlotRow(
      String label, int y, String mean, String low, String high, List<PlotPoint> points) {}

  /** One value. */
  record PlotPoint(String x, boolean outlier) {}

  /** Returns the page's text. */
  public static String html(List<RunRecord> records, PooledStrips pooled) {
    Map<String, Object> content = new TreeMap<>();
    content.put("overview", PoolWords.overview(records, pooled));
    content.put("sentences", PoolWords.sentences(pooled));
    content.put("pictures", records.stream().map(record -> record.photo().file()).toList());
    content.put("rows", pooled.spots().stream().map(spot -> row(records, spot)).toList());
    content.put("plot", plot(pooled));
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

  private static Plot plot(PooledStrips pooled) {
    Axis across = new Axis(0, 1, LEFT, RIGHT);
    List<PlotRow> rows = new ArrayList<>();
    for (PooledStrips.PooledSpot spot : pooled.spots()) {
      rows.add(plotRow(spot, across, TOP + ROW * rows.size() + ROW / 2));
    }
    return new Plot(WIDTH, TOP + ROW * rows.size() + FOOT, LEFT, RIGHT, across.ticks(), rows);
  }

  private static PlotRow plotRow(PooledStrips.PooledSpot spot, Axis across, int y) {
    List<PlotPoint> points = new ArrayList<>();
    for (int i = 0; i < spot.values().size(); i++) {
      points.add(
          new PlotPoint(
              across.place(spot.values().get(i).rf()), spot.outlier().equals(Optional.of(i))));
    }
    double mean = spot.mean().mean();
    double low = Math.max(0, spot.mean().confidence().map(c -> c.low()).orElse(mean));
    double high = Math.min(1, spot.mean().confidence().map(c -> c.high()).orElse(mean));
    return new PlotRow(
        spot.lane() + ", spot " + spot.number(),
        y,
        across.place(mean),
        across.place(low),
        across.place(high),
        points);
  }
}
