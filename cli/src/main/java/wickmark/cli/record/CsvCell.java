package wickmark.cli.record;

import wickmark.cli.text.VisibleText;

/** Text on its way into a spreadsheet. */
public final class CsvCell {
  /** The last four are full-width forms, which spreadsheets in East Asia take for the same. */
  private static final String FORMULA_STARTS = "=+-@\t\r\n\uFF1D\uFF0B\uFF0D\uFF20";

  private CsvCell() {}

  /**
   * Returns the text as a cell that shows as it is. A spreadsheet would run a cell that begins like
   * a formula; the apostrophe makes it text.
   */
  public static String text(String text) {
    boolean formula = !text.isEmpty() && FORMULA_STARTS.indexOf(text.charAt(0)) >= 0;
    return (formula ? "'" : "") + VisibleText.ofPage(text);
  }
}
