package wickmark.cli.measuring;

import wickmark.core.record.RunRecord;

/** What came of one strip. */
public sealed interface MeasuredStrip {

  /**
   * It was measured.
   *
   * @param record complete but for the program, the file and what the person said
   */
  record Done(RunRecord record, StraightPicture straightened) implements MeasuredStrip {}

  /**
   * It cannot be measured.
   *
   * @param message sentences that say what was looked for, where, and what the person can do
   */
  record Refused(String message) implements MeasuredStrip {}
}
