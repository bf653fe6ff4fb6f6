package wickmark.cli.photo;

import java.util.Objects;

/** A file that cannot be read as a picture; the message is one plain sentence with its name. */
public final class UnreadablePictureException extends Exception {
  private static final long serialVersionUID = 1L;

  /**
   * Names the file and the reason.
   *
   * @param file the file's name; control characters in it are shown as question marks
   * @param reason completes "FILE cannot be read: ..."
   */
  public UnreadablePictureException(String file, String reason) {
    super(printable(file) + " cannot be read: " + reason);
  }

  @Override
  public String getMessage() {
    return Objects.requireNonNull(super.getMessage(), "set by the constructor");
  }

  private static String printable(String name) {
    StringBuilder shown = new StringBuilder();
    name.codePoints()
        .map(c -> Character.isISOControl(c) || Character.getType(c) == Character.FORMAT ? '?' : c)
        .forEach(shown::appendCodePoint);
    return shown.toString();
  }
}
