package wickmark.cli.photo;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;

/** Reads a file once, whole, into memory, and refuses what is no ordinary file of a fair size. */
final class BoundedFile {
  /** A 16-bit RGB picture of 120 megapixels, hardly compressed, is near this size. */
  static final long LARGEST_BYTES = 512L << 20;

  private BoundedFile() {}

  /**
   * Returns the bytes of the file.
   *
   * @param shown the name to use in messages
   */
  static byte[] read(Path file, String shown) throws UnreadablePictureException {
    try {
      BasicFileAttributes attributes = Files.readAttributes(file, BasicFileAttributes.class);
      if (attributes.isDirectory()) {
        throw new UnreadablePictureException(shown, "it is a folder, not a picture.");
      }
      if (!attributes.isRegularFile()) {
        throw new UnreadablePictureException(
            shown, "it is a pipe or a device, and Wickmark reads ordinary files only.");
      }
      if (attributes.size() > LARGEST_BYTES) {
        throw tooLarge(shown);
      }
      byte[] bytes = readWhole(file, shown);
      BasicFileAttributes after = Files.readAttributes(file, BasicFileAttributes.class);
      if (bytes.length != attributes.size()
          || after.size() != attributes.size()
          || !after.lastModifiedTime().equals(attributes.lastModifiedTime())) {
        throw new UnreadablePictureException(shown, "it was changed while it was read.");
      }
      return bytes;
    } catch (NoSuchFileException e) {
      throw new UnreadablePictureException(shown, "there is no such file.");
    } catch (AccessDeniedException e) {
      throw new UnreadablePictureException(shown, "you have no permission to read it.");
    } catch (IOException e) {
      throw new UnreadablePictureException(
          shown, "the system reports \"" + e.getMessage() + "\" while reading.");
    }
  }

  /** The size may change while the file is read, so the bound is kept here once more. */
  private static byte[] readWhole(Path file, String shown)
      throws IOException, UnreadablePictureException {
    try (InputStream in = Files.newInputStream(file)) {
      byte[] bytes = in.readNBytes((int) LARGEST_BYTES + 1);
      if (bytes.length > LARGEST_BYTES) {
        throw tooLarge(shown);
      }
      return bytes;
    }
  }

  private static UnreadablePictureException tooLarge(String shown) {
    return new UnreadablePictureException(
        shown, "the file is larger than " + (LARGEST_BYTES >> 20) + " MB.");
  }
}
