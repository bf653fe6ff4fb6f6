package wickmark.cli.record;

import java.nio.charset.StandardCharsets;
import wickmark.core.record.RunRecord;

/** The record reader under a search that is guided by coverage. */
public final class RecordFuzz {
  private RecordFuzz() {}

  /** Any text is a record, and then comes back as the same record, or is refused in a sentence. */
  public static void fuzzerTestOneInput(byte[] data) {
    try {
      RunRecord record = RecordJson.read(new String(data, StandardCharsets.UTF_8), "record.json");
      RunRecord once = RecordJson.rounded(record);
      if (!once.equals(RecordJson.rounded(once))) {
        throw new IllegalStateException("rounding twice is not rounding once");
      }
      SpotsCsv.text(once);
    } catch (UnreadableRecordException e) {
      if (!e.getMessage().endsWith(".") || e.getMessage().contains("Exception")) {
        throw new IllegalStateException("not a sentence: " + e.getMessage(), e);
      }
    }
  }
}
