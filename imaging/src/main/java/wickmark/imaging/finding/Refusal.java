package wickmark.imaging.finding;

/**
 * Why a picture, or one strip in it, cannot be measured.
 *
 * @param reason a stable word
 * @param message a sentence that says what was looked for, where, and what the person can do
 */
public record Refusal(Reason reason, String message) {
  /** What is missing. */
  public enum Reason {
    NO_STRIP("no-strip"),
    NO_BASELINE("no-baseline"),
    NO_FRONT("no-front"),
    NO_LANES("no-lanes"),
    NO_SPOTS("no-spots"),
    NOT_CERTAIN("not-certain");

    private final String word;

    Reason(String word) {
      this.word = word;
    }

    /** The word in messages and tables. */
    public String word() {
      return word;
    }
  }
}
