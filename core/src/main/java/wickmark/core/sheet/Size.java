package wickmark.core.sheet;

import java.math.BigDecimal;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import wickmark.core.uncertainty.Decimals;

/**
 * A width and a height, mm.
 *
 * @param width across, above 0
 * @param height upright, above 0
 */
public record Size(double width, double height) {
  /** Upright sheets: ISO 216 for the A sizes, and 8.5 by 11 inches. */
  private static final Map<String, Size> NAMED =
      Map.of(
          "a4", new Size(210, 297),
          "a5", new Size(148, 210),
          "a6", new Size(105, 148),
          "letter", new Size(215.9, 279.4));

  private static final Pattern WIDTH_BY_HEIGHT =
      Pattern.compile("([0-9]{1,4}(?:\\.[0-9]+)?) *[x×] *([0-9]{1,4}(?:\\.[0-9]+)?)(?: *mm)?");

  private static final double SMALLEST = 10;
  private static final double LARGEST = 2000;

  /**
   * Reads a name (a4, a5, a6, letter) or WIDTHxHEIGHT in mm.
   *
   * @throws IllegalArgumentException if it is neither; the message says what would be right
   */
  public static Size of(String text) {
    Size named = NAMED.get(text.toLowerCase(Locale.ROOT));
    if (named != null) {
      return named;
    }
    Matcher matcher = WIDTH_BY_HEIGHT.matcher(text);
    if (!matcher.matches()) {
      throw new IllegalArgumentException(
          "a size is WIDTHxHEIGHT in mm, as 90x130, or a4, a5, a6 or letter; was \"" + text + "\"");
    }
    Size size =
        new Size(
            new BigDecimal(matcher.group(1)).doubleValue(),
            new BigDecimal(matcher.group(2)).doubleValue());
    if (Math.min(size.width, size.height) < SMALLEST
        || Math.max(size.width, size.height) > LARGEST) {
      throw new IllegalArgumentException(
          "width and height lie between 10 and 2000 mm, was \"" + text + "\"");
    }
    return size;
  }

  /** The same lying on its side. */
  public Size turned() {
    return new Size(/* width= */ height, /* height= */ width);
  }

  /** Returns "90 × 130 mm". */
  public String text() {
    return millimetres(width) + " × " + millimetres(height) + " mm";
  }

  /** Returns "90" or "26.5": a length to a tenth of a millimetre, without an idle zero. */
  public static String millimetres(double value) {
    String text = Decimals.text(value, 1);
    return text.endsWith(".0") ? text.substring(0, text.length() - 2) : text;
  }
}
