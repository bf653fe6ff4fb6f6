package wickmark.cli.text;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Whether a text shows as it is: nothing in it breaks a line or turns the direction of writing
 * (Unicode Standard Annex 9, explicit directional formatting), so that what stands beside it cannot
 * be read wrongly. Letters of right-to-left languages are letters like others.
 */
public final class VisibleText {
  /** Why a text was not taken, after the name of what it is. */
  public static final String REFUSAL =
      "has a character in it that is not seen: a line break, or a mark that turns the direction of"
          + " writing; leave it out";

  private static final String DIRECTION_MARKS =
      "\\u061C\\u200E\\u200F\\u202A-\\u202E\\u2066-\\u2069";
  private static final Pattern HIDDEN =
      Pattern.compile("[\\p{Cc}\\p{Cs}\\u2028\\u2029" + DIRECTION_MARKS + "]");
  private static final Pattern HIDDEN_BUT_LINES =
      Pattern.compile("[" + HIDDEN.pattern() + "&&[^\\t\\n\\r]]");

  private VisibleText() {}

  /** Returns whether the text shows as it is. */
  public static boolean is(String text) {
    return !HIDDEN.matcher(text).find();
  }

  /**
   * Returns the text of a page or a cell with a ? for whatever does not show; its lines stay lines.
   */
  public static String ofPage(String page) {
    return HIDDEN_BUT_LINES.matcher(page).replaceAll("?");
  }

  /** Returns JSON that means the same, with escapes for whatever does not show; its lines stay. */
  public static String ofJson(String json) {
    return HIDDEN_BUT_LINES
        .matcher(json)
        .replaceAll(
            hidden ->
                Matcher.quoteReplacement("\\u%04x".formatted((int) hidden.group().charAt(0))));
  }
}
