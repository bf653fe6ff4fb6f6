package wickmark.cli.reproduce;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.DigestInputStream;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Finds a recorded picture again by its SHA-256, also where it was renamed. */
public final class PictureSearch {
  private static final int DEEPEST = 8;

  private final List<Path> folders;

  /**
   * Searches in these folders and all below them, and besides in the folder of a record and the two
   * above it.
   */
  public PictureSearch(List<Path> folders) {
    this.folders = List.copyOf(folders);
  }

  /** Returns the picture with this fingerprint. */
  public Optional<Path> find(Path recordFolder, String name, String sha256) {
    List<Path> near = new ArrayList<>();
    @Nullable Path folder = recordFolder.toAbsolutePath().normalize();
    for (int i = 0; i < 3 && folder != null; i++) {
      near.add(folder);
      folder = folder.getParent();
    }
    List<Path> files = new ArrayList<>();
    near.forEach(place -> files.addAll(filesIn(place, 1)));
    folders.forEach(place -> files.addAll(filesIn(place, DEEPEST)));
    // The likely one first: most pictures keep their name.
    files.sort(Comparator.comparing(file -> !name.equals(String.valueOf(file.getFileName()))));
    return files.stream().filter(file -> sha256.equals(fingerprint(file))).findFirst();
  }

  private static List<Path> filesIn(Path folder, int depth) {
    try (Stream<Path> files = Files.walk(folder, depth)) {
      return files.filter(Files::isRegularFile).sorted().toList();
    } catch (IOException | java.io.UncheckedIOException e) {
      return List.of(); // a folder that cannot be looked into holds nothing for us
    }
  }

  private static String fingerprint(Path file) {
    try (InputStream in = Files.newInputStream(file)) {
      MessageDigest digest = MessageDigest.getInstance("SHA-256");
      new DigestInputStream(in, digest).transferTo(java.io.OutputStream.nullOutputStream());
      return HexFormat.of().formatHex(digest.digest());
    } catch (IOException e) {
      return "";
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java has SHA-256", e);
    }
  }
}
