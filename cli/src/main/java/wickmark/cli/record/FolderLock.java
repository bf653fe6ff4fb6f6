package wickmark.cli.record;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.NotDirectoryException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import org.jspecify.annotations.Nullable;

/**
 * Keeps other runs out of a record folder while its files are exchanged, so that two runs with
 * other settings cannot leave one's record with the other's table. The system lets go of it when a
 * process dies, however it dies.
 */
final class FolderLock {
  private static final String NAME = ".wickmark-lock";

  private final Path file;
  private final FileChannel channel;

  private FolderLock(Path file, FileChannel channel) {
    this.file = file;
    this.channel = channel;
  }

  /** Waits for the lock of a folder. */
  static FolderLock of(Path folder) throws IOException {
    if (!Files.isDirectory(folder, LinkOption.NOFOLLOW_LINKS)) {
      throw new NotDirectoryException(folder.toString());
    }
    Path file = folder.resolve(NAME);
    while (true) {
      FileChannel channel =
          FileChannel.open(file, StandardOpenOption.CREATE, StandardOpenOption.WRITE);
      boolean held = false;
      try {
        @Nullable Object opened = key(file);
        channel.lock();
        // Whoever had it before has deleted the file: then this is a lock that nobody else sees.
        held = opened == null ? Files.exists(file) : opened.equals(key(file));
      } finally {
        if (!held) {
          channel.close();
        }
      }
      if (held) {
        return new FolderLock(file, channel);
      }
    }
  }

  private static @Nullable Object key(Path file) throws IOException {
    try {
      return Files.readAttributes(file, java.nio.file.attribute.BasicFileAttributes.class)
          .fileKey();
    } catch (NoSuchFileException e) {
      return null;
    }
  }

  /** Lets others go on. */
  void close() throws IOException {
    Files.deleteIfExists(file);
    channel.close();
  }
}
