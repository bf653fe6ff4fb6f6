package wickmark.cli.check;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import wickmark.cli.plot.Axis;
import wickmark.core.check.ClassReport;
import wickmark.core.uncertainty.Decimals;

/**
 * A strip a spot: each reading by its difference from the machine's distance, readings of the same
 * value beside each other, and the robust mean.
 */
record SpotPlot(
    int width,
    int height,
    int left,
    int right,
    List<Axis.Tick> across,
    String zero,
    List<Row> rows) {
  private static final int WIDTH = 720;
  private static final int ROW = 44;
  private static final int TOP = 10;
  private static final int FOOT = 46;
  private static final double STACK = 9;

  /** One spot. */
  record Row(String label, int y, String mean, List<Point> points) {}

  /** One reading. */
  record Point(String x, String y) {}

  /** Returns the plot; empty where nobody has read a distance without a slip. */
  static Optional<SpotPlot> of(ClassReport together) {
    if (together.spots().isEmpty()) {
      return Optional.empty();
    }
    List<Double> differences = new ArrayList<>(List.of(0.0));
    for (ClassReport.SpotSummary spot : together.spots()) {
      spot.distances().forEach(distance -> differences.add(distance - spot.machine()));
    }
    int left = 130;
    int right = WIDTH - 20;
    Axis across = Axis.around(differences, left, right);
    List<Row> rows = new ArrayList<>();
    for (ClassReport.SpotSummary spot : together.spots()) {
      rows.add(row(spot, across, TOP + ROW * rows.size() + ROW / 2));
    }
    return Optional.of(
        new SpotPlot(
            WIDTH,
            TOP + ROW * rows.size() + FOOT,
            left,
            right,
            across.ticks(),
            across.place(0),
            rows));
  }

  private static Row row(ClassReport.SpotSummary spot, Axis across, int y) {
    Map<String, Integer> stacked = new HashMap<>();
    List<Point> points = new ArrayList<>();
    for (double distance : spot.distances()) {
      String x = across.place(distance - spot.machine());
      int before = stacked.merge(x, 1, Integer::sum) - 1;
      // Alternately above and below the middle of the row.
      int steps = (before + 1) / 2;
      double aside = (before % 2 == 0 ? -1 : 1) * STACK * steps;
      points.add(new Point(x, Decimals.text(y + aside, 1)));
    }
    return new Row(
        spot.lane() + ", spot " + spot.spot(),
        y,
        across.place(spot.robustMean() - spot.machine()),
        points);
  }
}
