package wickmark.cli.overview;

import java.util.ArrayList;
import java.util.List;
import wickmark.cli.table.ResultText;
import wickmark.core.record.RunRecord;

/**
 * Everything the overview's template prints. What needs a look comes first.
 *
 * @param count strips and failures together
 */
record OverviewContent(
    int count, List<OverviewPage.Failure> failed, List<Entry> warned, List<Entry> fine) {

  /**
   * One record.
   *
   * @param folder its folder's name
   * @param findings what explains the unknown, one sentence each
   */
  record Entry(
      String name,
      String picture,
      String folder,
      String overview,
      List<String> findings,
      List<String> warnings) {}

  static OverviewContent of(RecordList records, List<OverviewPage.Failure> failures) {
    List<OverviewPage.Failure> failed = new ArrayList<>(failures);
    failed.addAll(records.unreadable());
    List<Entry> warned = new ArrayList<>();
    List<Entry> fine = new ArrayList<>();
    for (RecordList.Named named : records.records()) {
      Entry entry = entry(named);
      (entry.warnings().isEmpty() ? fine : warned).add(entry);
    }
    return new OverviewContent(failed.size() + warned.size() + fine.size(), failed, warned, fine);
  }

  private static Entry entry(RecordList.Named named) {
    RunRecord record = named.record();
    return new Entry(
        String.valueOf(record.settings().getOrDefault("title", named.folder())),
        record.photo().file(),
        named.folder(),
        ResultText.overview(record),
        record.unknowns().stream()
            .flatMap(unknown -> unknown.findings().stream().limit(1))
            .toList(),
        record.warnings().stream().map(RunRecord.Warning::message).toList());
  }
}
