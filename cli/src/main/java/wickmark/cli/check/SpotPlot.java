package wickmark.cli.check;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import wickmark.cli.plot.Ink;
import wickmark.cli.plot.Plot;
import wickmark.core.check.ClassReport;

/**
 * A strip a spot: each reading by its difference from the machine's distance, readings of the same
 * value beside each other, and the robust mean.
 */
final class SpotPlot {
  private static final int ROW_PX = 44;
  private static final int AXIS_PX = 66;

  /** How far readings of one value lie apart, in rows. */
  private static final double STACK = 0.2;

  /** How far from the middle of its row a reading may lie, in rows. */
  private static final double FARTHEST = 0.42;

  private SpotPlot() {}

  /** Returns the plot as SVG; empty where nobody has read a distance without a slip. */
  static Optional<String> of(ClassReport together) {
    List<ClassReport.SpotSummary> spots = together.spots();
    if (spots.isEmpty()) {
      return Optional.empty();
    }
    Plot plot =
        new Plot(720, ROW_PX * spots.size() + AXIS_PX)
            .across("hand minus machine, mm")
            .rows(spots.stream().map(spot -> spot.lane() + ", spot " + spot.spot()).toList())
            .line(
                new Plot.Place(0, Plot.row(0) + 0.5),
                new Plot.Place(0, Plot.row(spots.size() - 1) - 0.5),
                Plot.Stroke.SOLID,
                Ink.QUIET,
                1);
    List<Plot.Place> readings = new ArrayList<>();
    for (int i = 0; i < spots.size(); i++) {
      ClassReport.SpotSummary spot = spots.get(i);
      double mean = spot.robustMean() - spot.machine();
      plot.line(
          new Plot.Place(mean, Plot.row(i) + 0.35),
          new Plot.Place(mean, Plot.row(i) - 0.35),
          Plot.Stroke.SOLID,
          Ink.HEED,
          3);
      readings.addAll(readings(spot, Plot.row(i)));
    }
    return Optional.of(
        plot.values(readings, Plot.Shape.RING)
            .svg(
                "strips",
                "Hand minus machine for each spot, in millimetres",
                readings.size() + " readings of " + spots.size() + " spots."));
  }

  /** Alternately above and below the middle of the row; many readings of one value lie closer. */
  private static List<Plot.Place> readings(ClassReport.SpotSummary spot, double row) {
    Map<Long, Integer> stacks = new HashMap<>();
    for (double distance : spot.distances()) {
      stacks.merge(stack(distance - spot.machine()), 1, Integer::sum);
    }
    int highest = stacks.values().stream().mapToInt(count -> count / 2).max().orElse(0);
    double step = Math.min(STACK, FARTHEST / Math.max(1, highest));
    Map<Long, Integer> placed = new HashMap<>();
    List<Plot.Place> readings = new ArrayList<>();
    for (double distance : spot.distances()) {
      double difference = distance - spot.machine();
      int before = placed.merge(stack(difference), 1, Integer::sum) - 1;
      int steps = (before + 1) / 2;
      double aside = (before % 2 == 0 ? -1 : 1) * step * steps;
      readings.add(new Plot.Place(difference, row + aside));
    }
    return readings;
  }

  /** Readings within the same twentieth of a millimetre hide each other. */
  private static long stack(double difference) {
    return Math.round(20 * difference);
  }
}
