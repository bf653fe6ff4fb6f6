package wickmark.cli.hand;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A cell with a number, perhaps with a unit: {@code 54.5}, {@code 54,5 mm}, {@code 5.4cm}.
 *
 * @param unit what stands after the number; empty where nothing does
 */
record NumberCell(BigDecimal number, String unit) {
  private static final Pattern NUMBER =
      Pattern.compile("'?([+\\-\u2212]?(?:[0-9]{1,9}(?:[.,][0-9]{1,9})?|[.,][0-9]{1,9})) *(.*)");
  private static final Pattern UNIT = Pattern.compile("[\\p{L}%\"″]{1,12}\\.?");

  /** Spreadsheets take 5.4 or 5/4 for a day and a month where the country writes them so. */
  private static final Pattern DATE =
      Pattern.compile(
          "[0-9]{1,2}[./-][0-9]{1,2}[./-](?:[0-9]{2}|[0-9]{4})|[0-9]{4}-[0-9]{2}-[0-9]{2}"
              + "|[0-9]{1,2}[. -]*MONTH\\p{L}*\\.?(?:[ -][0-9]+)?|MONTH\\p{L}*[. -]+[0-9]{1,4}"
                  .replace(
                      "MONTH", "(?i:jan|feb|m[aä]r|apr|ma[iy]|jun|jul|aug|sep|o[ck]t|nov|de[cz])"));

  private static final Pattern THOUSANDS =
      Pattern.compile("[+-]?[0-9]{1,3}(?:([.,' ])[0-9]{3})+(?!\\1)[.,][0-9]+.*");

  private static final int LONGEST_SHOWN = 30;

  /** Returns the number; empty if the cell holds none. */
  static Optional<NumberCell> of(String cell) {
    Matcher matcher = NUMBER.matcher(cell);
    if (!matcher.matches()) {
      return Optional.empty();
    }
    String rest = matcher.group(2).strip();
    if (!rest.isEmpty() && !UNIT.matcher(rest).matches()) {
      return Optional.empty();
    }
    String digits = matcher.group(1).replace(',', '.').replace('\u2212', '-');
    return Optional.of(new NumberCell(new BigDecimal(digits), withoutDot(rest)));
  }

  private static String withoutDot(String unit) {
    return unit.endsWith(".") ? unit.substring(0, unit.length() - 1) : unit;
  }

  /** Says what a cell is that holds no number. */
  static String whyNone(String cell) {
    String shown = "\"" + shortened(cell) + "\"";
    if (cell.startsWith("#")) {
      return shown + " is an error that the spreadsheet reports";
    }
    if (DATE.matcher(cell).matches()) {
      return shown
          + " is a date: the spreadsheet has taken the number for one. Format the column as text"
          + " and type it again";
    }
    if (THOUSANDS.matcher(cell).matches()) {
      return shown + " has two kinds of separators. Write it without one for thousands";
    }
    return shown + " is not a number";
  }

  static String shortened(String cell) {
    return cell.length() <= LONGEST_SHOWN ? cell : cell.substring(0, LONGEST_SHOWN) + "…";
  }
}
