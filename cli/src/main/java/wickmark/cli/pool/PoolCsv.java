package wickmark.cli.pool;

import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Optional;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import wickmark.cli.record.CsvCell;
import wickmark.core.pool.PooledStrips;
import wickmark.core.record.RunRecord;
import wickmark.core.uncertainty.Decimals;

/** Every Rf that was pooled, a row each, with the mean of its spot. */
public final class PoolCsv {
  private static final String[] HEADER = {
    "lane",
    "spot",
    "colour",
    "picture",
    "spot_there",
    "rf",
    "rf_plus_minus_k2",
    "mean_rf",
    "sd_rf",
    "mean_low_95",
    "mean_high_95",
    "outlier"
  };

  private PoolCsv() {}

  /** Returns the table's text. */
  public static String text(List<RunRecord> records, PooledStrips pooled) {
    StringWriter text = new StringWriter();
    CSVFormat format = CSVFormat.RFC4180.builder().setRecordSeparator("\n").setHeader(HEADER).get();
    try (CSVPrinter printer = new CSVPrinter(text, format)) {
      for (PooledStrips.PooledSpot spot : pooled.spots()) {
        for (int i = 0; i < spot.values().size(); i++) {
          printer.printRecord(row(records, spot, i));
        }
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return text.toString();
  }

  private static List<String> row(
      List<RunRecord> records, PooledStrips.PooledSpot spot, int index) {
    PooledStrips.Value value = spot.values().get(index);
    return List.of(
        CsvCell.text(spot.lane()),
        String.valueOf(spot.number()),
        CsvCell.text(value.colour()),
        CsvCell.text(records.get(value.record()).photo().file()),
        String.valueOf(value.spot()),
        Decimals.text(value.rf(), 4),
        Decimals.text(2 * value.rfUncertainty(), 4),
        Decimals.text(spot.mean().mean(), 4),
        spot.mean().standardDeviation().map(s -> Decimals.text(s, 4)).orElse(""),
        spot.mean().confidence().map(c -> Decimals.text(c.low(), 4)).orElse(""),
        spot.mean().confidence().map(c -> Decimals.text(c.high(), 4)).orElse(""),
        spot.outlier().equals(Optional.of(index)) ? "outlier" : "");
  }
}
