package wickmark.core.card;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import wickmark.core.sheet.Size;

/** Sheets that the card is printed on, upright. */
public enum CardSheet {
  A4(0),
  A5(4),
  LETTER(8);

  private final int firstSquare;

  CardSheet(int firstSquare) {
    this.firstSquare = firstSquare;
  }

  /** Number of its upper left square; the others follow clockwise. */
  int firstSquare() {
    return firstSquare;
  }

  /** The sheet of a name (a4, a5, letter), in any case of letters. */
  public static Optional<CardSheet> named(String text) {
    return Arrays.stream(values()).filter(s -> s.word().equalsIgnoreCase(text)).findFirst();
  }

  /** Its name in options. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }

  public Size size() {
    return Size.of(word());
  }
}
