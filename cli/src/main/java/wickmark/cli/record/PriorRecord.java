package wickmark.cli.record;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import wickmark.core.record.RunRecord;

/** A record that is there already. */
public final class PriorRecord {
  private PriorRecord() {}

  /** Returns the record of a folder, or none where there is none that can be read. */
  public static Optional<RunRecord> in(RecordFolder folder) {
    Path file = folder.path().resolve(RecordFolder.RECORD);
    try {
      return Optional.of(RecordJson.read(Files.readString(file), file.toString()));
    } catch (IOException | UnreadableRecordException e) {
      return Optional.empty(); // then it is in the way, and whoever measures is told so
    }
  }
}
