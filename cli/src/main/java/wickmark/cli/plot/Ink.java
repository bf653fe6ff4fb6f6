package wickmark.cli.plot;

import java.util.Locale;
import java.util.Optional;

/**
 * A colour of the page's style sheet. A drawing has it as the colour for light pages, and as a
 * class by which the style sheet gives it that of dark pages and of paper.
 */
public enum Ink {
  /** What counts. */
  MAIN("#1f2426"),
  /** What goes with it. */
  QUIET("#545c5f"),
  /** Lines to read values by. */
  RULE("#cfcbbf"),
  /** What is to be looked at. */
  HEED("#7a3b00");

  private final String hex;

  Ink(String hex) {
    this.hex = hex;
  }

  String hex() {
    return hex;
  }

  /** Name of the class that gives this ink to an attribute, {@code stroke} or {@code fill}. */
  String styleClass(String attribute) {
    return attribute + "-" + name().toLowerCase(Locale.ROOT);
  }

  /** The ink of a colour that was written as {@code #rrggbb}. */
  static Optional<Ink> of(String colour) {
    for (Ink ink : values()) {
      if (ink.hex.equals(colour)) {
        return Optional.of(ink);
      }
    }
    return Optional.empty();
  }
}
