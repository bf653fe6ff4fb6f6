package wickmark.cli.overview;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import wickmark.cli.record.ExtraFiles;
import wickmark.cli.report.PageTemplate;

/** The page over a folder of records, {@code index.html}. */
public final class OverviewPage {
  /** The file's name. */
  public static final String FILE = "index.html";

  /** By this an overview is told from a page that somebody put there. */
  private static final String MARK = "<meta name=\"generator\" content=\"wickmark overview\">";

  /** The mark stands within the first bytes of an overview. */
  private static final int HEAD_BYTES = 1024;

  private OverviewPage() {}

  /** A picture that could not be measured, with the reason. */
  public record Failure(String picture, String message) {}

  /**
   * Writes the page anew if there is more than one strip to look over.
   *
   * @param failures of the pictures that were to be measured just now
   * @return whether it could be: false where a page of somebody else's is in the way
   */
  public static boolean write(Path folder, List<Failure> failures) throws IOException {
    if (!Files.isDirectory(folder)) {
      return true;
    }
    OverviewContent content = OverviewContent.of(RecordList.in(folder), failures);
    if (content.count() < 2 && !isOurs(folder.resolve(FILE))) {
      return true;
    }
    Path file = folder.resolve(FILE);
    if (Files.exists(file, LinkOption.NOFOLLOW_LINKS) && !isOurs(file)) {
      return false;
    }
    String page = PageTemplate.filled(OverviewPage.class, "overview.ftlh", content);
    ExtraFiles.write(folder, Map.of(FILE, page.getBytes(StandardCharsets.UTF_8)));
    return true;
  }

  private static boolean isOurs(Path file) throws IOException {
    if (!Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)) {
      return false;
    }
    try (var in = Files.newInputStream(file)) {
      return new String(in.readNBytes(HEAD_BYTES), StandardCharsets.UTF_8).contains(MARK);
    }
  }
}
