package wickmark.cli.record;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import wickmark.core.record.RunRecord;

/**
 * What is made of a record later and belongs into its report: the report has a place for it,
 * between two comments, and everything else in it stays as it is.
 */
public final class ReportAddition {
  private static final String BEGIN = "<!-- hand readings: begin -->";
  private static final String END = "<!-- hand readings: end -->";

  private final Path folder;
  private final RunRecord record;
  private final String section;

  /**
   * An addition to the report in a record's folder.
   *
   * @param record that the section was made of
   * @param section HTML that is harmless
   */
  public ReportAddition(Path folder, RunRecord record, String section) {
    this.folder = folder.toAbsolutePath();
    this.record = record;
    this.section = "\n" + section.strip() + "\n";
  }

  /** Returns the report if there is another section in it, which would be lost. */
  public Optional<Path> inTheWay() throws IOException {
    String there = report().map(ReportAddition::sectionOf).orElse("");
    return there.isBlank() || there.equals(section) ? Optional.empty() : Optional.of(file());
  }

  /**
   * Puts the section into the report, by one move.
   *
   * @return whether it is there now; not so if there is no report, or one without a place for it,
   *     or the record is another by now
   */
  public boolean write() throws IOException {
    Path out = folder.getParent();
    if (out == null || report().isEmpty()) {
      return false;
    }
    FolderLock lock = FolderLock.of(out);
    try {
      Optional<String> page = report();
      if (page.isEmpty() || !isStillThere()) {
        return false;
      }
      String with =
          page.get().substring(0, page.get().indexOf(BEGIN) + BEGIN.length())
              + section
              + page.get().substring(page.get().indexOf(END));
      if (!with.equals(page.get())) {
        ExtraFiles.write(
            folder, Map.of(RecordFolder.REPORT, with.getBytes(StandardCharsets.UTF_8)));
      }
      return true;
    } finally {
      lock.close();
    }
  }

  private boolean isStillThere() {
    try {
      return RecordFile.read(folder).equals(record);
    } catch (UnreadableRecordException e) {
      return false;
    }
  }

  private Path file() {
    return folder.resolve(RecordFolder.REPORT);
  }

  /** Returns the report's text if it is one with a place for the section. */
  private Optional<String> report() throws IOException {
    if (!Files.isRegularFile(file(), LinkOption.NOFOLLOW_LINKS)) {
      return Optional.empty();
    }
    String page = new String(Files.readAllBytes(file()), StandardCharsets.UTF_8);
    int begin = page.indexOf(BEGIN);
    return begin >= 0 && page.indexOf(END) >= begin ? Optional.of(page) : Optional.empty();
  }

  private static String sectionOf(String page) {
    return page.substring(page.indexOf(BEGIN) + BEGIN.length(), page.indexOf(END));
  }
}
