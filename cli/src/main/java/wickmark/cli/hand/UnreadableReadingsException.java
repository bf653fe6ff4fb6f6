package wickmark.cli.hand;

/** A file that holds no hand readings; the message says why and what to do. */
public final class UnreadableReadingsException extends Exception {
  private static final long serialVersionUID = 1;

  UnreadableReadingsException(String file, String reason) {
    super(file + " cannot be read: " + reason);
  }
}
