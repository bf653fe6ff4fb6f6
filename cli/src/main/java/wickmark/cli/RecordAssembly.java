package wickmark.cli;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import wickmark.cli.measuring.Said;
import wickmark.cli.measuring.SaidSettings;
import wickmark.cli.photo.PhotoFile;
import wickmark.cli.record.RecordJson;
import wickmark.core.record.RunRecord;

/** Completes what was measured with what only the command line knows: program, file, settings. */
final class RecordAssembly {
  private static final String PROGRAM = "wickmark";

  private RecordAssembly() {}

  /** Returns the record as it is written: complete and rounded. */
  static RunRecord of(RunRecord measured, PhotoFile file, Said said, Optional<String> title) {
    Map<String, Object> settings = new LinkedHashMap<>();
    title.ifPresent(text -> settings.put("title", text));
    settings.putAll(SaidSettings.of(said));
    measured.settings().forEach(settings::putIfAbsent);
    return RecordJson.rounded(
        new RunRecord(
            RunRecord.FORMAT,
            tool(),
            photo(file),
            settings,
            measured.scale(),
            measured.strip(),
            measured.baseline(),
            measured.front(),
            measured.lanes(),
            measured.unknowns(),
            measured.warnings()));
  }

  static RunRecord.Tool tool() {
    return new RunRecord.Tool(PROGRAM, Version.number());
  }

  static RunRecord.Photo photo(PhotoFile file) {
    return new RunRecord.Photo(
        file.name(), file.sha256(), file.photo().widthPx(), file.photo().heightPx());
  }
}
