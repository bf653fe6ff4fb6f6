package wickmark.cli.table;

import java.lang.Character.UnicodeScript;

/** How many columns of a terminal a text takes. */
final class DisplayWidth {
  private static final int FULL_WIDTH_FORMS_FROM = 0xff01;
  private static final int FULL_WIDTH_FORMS_TO = 0xff60;

  private DisplayWidth() {}

  /** Unicode Standard Annex 11: East Asian wide characters take two columns, marks none. */
  static int of(String text) {
    return text.codePoints().map(DisplayWidth::of).sum();
  }

  private static int of(int character) {
    int type = Character.getType(character);
    if (type == Character.NON_SPACING_MARK || type == Character.ENCLOSING_MARK) {
      return 0;
    }
    boolean wideForm = character >= FULL_WIDTH_FORMS_FROM && character <= FULL_WIDTH_FORMS_TO;
    return wideForm || isWide(UnicodeScript.of(character)) ? 2 : 1;
  }

  private static boolean isWide(UnicodeScript script) {
    return script == UnicodeScript.HAN
        || script == UnicodeScript.HIRAGANA
        || script == UnicodeScript.KATAKANA
        || script == UnicodeScript.HANGUL;
  }
}
