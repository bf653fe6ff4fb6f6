package wickmark.cli;

/** What the program answers to the one who called it. */
final class ExitCode {
  /** All done. */
  static final int DONE = 0;

  /** Something failed that should not: a defect. */
  static final int DEFECT = 1;

  /** The command line is wrong. */
  static final int BAD_USAGE = 2;

  /** An input cannot be read: no file, not a picture, cut short, too large. */
  static final int UNREADABLE = 3;

  /** A picture was read but cannot be measured. */
  static final int NOT_MEASURABLE = 4;

  /** Done, but a check failed. */
  static final int CHECK_FAILED = 5;

  private ExitCode() {}
}
