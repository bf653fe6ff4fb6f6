package wickmark.cli.measuring;

import wickmark.core.record.RunRecord;

/** What came of one strip. */
public sealed interface StripOutcome {

  /** The strip was measured. */
  record Measured(RunRecord record, StraightPicture straightened) implements StripOutcome {}

  /**
   * The strip cannot be measured.
   *
   * @param message sentences that say what was looked for, where, and what the person can do
   */
  record Refused(String message) implements StripOutcome {}
}
