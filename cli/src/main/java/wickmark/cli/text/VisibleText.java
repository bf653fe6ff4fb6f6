package wickmark.cli.text;

import java.util.function.IntFunction;

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
      "\u061C\u200E\u200F\u202A\u202B\u202C\u202D\u202E\u2066\u2067\u2068\u2069";

  private VisibleText() {}

  /** Returns whether the text shows as it is. */
  public static boolean is(String text) {
    return text.codePoints().noneMatch(VisibleText::isHidden);
  }

  /**
   * Returns the text of a page or a cell with a ? for whatever does not show; its lines stay lines.
   */
  public static String ofPage(String page) {
    return with(page, hidden -> "?");
  }

  /** Returns JSON that means the same, with escapes for whatever does not show; its lines stay. */
  public static String ofJson(String json) {
    return with(json, "\\u%04x"::formatted);
  }

  private static String with(String text, IntFunction<String> instead) {
    StringBuilder out = new StringBuilder(text.length());
    int kept = 0;
    int at = 0;
    while (at < text.length()) {
      // Nearly all that is looked at are pictures in the page, as such letters.
      if (isPlain(text.charAt(at))) {
        at++;
        continue;
      }
      int c = text.codePointAt(at);
      if (isHidden(c) && "\t\n\r".indexOf(c) < 0) {
        out.append(text, kept, at).append(instead.apply(c));
        kept = at + 1;
      }
      at += Character.charCount(c);
    }
    return out.append(text, kept, text.length()).toString();
  }

  private static boolean isHidden(int c) {
    return !isPlain(c) && isHiddenType(c);
  }

  /** Letters, figures and signs of ASCII. */
  private static boolean isPlain(int c) {
    return c >= ' ' && c <= '~';
  }

  private static boolean isHiddenType(int c) {
    return switch (Character.getType(c)) {
      case Character.CONTROL,
          Character.SURROGATE,
          Character.LINE_SEPARATOR,
          Character.PARAGRAPH_SEPARATOR ->
          true;
      default -> DIRECTION_MARKS.indexOf(c) >= 0;
    };
  }
}
