package wickmark.cli.example;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;
import java.util.Objects;

/** The example files, listed in {@code index.txt} beside them. */
public final class ExampleFiles {
  private static final String INDEX = "index.txt";

  private ExampleFiles() {}

  /** Returns the names of the files. */
  public static List<String> names() {
    try (InputStream in = open(INDEX)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8)
          .lines()
          .map(String::strip)
          .filter(line -> !line.isEmpty())
          .toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Copies one file into a folder, whole or not at all; one that is there is replaced. */
  public static void copy(String name, Path folder) throws IOException {
    Path beside = Files.createTempFile(folder, ".wickmark-", ".part");
    try (InputStream in = open(name)) {
      Files.copy(in, beside, StandardCopyOption.REPLACE_EXISTING);
      Files.move(
          beside,
          folder.resolve(name),
          StandardCopyOption.ATOMIC_MOVE,
          StandardCopyOption.REPLACE_EXISTING);
    } finally {
      Files.deleteIfExists(beside);
    }
  }

  private static InputStream open(String name) {
    return Objects.requireNonNull(ExampleFiles.class.getResourceAsStream(name), name);
  }
}
