package wickmark.cli.pool;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wickmark.cli.plot.Ink;
import wickmark.cli.plot.Plot;
import wickmark.core.pool.PooledStrips;
import wickmark.core.pool.PooledStrips.PooledSpot;
import wickmark.core.statistics.Interval;

/** Each spot's Rf values on one scale from 0 to 1, with their mean and its confidence interval. */
final class PoolPlot {
  private static final int ROW_PX = 40;
  private static final int AXIS_PX = 66;

  private PoolPlot() {}

  /** Returns the plot as SVG; empty where there is no spot. */
  static Optional<String> of(PooledStrips pooled) {
    List<PooledSpot> spots = pooled.spots();
    if (spots.isEmpty()) {
      return Optional.empty();
    }
    Plot plot =
        new Plot(720, ROW_PX * spots.size() + AXIS_PX)
            .across("Rf", 0, 1)
            .rows(spots.stream().map(spot -> spot.lane() + ", spot " + spot.number()).toList());
    List<Plot.Place> values = new ArrayList<>();
    List<Plot.Place> apart = new ArrayList<>();
    for (int i = 0; i < spots.size(); i++) {
      PooledSpot spot = spots.get(i);
      double row = Plot.row(i);
      addMean(plot, spot, row);
      for (int j = 0; j < spot.values().size(); j++) {
        List<Plot.Place> like = spot.outlier().equals(Optional.of(j)) ? apart : values;
        like.add(new Plot.Place(spot.values().get(j).rf(), row));
      }
    }
    return Optional.of(
        plot.values(values, Plot.Shape.RING)
            .values(apart, Plot.Shape.SQUARE)
            .svg(
                "pooled",
                "Rf values of each spot with mean and confidence interval",
                values.size()
                    + apart.size()
                    + " values of "
                    + spots.size()
                    + " spots; "
                    + apart.size()
                    + " apart."));
  }

  private static void addMean(Plot plot, PooledSpot spot, double row) {
    double mean = spot.mean().mean();
    Interval interval = spot.mean().confidence().orElse(new Interval(mean, mean));
    plot.line(
            new Plot.Place(Math.max(0, interval.low()), row - 0.28),
            new Plot.Place(Math.min(1, interval.high()), row - 0.28),
            Plot.Stroke.SOLID,
            Ink.MAIN,
            2)
        .line(
            new Plot.Place(mean, row + 0.25),
            new Plot.Place(mean, row - 0.4),
            Plot.Stroke.SOLID,
            Ink.HEED,
            3);
  }
}
