package wickmark.cli.check;

import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import wickmark.cli.record.CsvCell;
import wickmark.core.check.HandCheckReport;
import wickmark.core.check.Mark;
import wickmark.core.check.ReaderReport;
import wickmark.core.check.SlipFinding;
import wickmark.core.uncertainty.Decimals;

/** A check as a table for spreadsheets: a row a value, UTF-8, comma and decimal point. */
public final class CheckCsv {
  private static final String[] HEADER = {
    "reader",
    "lane",
    "spot",
    "quantity",
    "hand",
    "machine",
    "difference",
    "en",
    "verdict",
    "likely_slip",
    "message",
    "place"
  };

  private CheckCsv() {}

  /** Returns the table's text. */
  public static String text(HandCheckReport report) {
    StringWriter text = new StringWriter();
    CSVFormat format = CSVFormat.RFC4180.builder().setRecordSeparator("\n").setHeader(HEADER).get();
    try (CSVPrinter printer = new CSVPrinter(text, format)) {
      for (ReaderReport reader : report.readers()) {
        for (Mark mark : reader.marks()) {
          printer.printRecord(row(reader, mark));
        }
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return text.toString();
  }

  private static List<String> row(ReaderReport reader, Mark mark) {
    Optional<SlipFinding> slip = Slips.of(reader, mark);
    return List.of(
        CsvCell.text(reader.reader()),
        CsvCell.text(mark.row().lane()),
        CheckWords.place(mark),
        mark.quantity().name().toLowerCase(Locale.ROOT),
        CheckWords.hand(mark),
        Decimals.text(mark.machine(), 4),
        Decimals.text(mark.difference(), 4),
        Decimals.text(mark.en(), 3),
        CheckWords.verdict(mark),
        slip.map(found -> found.slip().code()).orElse(""),
        CsvCell.text(slip.map(SlipFinding::message).orElse("")),
        CsvCell.text(mark.row().place()));
  }
}
