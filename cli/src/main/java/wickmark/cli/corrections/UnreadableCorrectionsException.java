package wickmark.cli.corrections;

/** A file is no corrections that can be applied; the message names it and says why. */
public final class UnreadableCorrectionsException extends Exception {
  private static final long serialVersionUID = 1;

  UnreadableCorrectionsException(String shown, String reason) {
    super(shown + ": " + reason);
  }
}
