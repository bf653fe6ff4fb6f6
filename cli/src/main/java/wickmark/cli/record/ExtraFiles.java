package wickmark.cli.record;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Arrays;
import java.util.Map;
import java.util.Optional;

/** Files made from records, written whole or not at all. */
public final class ExtraFiles {
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
    for (Map.Entry<String, byte[]> file : files.entrySet()) {
      // Not a private temporary file: the result should be as readable as any new file.
      Path beside =
          folder.resolve("." + file.getKey() + "." + ProcessHandle.current().pid() + ".part");
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
}
