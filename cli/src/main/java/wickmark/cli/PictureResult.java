package wickmark.cli;

import java.util.List;
import wickmark.core.record.RunRecord;

/**
 * What came of one picture.
 *
 * @param exitCode the highest of its strips
 * @param records one a measured strip, from the left
 * @param messages what went wrong, in sentences
 */
record PictureResult(
    String picture, Outcome outcome, int exitCode, List<RunRecord> records, List<String> messages) {

  /** What happened, in the words that people read. */
  enum Outcome {
    MEASURED("measured"),
    /** Some strips of the picture were, others could not be. */
    MEASURED_IN_PART("measured in part"),
    DONE_BEFORE("measured before"),
    REFUSED("not measured"),
    /** Not measured either; beside no other picture it may be. */
    SHORT_OF_MEMORY("not measured");

    private final String words;

    Outcome(String words) {
      this.words = words;
    }

    String words() {
      return words;
    }
  }

  PictureResult {
    records = List.copyOf(records);
    messages = List.copyOf(messages);
  }

  static PictureResult of(
      String picture, int exitCode, List<RunRecord> records, List<String> messages) {
    Outcome outcome =
        records.isEmpty()
            ? Outcome.REFUSED
            : exitCode == ExitCode.DONE ? Outcome.MEASURED : Outcome.MEASURED_IN_PART;
    return new PictureResult(picture, outcome, exitCode, records, messages);
  }

  static PictureResult failed(String picture, int exitCode, String message) {
    return new PictureResult(picture, Outcome.REFUSED, exitCode, List.of(), List.of(message));
  }

  static PictureResult shortOfMemory(String picture, String message) {
    return new PictureResult(
        picture, Outcome.SHORT_OF_MEMORY, ExitCode.UNREADABLE, List.of(), List.of(message));
  }

  int warnings() {
    return records.stream().mapToInt(record -> record.warnings().size()).sum();
  }
}
