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
record PictureResult(String picture, int exitCode, List<RunRecord> records, List<String> messages) {
  PictureResult {
    records = List.copyOf(records);
    messages = List.copyOf(messages);
  }

  static PictureResult failed(String picture, int exitCode, String message) {
    return new PictureResult(picture, exitCode, List.of(), List.of(message));
  }
}
