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
  private static final Pattern SPOT =
      Pattern.compile("(?i)(?:spot|no\\.?|#)? *([0-9]{1,4})(?:[.,]0*|st|nd|rd|th)?");

  /** What people write where they have read nothing. */
  private static final Pattern NOTHING =
      Pattern.compile("(?i)[-–—?]+|n\\.? ?[/.]? ?a\\.?|none|not read|missing|nil");

  /** What begins a row of sums in place of a lane. */
  private static final Pattern SUMS =
      Pattern.compile("(?i)(?:grand )?(?:totals?|sum|mean|average|avg|median|max|min|count)\\b.*");

  private static final Pattern READER =
      Pattern.compile("(?i)(?:reader|read by|name|pupil|student|group) *[:=] *(.*)");

  private final String shown;
  private final String defaultReader;
  private final Sheet sheet;
  private final List<HandReading> rows = new ArrayList<>();
  private final List<ReadingProblem> problems = new ArrayList<>();
  private final List<Sheet.Row> withoutLane = new ArrayList<>();
  private final List<Sheet.Row> withoutReader = new ArrayList<>();
  private String lastLane = "";
  private String lastReader = "";

  private HandReadingsFile(String shown, String defaultReader, Sheet sheet) {
    this.shown = shown;
    this.sheet = sheet;
    this.defaultReader =
        sheet.columns().has(Content.READER) ? defaultReader : readerAbove().orElse(defaultReader);
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
    if (!sheet.columns().understood().isEmpty()) {
      problem(
          sheet.rows().get(sheet.header()),
          "columns that were taken by what their names mean: "
              + String.join(", ", sheet.columns().understood()));
    }
    for (Sheet.Row row : sheet.rows().subList(sheet.header() + 1, sheet.rows().size())) {
      if (!row.isBlank()) {
        read(row);
      }
    }
    sayTakenFromAbove("lane", withoutLane);
    sayTakenFromAbove("reader", withoutReader);
    return new HandReadings(rows, problems);
  }

  /** Cells that were merged in the spreadsheet hold their text in the first row only. */
  private void sayTakenFromAbove(String what, List<Sheet.Row> taken) {
    if (!taken.isEmpty()) {
      problem(
          taken.get(0),
          "the "
              + what
              + " is empty in "
              + (taken.size() == 1 ? "this row" : "this row and " + (taken.size() - 1) + " more")
              + " and was taken from the row above, as in merged cells");
    }
  }

  /** Who read, where it stands above the columns' names. */
  private Optional<String> readerAbove() {
    for (Sheet.Row row : sheet.rows().subList(0, sheet.header())) {
      List<String> cells =
          row.cells().stream().map(Columns::bare).filter(cell -> !cell.isEmpty()).toList();
      for (int i = 0; i < cells.size(); i++) {
        String next = i + 1 < cells.size() ? cells.get(i + 1) : "";
        boolean isLabel = cells.get(i).indexOf(':') < 0 && cells.get(i).indexOf('=') < 0;
        Matcher reader = READER.matcher(isLabel ? cells.get(i) + ":" : cells.get(i));
        if (reader.matches()) {
          String who = reader.group(1).isEmpty() ? next : reader.group(1);
          if (!who.isEmpty()) {
            problem(row, "there is no column reader; the reader is \"" + who + "\" by this line");
            return Optional.of(who);
          }
        }
      }
    }
    return Optional.empty();
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
    String lane = lane(row);
    Matcher spot = SPOT.matcher(cell(Content.SPOT, row));
    if (isOneCellOfMany(row)) {
      problem(row, "the cells of this row are not parted as the columns' names are");
    } else if (isNote(row)) {
      problem(row, "this row was taken for a note and left out");
    } else if (SUMS.matcher(lane).matches() && !spot.matches()) {
      problem(row, "this row was taken for one of sums or means and left out");
    } else if (lane.isEmpty()) {
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

  /** A row that was typed or pasted with another separator than the rest. */
  private boolean isOneCellOfMany(Sheet.Row row) {
    return row.cells().size() == 1
        && Sheet.SEPARATORS.stream()
                .filter(separator -> separator != sheet.separator())
                .mapToLong(
                    separator -> row.cells().get(0).chars().filter(c -> c == separator).count())
                .max()
                .orElse(0)
            >= 2;
  }

  /** One cell and nothing else, under a table of several columns. */
  private static boolean isNote(Sheet.Row row) {
    List<String> written = row.cells().stream().filter(cell -> !cell.isBlank()).toList();
    return written.size() == 1 && written.get(0).strip().contains(" ");
  }

  private String lane(Sheet.Row row) {
    String lane = cell(Content.LANE, row);
    if (lane.isEmpty() && !lastLane.isEmpty() && SPOT.matcher(cell(Content.SPOT, row)).matches()) {
      withoutLane.add(row);
      return lastLane;
    }
    if (!SUMS.matcher(lane).matches()) {
      lastLane = lane;
    }
    return lane;
  }

  private String reader(Sheet.Row row) {
    String reader = cell(Content.READER, row);
    if (reader.isEmpty() && !lastReader.isEmpty()) {
      withoutReader.add(row);
      return lastReader;
    }
    lastReader = reader;
    return reader.isEmpty() ? defaultReader : reader;
  }

  private void problem(Sheet.Row row, String message) {
    problems.add(new ReadingProblem(place(row), message));
  }

  private Optional<NumberCell> number(Content content, String name, Sheet.Row row) {
    String cell = cell(content, row);
    if (cell.isEmpty() || NOTHING.matcher(cell).matches()) {
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
