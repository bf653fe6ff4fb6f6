package wickmark.cli.hand;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** The reader of hand readings under a search that is guided by coverage. */
public final class HandReadingsFuzz {
  private HandReadingsFuzz() {}

  /** Any bytes are readings, problems with their places, or refused in a sentence. */
  public static void fuzzerTestOneInput(byte[] data) throws IOException {
    Path file = Files.createTempFile("hand", ".csv");
    try {
      Files.write(file, data);
      HandReadings readings = HandReadingsFile.read(file, "");
      if (readings.rows().stream().anyMatch(row -> row.lane().isEmpty())) {
        throw new IllegalStateException("a reading of no lane");
      }
    } catch (UnreadableReadingsException e) {
      if (!String.valueOf(e.getMessage()).endsWith(".")) {
        throw new IllegalStateException("not a sentence: " + e.getMessage(), e);
      }
    } finally {
      Files.delete(file);
    }
  }
}
