package wickmark.cli;

import java.io.IOException;
import java.nio.file.DirectoryIteratorException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.text.Normalizer;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.PatternSyntaxException;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import wickmark.cli.record.FolderName;

/** The pictures that are meant: files as they are, folders by the pictures in them. */
final class PictureList {
  private static final Set<String> ENDINGS =
      Set.of("jpg", "jpeg", "png", "tif", "tiff", "webp", "bmp", "heic", "heif");

  private PictureList() {}

  /**
   * Returns the files, those of a folder or of a pattern by name. A folder without pictures stays
   * in the list, and so does a pattern that nothing matches: reading it says what is wrong.
   */
  static List<Path> of(List<Path> named) {
    List<Path> pictures = new ArrayList<>();
    for (Path path : named) {
      List<Path> inside =
          Files.isDirectory(path)
              ? picturesIn(path)
              : Files.exists(path) ? List.of() : matching(path);
      pictures.addAll(inside.isEmpty() ? List.of(path) : inside);
    }
    return pictures;
  }

  private static List<Path> picturesIn(Path folder) {
    try (Stream<Path> files = Files.list(folder)) {
      return files
          .filter(file -> ENDINGS.contains(ending(PictureRun.nameOf(file))))
          .sorted(Comparator.comparing(PictureRun::nameOf))
          .toList();
    } catch (IOException e) {
      return List.of();
    }
  }

  /**
   * Not every shell writes out what a pattern stands for. A pattern may be in the last part only.
   */
  private static List<Path> matching(Path pattern) {
    String name = PictureRun.nameOf(pattern);
    if (name.indexOf('*') < 0 && name.indexOf('?') < 0) {
      return List.of();
    }
    @Nullable Path parent = pattern.getParent();
    Path folder = parent == null ? Path.of("") : parent;
    try (DirectoryStream<Path> found = Files.newDirectoryStream(folder, name)) {
      List<Path> files = new ArrayList<>();
      found.forEach(files::add);
      files.sort(Comparator.comparing(PictureRun::nameOf));
      return files;
    } catch (IOException | PatternSyntaxException | DirectoryIteratorException e) {
      return List.of();
    }
  }

  private static String ending(String name) {
    return name.substring(name.lastIndexOf('.') + 1).toLowerCase(Locale.ROOT);
  }

  /**
   * Makes sure that no two pictures would be written to the same folder.
   *
   * @throws IllegalArgumentException if two would
   */
  static void checkFolders(List<Path> pictures) {
    Map<String, Path> taken = new LinkedHashMap<>();
    for (Path picture : pictures) {
      // Some systems do not tell upper from lower case, or an accent from a letter that has it.
      String folder =
          Normalizer.normalize(FolderName.of(PictureRun.nameOf(picture)), Normalizer.Form.NFC)
              .toLowerCase(Locale.ROOT);
      @Nullable Path other = taken.putIfAbsent(folder, picture);
      if (other != null) {
        throw new IllegalArgumentException(
            other
                + " and "
                + picture
                + " would both be written to one folder; rename one or measure it with another"
                + " --out");
      }
    }
  }
}
