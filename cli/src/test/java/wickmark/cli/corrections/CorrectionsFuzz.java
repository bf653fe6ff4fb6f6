package wickmark.cli.corrections;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import wickmark.cli.measuring.MeasuringRequest;
import wickmark.cli.measuring.RequestSettings;
import wickmark.cli.text.VisibleText;

/** The reader of corrections under a search that is guided by coverage. */
public final class CorrectionsFuzz {
  private CorrectionsFuzz() {}

  /** Any file is corrections that a record can hold and show, or is refused in a sentence. */
  public static void fuzzerTestOneInput(byte[] data) throws IOException {
    Path file = Files.createTempFile("corrections", ".json");
    try {
      Files.write(file, data);
      Corrections corrections = CorrectionsFile.read(file);
      MeasuringRequest request = corrections.request();
      Map<String, Object> settings = new LinkedHashMap<>(RequestSettings.of(request));
      if (!RequestSettings.from(settings).equals(request)) {
        throw new IllegalStateException("what was said does not come back from the settings");
      }
      String shown = settings + corrections.title().orElse("");
      if (!VisibleText.is(shown)) {
        throw new IllegalStateException("not to be shown: " + shown);
      }
    } catch (UnreadableCorrectionsException e) {
      String said = String.valueOf(e.getMessage());
      if (!said.startsWith(file + ": ") || !said.endsWith(".") || said.contains("Exception")) {
        throw new IllegalStateException("not a sentence: " + said, e);
      }
    } finally {
      Files.delete(file);
    }
  }
}
