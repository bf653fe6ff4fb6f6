package wickmark.cli.record;

import java.util.Objects;

/** A file that cannot be read as a record; the message is one plain sentence with its name. */
public final class UnreadableRecordException extends Exception {
  private static final long serialVersionUID = 1L;

  /**
   * Names the file and the reason.
   *
   * @param reason completes "FILE cannot be read: ..."
   */
  public UnreadableRecordException(String file, String reason) {
    super(file + " cannot be read: " + reason);
  }

  @Override
  public String getMessage() {
    return Objects.requireNonNull(super.getMessage(), "set by the constructor");
  }
}
