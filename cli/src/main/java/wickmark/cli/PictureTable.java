package wickmark.cli;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.jspecify.annotations.Nullable;
import wickmark.cli.hand.FileText;
import wickmark.cli.hand.UnreadableReadingsException;

/** A table of pictures, each with its lanes, as a teacher types it into a spreadsheet. */
final class PictureTable {
  private static final String WANTED = "the columns picture, lanes and unknown";

  private PictureTable() {}

  /**
   * One row.
   *
   * @param picture beside the table where its path is no full one
   * @param lanes empty where the cell is
   * @param unknowns empty where the cell is
   */
  record Row(Path picture, List<String> lanes, List<String> unknowns) {}

  /**
   * Reads a table.
   *
   * @throws UnreadableReadingsException if it is no text
   * @throws IllegalArgumentException if it is no such table, naming the line
   */
  static List<Row> read(Path file) throws UnreadableReadingsException {
    String shown = PictureRun.nameOf(file);
    String text = FileText.of(file, shown);
    String first = text.lines().findFirst().orElse("");
    char separator = first.indexOf(';') >= 0 ? ';' : first.indexOf('\t') >= 0 ? '\t' : ',';
    List<Row> rows = new ArrayList<>();
    try (CSVParser parser =
        CSVParser.parse(
            text,
            CSVFormat.DEFAULT
                .builder()
                .setDelimiter(separator)
                .setHeader()
                .setSkipHeaderRecord(true)
                .setIgnoreHeaderCase(true)
                .setTrim(true)
                .get())) {
      checkColumns(shown, parser.getHeaderNames());
      for (CSVRecord row : parser) {
        rows.add(row(shown, file, row, parser.getCurrentLineNumber()));
      }
    } catch (IOException | UncheckedIOException e) {
      throw new IllegalArgumentException(shown + " is no table: a quotation mark is not closed", e);
    }
    if (rows.isEmpty()) {
      throw new IllegalArgumentException(shown + " names no picture");
    }
    return rows;
  }

  private static void checkColumns(String shown, List<String> names) {
    List<String> plain = names.stream().map(name -> name.toLowerCase(Locale.ROOT)).toList();
    if (!plain.contains("picture")) {
      throw new IllegalArgumentException(
          shown + " does not name its columns; its first row needs " + WANTED);
    }
    for (String name : plain) {
      if (!List.of("picture", "lanes", "unknown", "").contains(name)) {
        throw new IllegalArgumentException(
            shown + " has a column \"" + name + "\"; known are " + WANTED);
      }
    }
  }

  private static Row row(String shown, Path file, CSVRecord row, long line) {
    String picture = cell(row, "picture");
    if (picture.isEmpty()) {
      throw new IllegalArgumentException(shown + " line " + line + " names no picture");
    }
    try {
      @Nullable Path folder = file.getParent();
      Path path = folder == null ? Path.of(picture) : folder.resolve(picture);
      return new Row(path, names(cell(row, "lanes")), names(cell(row, "unknown")));
    } catch (InvalidPathException e) {
      throw new IllegalArgumentException(
          shown + " line " + line + ": \"" + picture + "\" cannot be the name of a file", e);
    }
  }

  private static String cell(CSVRecord row, String column) {
    return row.isSet(column) ? row.get(column).strip() : "";
  }

  /** Names are parted by commas, or by semicolons where commas part the cells. */
  private static List<String> names(String cell) {
    return cell.isEmpty()
        ? List.of()
        : Stream.of(cell.split("[,;]", -1)).map(String::strip).toList();
  }
}
