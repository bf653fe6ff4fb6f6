package wickmark.cli.hand;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/**
 * A table as text: its rows, the one that names the columns, and what parts the cells.
 *
 * @param rows all rows of the file, in order
 * @param header which of them names the columns, from 0
 */
record Sheet(List<Row> rows, int header, Columns columns, char separator) {
  static final List<Character> SEPARATORS = List.of(',', ';', '\t');

  /** A title and some notes may stand above the column names. */
  private static final int HEADER_WITHIN_ROWS = 30;

  private static final String WANTED = "lane,spot,distance_mm,front_mm,rf,reader";

  /**
   * One row.
   *
   * @param line of the file at which it begins, from 1
   */
  record Row(long line, List<String> cells) {
    boolean isBlank() {
      return cells.stream().allMatch(String::isBlank);
    }
  }

  /** Returns the table read with the separator that makes the most of the column names. */
  static Sheet of(String text, String shown) throws UnreadableReadingsException {
    if (text.isBlank()) {
      throw new UnreadableReadingsException(shown, "it is empty.");
    }
    Sheet best = null;
    for (char separator : SEPARATORS) {
      Optional<Sheet> sheet = with(separator, text, shown);
      if (sheet.isPresent()
          && (best == null || sheet.get().columns.known() > best.columns.known())) {
        best = sheet.get();
      }
    }
    if (best == null) {
      throw new UnreadableReadingsException(
          shown,
          "no row names the columns lane and spot. The first row should read "
              + WANTED
              + "; the order does not matter, and front_mm, rf and reader may be missing.");
    }
    if (!best.columns.hasNumbers()) {
      throw new UnreadableReadingsException(
          shown,
          "line "
              + best.rows.get(best.header).line()
              + " names the columns, but none of them is distance_mm, front_mm or rf. Give each"
              + " reading a row of its own; who read it goes into a column reader.");
    }
    return best;
  }

  private static Optional<Sheet> with(char separator, String text, String shown)
      throws UnreadableReadingsException {
    List<Row> rows = rows(separator, text, shown);
    for (int i = 0; i < Math.min(rows.size(), HEADER_WITHIN_ROWS); i++) {
      List<String> names = rows.get(i).cells();
      Columns columns = Columns.of(names);
      if (columns.isHeader()) {
        Columns withAbove = i == 0 ? columns : Columns.of(names, rows.get(i - 1).cells());
        return Optional.of(new Sheet(rows, i, withAbove, separator));
      }
    }
    return Optional.empty();
  }

  private static List<Row> rows(char separator, String text, String shown)
      throws UnreadableReadingsException {
    CSVFormat format =
        CSVFormat.DEFAULT
            .builder()
            .setDelimiter(separator)
            .setIgnoreEmptyLines(false)
            .setTrailingData(true)
            .setLenientEof(true)
            .get();
    List<Row> rows = new ArrayList<>();
    try (CSVParser parser = CSVParser.parse(text, format)) {
      long line = 1;
      for (CSVRecord record : parser) {
        rows.add(new Row(line, List.of(record.values())));
        line = parser.getCurrentLineNumber() + 1;
      }
      return rows;
    } catch (IOException | UncheckedIOException e) {
      throw new UnreadableReadingsException(
          shown,
          String.format(
              Locale.ROOT, "a quotation mark is not closed near line %d.", rows.size() + 1));
    }
  }
}
