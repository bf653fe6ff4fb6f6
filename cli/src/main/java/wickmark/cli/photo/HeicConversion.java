package wickmark.cli.photo;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;

/** Reads HEIC photos through the converter of the libheif project, where it is installed. */
final class HeicConversion {
  private static final String CONVERTER = "heif-convert";
  private static final long LONGEST_SECONDS = 60;

  private HeicConversion() {}

  /** Returns the photo as the bytes of a JPEG file. */
  static byte[] toJpeg(byte[] heic, String shown) throws UnreadablePictureException {
    Path converter =
        onPath()
            .orElseThrow(
                () ->
                    new UnreadablePictureException(
                        shown,
                        "it is a HEIC photo; export it as JPEG (on the phone, share it as \"most"
                            + " compatible\" or set the camera to JPEG), or install the program"
                            + " heif-convert."));
    try {
      Path folder = Files.createTempDirectory("wickmark-heic");
      try {
        return convert(converter, folder, heic, shown);
      } finally {
        deleteWith(folder);
      }
    } catch (IOException e) {
      throw new UnreadablePictureException(
          shown, "the HEIC photo could not be converted (" + e.getMessage() + ").");
    }
  }

  private static byte[] convert(Path converter, Path folder, byte[] heic, String shown)
      throws IOException, UnreadablePictureException {
    Path from = Files.write(folder.resolve("photo.heic"), heic);
    Path to = folder.resolve("photo.jpg");
    Process process =
        new ProcessBuilder(converter.toString(), "-q", "95", from.toString(), to.toString())
            .redirectErrorStream(true)
            .redirectOutput(folder.resolve("log.txt").toFile())
            .start();
    process.getOutputStream().close();
    try {
      if (!process.waitFor(LONGEST_SECONDS, TimeUnit.SECONDS)) {
        process.destroyForcibly().waitFor();
      }
    } catch (InterruptedException e) {
      process.destroyForcibly();
      Thread.currentThread().interrupt();
    }
    if (process.isAlive() || process.exitValue() != 0) {
      throw new UnreadablePictureException(shown, "the HEIC photo is damaged or of a rare kind.");
    }
    // A file with several pictures comes out numbered from 1.
    return BoundedFile.read(Files.exists(to) ? to : folder.resolve("photo-1.jpg"), shown);
  }

  private static Optional<Path> onPath() {
    String path = System.getenv().getOrDefault("PATH", "");
    boolean windows =
        System.getProperty("os.name", "").toLowerCase(Locale.ROOT).startsWith("windows");
    return Stream.of(path.split(File.pathSeparator))
        .filter(folder -> !folder.isEmpty())
        .map(folder -> Path.of(folder, windows ? CONVERTER + ".exe" : CONVERTER))
        .filter(Files::isExecutable)
        .findFirst();
  }

  private static void deleteWith(Path folder) throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      for (Path file : files.toList()) {
        Files.deleteIfExists(file);
      }
    }
    Files.deleteIfExists(folder);
  }
}
