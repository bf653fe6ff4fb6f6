package wickmark.cli.table;

import java.util.ArrayList;
import java.util.List;

/** A table of plain text: the first columns to the left, those of numbers to the right. */
public final class TextTable {
  private static final String GAP = "  ";

  private final List<List<String>> rows = new ArrayList<>();
  private final String alignment;

  /**
   * Starts a table.
   *
   * @param alignment a letter a column: l for left, r for right
   * @param header as many cells
   */
  public TextTable(String alignment, List<String> header) {
    this.alignment = alignment;
    add(header);
  }

  /** Adds a row with as many cells as the header. */
  public void add(List<String> cells) {
    if (cells.size() != alignment.length()) {
      throw new IllegalArgumentException(
          "a row of " + alignment.length() + " cells is needed, was " + cells.size());
    }
    rows.add(cells.stream().map(TextTable::printable).toList());
  }

  /** Returns the lines, without spaces at their ends. */
  public List<String> lines() {
    int columns = alignment.length();
    int[] widths = new int[columns];
    for (List<String> row : rows) {
      for (int c = 0; c < columns; c++) {
        widths[c] = Math.max(widths[c], DisplayWidth.of(row.get(c)));
      }
    }
    List<String> lines = new ArrayList<>();
    for (List<String> row : rows) {
      StringBuilder line = new StringBuilder();
      for (int c = 0; c < columns; c++) {
        String padding = " ".repeat(widths[c] - DisplayWidth.of(row.get(c)));
        boolean right = alignment.charAt(c) == 'r';
        line.append(c == 0 ? "" : GAP);
        line.append(right ? padding + row.get(c) : row.get(c) + padding);
      }
      lines.add(line.toString().stripTrailing());
    }
    return lines;
  }

  /** A name may hold anything; what would move the cursor or turn the writing is shown as ?. */
  public static String printable(String text) {
    StringBuilder shown = new StringBuilder();
    text.codePoints()
        .map(c -> Character.isISOControl(c) || Character.getType(c) == Character.FORMAT ? '?' : c)
        .forEach(shown::appendCodePoint);
    return shown.toString();
  }
}
