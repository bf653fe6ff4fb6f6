package wickmark.cli.hand;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import wickmark.cli.hand.Columns.Content;
import wickmark.core.check.HandReading;
import wickmark.core.check.ReadingProblem;

/** Reads a file of hand readings; a row that cannot be read stops none of the others. */
public final class HandReadingsFile {
  private static final Pattern SPOT = Pattern.compile("(?i)(?:spot)? *([0-9]{1,4})(?:[.,]0+)?");

  private final String shown;
  private final String defaultReader;
  private final Sheet sheet;
  private final List<HandReading> rows = new ArrayList<>();
  private final List<ReadingProblem> problems = new ArrayList<>();

  private HandReadingsFile(String shown, String defaultReader, Sheet sheet) {
    this.shown = shown;
    this.defaultReader = defaultReader;
    this.sheet = sheet;
  }

  /**
   * Reads a file.
   *
   * @param defaultReader who read where the file does not say
   */
  public static HandReadings read(Path file, String defaultReader)
      throws UnreadableReadingsException {
    Path name = file.getFileName();
    String shown = name == null ? file.toString() : name.toString();
    Sheet sheet = Sheet.of(FileText.of(file, shown), shown);
    HandReadingsFile reading = new HandReadingsFile(shown, defaultReader, sheet);
    return reading.all();
  }

  private HandReadings all() {
    if (!sheet.columns().unused().isEmpty()) {
      problems.add(
          new ReadingProblem(
              place(sheet.rows().get(sheet.header())),
              "columns that are not used: "
                  + NumberCell.shortened(String.join(", ", sheet.columns().unused()))));
    }
    for (Sheet.Row row : sheet.rows().subList(sheet.header() + 1, sheet.rows().size())) {
      if (!row.isBlank()) {
        read(row);
      }
    }
    return new HandReadings(rows, problems);
  }

  private String place(Sheet.Row row) {
    return shown + " line " + row.line();
  }

  private String cell(Content content, Sheet.Row row) {
    return sheet.columns().cell(content, row.cells());
  }

  private void read(Sheet.Row row) {
    if (row.cells().size() > sheet.columns().width()
        && !row.cells().stream().skip(sheet.columns().width()).allMatch(String::isBlank)) {
      problem(
          row,
          sheet.separator() == ','
              ? "this row has more cells than the header. Decimal commas in a file whose cells are"
                  + " parted by commas cannot be told apart: save it with semicolons"
              : "this row has more cells than the header");
      return;
    }
    String lane = cell(Content.LANE, row);
    Matcher spot = SPOT.matcher(cell(Content.SPOT, row));
    if (lane.isEmpty()) {
      problem(row, "there is no lane in this row");
    } else if (!spot.matches()) {
      String written = cell(Content.SPOT, row);
      problem(
          row,
          written.isEmpty()
              ? "there is no spot number in this row"
              : "spot: " + NumberCell.whyNone(written));
    } else {
      Optional<NumberCell> rf = number(Content.RF, "rf", row);
      rows.add(
          new HandReading(
              reader(row),
              lane,
              Integer.parseInt(spot.group(1)),
              length(Content.DISTANCE, "distance", row),
              length(Content.FRONT, "front", row),
              rf.map(NumberCell::number),
              rf.map(NumberCell::unit).filter(unit -> !unit.isEmpty()),
              place(row)));
    }
  }

  private String reader(Sheet.Row row) {
    String reader = cell(Content.READER, row);
    return reader.isEmpty() ? defaultReader : reader;
  }

  private void problem(Sheet.Row row, String message) {
    problems.add(new ReadingProblem(place(row), message));
  }

  private Optional<NumberCell> number(Content content, String name, Sheet.Row row) {
    String cell = cell(content, row);
    if (cell.isEmpty() || cell.equals("-") || cell.equals("–")) {
      return Optional.empty();
    }
    Optional<NumberCell> number = NumberCell.of(cell);
    if (number.isEmpty()) {
      problem(row, name + ": " + NumberCell.whyNone(cell));
    }
    return number;
  }

  /** A unit in the cell counts more than that of the column. */
  private Optional<BigDecimal> length(Content content, String name, Sheet.Row row) {
    Optional<NumberCell> number = number(content, name, row);
    if (number.isEmpty()) {
      return Optional.empty();
    }
    String written = number.get().unit();
    Optional<LengthUnit> unit =
        written.isEmpty() ? Optional.of(sheet.columns().unit(content)) : LengthUnit.named(written);
    if (unit.isEmpty()) {
      problem(row, name + ": \"" + written + "\" is no unit of length that is known here");
    }
    return unit.map(u -> u.inMillimetres(number.get().number()));
  }
}
