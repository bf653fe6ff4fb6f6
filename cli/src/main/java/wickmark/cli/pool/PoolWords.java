package wickmark.cli.pool;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wickmark.core.pool.PooledStrips;
import wickmark.core.record.RunRecord;
import wickmark.core.statistics.Interval;
import wickmark.core.statistics.Precision;
import wickmark.core.uncertainty.Decimals;

/** The words and numbers that screen, spreadsheet and page share. */
final class PoolWords {
  private static final int RF_DECIMALS = 3;

  private PoolWords() {}

  static String rf(double rf) {
    return Decimals.text(rf, RF_DECIMALS);
  }

  static String mean(PooledStrips.PooledSpot spot) {
    return rf(spot.mean().mean());
  }

  static String deviation(PooledStrips.PooledSpot spot) {
    return spot.mean().standardDeviation().map(s -> Decimals.text(s, 4)).orElse("–");
  }

  static String interval(PooledStrips.PooledSpot spot) {
    Optional<Interval> confidence = spot.mean().confidence();
    return confidence.map(c -> rf(c.low()) + " to " + rf(c.high())).orElse("–");
  }

  /** What to look at in a spot. */
  static String remarks(PooledStrips.PooledSpot spot, List<RunRecord> records) {
    List<String> remarks = new ArrayList<>();
    spot.outlier()
        .map(place -> spot.values().get(place))
        .ifPresent(
            value ->
                remarks.add(
                    rf(value.rf())
                        + " of "
                        + records.get(value.record()).photo().file()
                        + " lies apart (Grubbs' test at 5 %, ISO 5725-2)"));
    if (spot.missingIn() > 0) {
      remarks.add("missing in " + spot.missingIn() + (spot.missingIn() == 1 ? " lane" : " lanes"));
    }
    return String.join("; ", remarks);
  }

  static String overview(List<RunRecord> records, PooledStrips pooled) {
    long lanes = pooled.spots().stream().map(PooledStrips.PooledSpot::lane).distinct().count();
    return count(records.size(), "record")
        + ", "
        + count(lanes, "sample")
        + ", "
        + count(pooled.spots().size(), "spot");
  }

  static List<String> sentences(PooledStrips pooled) {
    List<String> sentences = new ArrayList<>();
    pooled
        .repeatability()
        .ifPresent(
            deviation ->
                sentences.add(
                    "Over all spots the Rf of one sample repeats with a standard deviation of "
                        + Decimals.text(deviation, 4)
                        + "; two strips differ by more than "
                        + Decimals.text(Precision.limit(deviation), 3)
                        + " once in twenty times."));
    if (pooled.repeatability().isEmpty()) {
      sentences.add("No sample is there twice, so that nothing can be said about repeats.");
    }
    if (pooled.spots().stream().anyMatch(spot -> spot.outlier().isPresent())) {
      sentences.add(
          "A value lies apart when it is further from the others than chance gives and than it is"
              + " uncertain (k = 2). It still counts in the mean: look at its strip, and pool again"
              + " without it if there is a reason to.");
    }
    return sentences;
  }

  private static String count(long number, String thing) {
    return number + " " + thing + (number == 1 ? "" : "s");
  }
}
