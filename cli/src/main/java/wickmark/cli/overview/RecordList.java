package wickmark.cli.overview;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import wickmark.cli.record.RecordFile;
import wickmark.cli.record.RecordFolder;
import wickmark.cli.record.UnreadableRecordException;
import wickmark.core.record.RunRecord;

/**
 * The records in a folder.
 *
 * @param unreadable what looks like a record and cannot be read: its folder and the reason
 */
record RecordList(List<Named> records, List<OverviewPage.Failure> unreadable) {
  RecordList {
    records = List.copyOf(records);
    unreadable = List.copyOf(unreadable);
  }

  /** A record and the name of its folder. */
  record Named(String folder, RunRecord record) {}

  /** Reads them, by the names of their folders: 2 before 10. */
  static RecordList in(Path folder) throws IOException {
    List<Named> records = new ArrayList<>();
    List<OverviewPage.Failure> unreadable = new ArrayList<>();
    for (Path one : foldersIn(folder)) {
      String name = String.valueOf(one.getFileName());
      try {
        records.add(new Named(name, RecordFile.read(one)));
      } catch (UnreadableRecordException e) {
        unreadable.add(
            new OverviewPage.Failure(
                name, "The record in this folder cannot be read. Measure the picture again."));
      }
    }
    return new RecordList(records, unreadable);
  }

  private static List<Path> foldersIn(Path folder) throws IOException {
    try (Stream<Path> all = Files.list(folder)) {
      return all.filter(one -> !String.valueOf(one.getFileName()).startsWith("."))
          .filter(one -> Files.isRegularFile(one.resolve(RecordFolder.RECORD)))
          .sorted(
              Comparator.comparing((Path one) -> byNumber(String.valueOf(one.getFileName())))
                  .thenComparing(one -> String.valueOf(one.getFileName())))
          .toList();
    }
  }

  /** The name with each number in it written with ten digits, so that text order is theirs. */
  private static String byNumber(String name) {
    StringBuilder key = new StringBuilder();
    for (String part : name.split("(?<=\\D)(?=\\d)|(?<=\\d)(?=\\D)", -1)) {
      boolean number = !part.isEmpty() && Character.isDigit(part.charAt(0)) && part.length() < 10;
      key.append(number ? "0".repeat(10 - part.length()) + part : part);
    }
    return key.toString();
  }
}
