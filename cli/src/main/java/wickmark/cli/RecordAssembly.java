package wickmark.cli;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import wickmark.cli.measuring.MeasuringRequest;
import wickmark.cli.measuring.RequestSettings;
import wickmark.cli.photo.PhotoFile;
import wickmark.cli.record.RecordJson;
import wickmark.core.record.RunRecord;

/** Completes what was measured with what only the command line knows: program, file, settings. */
final class RecordAssembly {
  private static final String PROGRAM = "wickmark";

  private RecordAssembly() {}

  /** Returns the record as it is written: complete and rounded. */
  static RunRecord of(
      RunRecord measured, PhotoFile file, MeasuringRequest said, Optional<String> title) {
    Map<String, Object> settings = new LinkedHashMap<>();
    title.ifPresent(text -> settings.put("title", text));
    settings.putAll(RequestSettings.of(said));
    measured.settings().forEach(settings::putIfAbsent);
    return RecordJson.rounded(
        new RunRecord(
            RunRecord.FORMAT,
            tool(),
            photo(file),
            settings,
            measured.scale(),
            measured.card(),
            measured.strip(),
            measured.baseline(),
            measured.front(),
            measured.lanes(),
            measured.unknowns(),
            warnings(measured, file)));
  }

  static RunRecord.Tool tool() {
    return new RunRecord.Tool(PROGRAM, Version.number());
  }

  static RunRecord.Photo photo(PhotoFile file) {
    return new RunRecord.Photo(
        file.name(), file.sha256(), file.photo().widthPx(), file.photo().heightPx());
  }

  /** What was odd about the file comes first: it may explain the rest. */
  private static List<RunRecord.Warning> warnings(RunRecord measured, PhotoFile file) {
    List<RunRecord.Warning> warnings = new ArrayList<>();
    file.remarks().forEach(remark -> warnings.add(new RunRecord.Warning("file", remark)));
    warnings.addAll(measured.warnings());
    return warnings;
  }
}
