package wickmark.cli.measuring;

import java.util.List;
import wickmark.core.record.RunRecord;

/** A record with some of its parts in place of its own. */
public final class AlteredRecord {
  private final RunRecord record;
  private RunRecord.Tool tool;
  private RunRecord.Photo photo;
  private RunRecord.Scale scale;
  private RunRecord.Baseline baseline;
  private List<RunRecord.Warning> warnings;

  private AlteredRecord(RunRecord record) {
    this.record = record;
    this.tool = record.tool();
    this.photo = record.photo();
    this.scale = record.scale();
    this.baseline = record.baseline();
    this.warnings = record.warnings();
  }

  public static AlteredRecord of(RunRecord record) {
    return new AlteredRecord(record);
  }

  public AlteredRecord tool(RunRecord.Tool other) {
    tool = other;
    return this;
  }

  public AlteredRecord photo(RunRecord.Photo other) {
    photo = other;
    return this;
  }

  public AlteredRecord scale(RunRecord.Scale other) {
    scale = other;
    return this;
  }

  public AlteredRecord baseline(RunRecord.Baseline other) {
    baseline = other;
    return this;
  }

  public AlteredRecord warnings(List<RunRecord.Warning> others) {
    warnings = others;
    return this;
  }

  public RunRecord record() {
    return new RunRecord(
        record.format(),
        tool,
        photo,
        record.settings(),
        scale,
        record.card(),
        record.strip(),
        baseline,
        record.front(),
        record.lanes(),
        record.unknowns(),
        warnings);
  }
}
