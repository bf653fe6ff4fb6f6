package wickmark.cli.record;

import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import org.jspecify.annotations.Nullable;
import wickmark.core.record.RunRecord;
import wickmark.core.uncertainty.Decimals;

/**
 * The spots as a table for spreadsheets: a row a spot, UTF-8, comma and decimal point. The columns
 * lane, spot, distance_mm, front_mm and rf are those of hand readings.
 */
public final class SpotsCsv {
  private static final String[] HEADER = {
    "lane",
    "role",
    "spot",
    "colour",
    "front_mm",
    "front_plus_minus_k2_mm",
    "distance_mm",
    "distance_plus_minus_k2_mm",
    "rf",
    "rf_plus_minus_k2",
    "middle_mm",
    "top_mm",
    "bottom_mm",
    "width_mm",
    "area_mm2",
    "lab_l",
    "lab_a",
    "lab_b",
    "flags"
  };

  private SpotsCsv() {}

  /** Returns the table's text. */
  public static String text(RunRecord record) {
    StringWriter text = new StringWriter();
    CSVFormat format = CSVFormat.RFC4180.builder().setRecordSeparator("\n").setHeader(HEADER).get();
    try (CSVPrinter printer = new CSVPrinter(text, format)) {
      for (RunRecord.Lane lane : record.lanes()) {
        for (RunRecord.Spot spot : lane.spots()) {
          printer.printRecord(row(lane, spot));
        }
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return text.toString();
  }

  private static List<String> row(RunRecord.Lane lane, RunRecord.Spot spot) {
    return List.of(
        CsvCell.text(lane.name()),
        CsvCell.text(lane.role()),
        String.valueOf(spot.number()),
        CsvCell.text(spot.colour()),
        number(lane.frontDistanceMm(), 2),
        doubled(lane.frontDistanceUncertaintyMm(), 2),
        number(spot.distanceMm(), 2),
        doubled(spot.distanceUncertaintyMm(), 2),
        number(spot.rf(), 4),
        doubled(spot.rfUncertainty(), 4),
        number(spot.middleMm(), 2),
        number(spot.topMm(), 2),
        number(spot.bottomMm(), 2),
        number(spot.widthMm(), 2),
        number(spot.areaMm2(), 1),
        number(spot.lab().get(0), 1),
        number(spot.lab().get(1), 1),
        number(spot.lab().get(2), 1),
        CsvCell.text(String.join(" ", spot.flags())));
  }

  private static String number(@Nullable Double value, int decimals) {
    return value == null ? "" : Decimals.text(value, decimals);
  }

  private static String doubled(@Nullable Double value, int decimals) {
    return value == null ? "" : Decimals.text(2 * value, decimals);
  }
}
