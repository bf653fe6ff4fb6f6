package wickmark.cli.record;

import java.io.IOException;
import java.nio.file.DirectoryIteratorException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.Duration;
import java.time.Instant;
import java.util.Arrays;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

/** Files made from records, written whole or not at all. */
public final class ExtraFiles {
  private static final String PART = ".part";

  /** Writing takes well under a second; what is older was left by a run that was killed. */
  private static final Duration LEFT_BEHIND = Duration.ofHours(1);

  private ExtraFiles() {}

  /** Returns a file that is there already with other content, and so would be lost. */
  public static Optional<Path> inTheWay(Path folder, Map<String, byte[]> files) throws IOException {
    for (Map.Entry<String, byte[]> file : files.entrySet()) {
      Path target = folder.resolve(file.getKey());
      if (Files.exists(target, LinkOption.NOFOLLOW_LINKS)
          && !(Files.isRegularFile(target)
              && Arrays.equals(Files.readAllBytes(target), file.getValue()))) {
        return Optional.of(target);
      }
    }
    return Optional.empty();
  }

  /** Writes the files, each by one move; the folder is made if needed. */
  public static void write(Path folder, Map<String, byte[]> files) throws IOException {
    Files.createDirectories(folder);
    sweep(folder, files.keySet(), Instant.now());
    for (Map.Entry<String, byte[]> file : files.entrySet()) {
      // Not a private temporary file: the result should be as readable as any new file.
      Path beside =
          folder.resolve("." + file.getKey() + "." + ProcessHandle.current().pid() + PART);
      try {
        Files.write(beside, file.getValue());
        Files.move(
            beside,
            folder.resolve(file.getKey()),
            StandardCopyOption.ATOMIC_MOVE,
            StandardCopyOption.REPLACE_EXISTING);
      } finally {
        Files.deleteIfExists(beside);
      }
    }
  }

  /** Deletes what runs that were killed in the middle of writing these files left beside them. */
  static void sweep(Path folder, Set<String> names, Instant now) throws IOException {
    try (DirectoryStream<Path> left = Files.newDirectoryStream(folder, ".*" + PART)) {
      for (Path part : left) {
        String name = part.getFileName().toString();
        boolean isOurs =
            names.stream()
                .anyMatch(of -> name.matches("\\." + Pattern.quote(of) + "\\.[0-9]+\\" + PART));
        if (isOurs
            && Files.isRegularFile(part, LinkOption.NOFOLLOW_LINKS)
            && Files.getLastModifiedTime(part).toInstant().isBefore(now.minus(LEFT_BEHIND))) {
          Files.deleteIfExists(part);
        }
      }
    } catch (DirectoryIteratorException e) {
      throw e.getCause();
    }
  }
}
