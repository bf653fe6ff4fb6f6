package wickmark.cli.record;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Objects;

/** The JSON Schema (draft 2020-12) of a record. */
public final class RecordSchema {
  private RecordSchema() {}

  /** Returns the schema's text. */
  public static String text() {
    String name = "record.schema.json";
    try (InputStream in = RecordSchema.class.getResourceAsStream(name)) {
      return new String(Objects.requireNonNull(in, name).readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
