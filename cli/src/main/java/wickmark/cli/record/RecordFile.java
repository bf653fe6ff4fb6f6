package wickmark.cli.record;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import wickmark.core.record.RunRecord;

/** A record on the disk, named by its folder or by its file. */
public final class RecordFile {
  private static final long LARGEST_BYTES = 64L << 20;

  private RecordFile() {}

  /** Returns the record's own file. */
  public static Path of(Path named) {
    return Files.isDirectory(named) ? named.resolve(RecordFolder.RECORD) : named;
  }

  /** Reads a record. */
  public static RunRecord read(Path named) throws UnreadableRecordException {
    String shown = named.toString();
    return RecordJson.read(text(of(named), shown), shown);
  }

  private static String text(Path file, String shown) throws UnreadableRecordException {
    try {
      if (Files.isRegularFile(file) && Files.size(file) > LARGEST_BYTES) {
        throw new UnreadableRecordException(shown, "it is too large for a record.");
      }
      if (Files.exists(file) && !Files.isRegularFile(file)) {
        throw new UnreadableRecordException(shown, "it is no ordinary file.");
      }
      return Files.readString(file);
    } catch (NoSuchFileException e) {
      throw new UnreadableRecordException(shown, "there is no record.");
    } catch (IOException e) {
      throw new UnreadableRecordException(shown, "it is no text in UTF-8, or not to be read.");
    }
  }
}
