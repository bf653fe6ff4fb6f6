package wickmark.cli.record;

/** Text on its way into a spreadsheet. */
public final class CsvCell {
  private CsvCell() {}

  /** A spreadsheet would run a cell that begins like a formula; the apostrophe makes it text. */
  public static String text(String text) {
    boolean formula = !text.isEmpty() && "=+-@\t\r\n".indexOf(text.charAt(0)) >= 0;
    return formula ? "'" + text : text;
  }
}
