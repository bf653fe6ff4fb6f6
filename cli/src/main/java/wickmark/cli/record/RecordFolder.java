package wickmark.cli.record;

import java.io.IOException;
import java.nio.file.DirectoryIteratorException;
import java.nio.file.DirectoryStream;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.NotDirectoryException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.locks.ReentrantReadWriteLock;
import java.util.stream.Stream;

/**
 * The folder of one record. The files are written into a folder beside it and moved into place.
 *
 * <ul>
 *   <li>A new folder appears whole, by one move.
 *   <li>An existing record is replaced in an order in which every file that is there belongs to the
 *       record that is there: first the old files made from the record go, then the record is
 *       exchanged by one move, then the new files come. Other files in the folder stay.
 * </ul>
 */
public final class RecordFolder {
  /** The record itself; the other files are made from it. */
  public static final String RECORD = "record.json";

  public static final String TABLE = "spots.csv";
  public static final String REPORT = "report.html";
  public static final String STRAIGHTENED = "straightened.png";
  private static final List<String> FILES = List.of(RECORD, TABLE, REPORT, STRAIGHTENED);
  private static final String TEMPORARY = ".wickmark-";

  /** Writing takes well under a second; what is older was left by a run that was killed. */
  private static final Duration LEFT_BEHIND = Duration.ofHours(1);

  /** Held for reading while files are written, and for writing by the process when it ends. */
  private static final ReentrantReadWriteLock WRITING = new ReentrantReadWriteLock();

  private final Path out;
  private final Path folder;

  public RecordFolder(Path out, String name) {
    this.out = out;
    this.folder = out.resolve(name);
  }

  public Path path() {
    return folder;
  }

  /** Returns whether a record is there already. */
  public boolean holdsRecord() {
    return Files.exists(folder.resolve(RECORD), LinkOption.NOFOLLOW_LINKS);
  }

  /** Returns whether a record and all files made from it are there. */
  public boolean isComplete() {
    return FILES.stream().allMatch(name -> Files.isRegularFile(folder.resolve(name)));
  }

  /**
   * Writes the files.
   *
   * @param files by name; {@link #RECORD} is one of them
   * @throws RecordExistsException if there is a record and it is not to be replaced
   */
  public void write(Map<String, byte[]> files, boolean replace) throws IOException {
    WRITING.readLock().lock();
    try {
      writeBesideAndMove(files, replace);
    } finally {
      WRITING.readLock().unlock();
    }
  }

  /** Waits until what is being written is whole, and lets nothing be written any more. */
  public static void endWriting() {
    WRITING.writeLock().lock();
  }

  /** Deletes what runs that were killed in the middle of writing left in the folder. */
  public static void sweep(Path out, Instant now) {
    try (DirectoryStream<Path> left = Files.newDirectoryStream(out, TEMPORARY + "*")) {
      for (Path folder : left) {
        if (Files.isDirectory(folder, LinkOption.NOFOLLOW_LINKS)
            && Files.getLastModifiedTime(folder).toInstant().isBefore(now.minus(LEFT_BEHIND))) {
          deleteWith(folder);
        }
      }
    } catch (IOException | DirectoryIteratorException e) {
      // There is no such folder yet, or it is not ours to clean: writing will say so.
    }
  }

  private void writeBesideAndMove(Map<String, byte[]> files, boolean replace) throws IOException {
    Files.createDirectories(out);
    Path beside = Files.createTempDirectory(out, TEMPORARY);
    try {
      for (Map.Entry<String, byte[]> file : files.entrySet()) {
        Files.write(beside.resolve(file.getKey()), file.getValue());
      }
      if (!Files.exists(folder, LinkOption.NOFOLLOW_LINKS) && movedWhole(beside)) {
        return;
      }
      if (!Files.isDirectory(folder, LinkOption.NOFOLLOW_LINKS)) {
        throw new NotDirectoryException(folder.toString());
      }
      FolderLock lock = FolderLock.of(out);
      try {
        moveFiles(beside, files.keySet().stream().sorted().toList(), replace);
      } finally {
        lock.close();
      }
    } finally {
      deleteWith(beside);
    }
  }

  /**
   * Moves the folder to its place, if there is still none. Which exception says that another run
   * was faster depends on the file system (POSIX rename: EEXIST or ENOTEMPTY), so the place is
   * asked.
   */
  boolean movedWhole(Path beside) throws IOException {
    makeReadable(beside);
    try {
      Files.move(beside, folder, StandardCopyOption.ATOMIC_MOVE);
      return true;
    } catch (FileSystemException e) {
      if (Files.exists(folder, LinkOption.NOFOLLOW_LINKS)) {
        return false;
      }
      throw e;
    }
  }

  /** Temporary folders are private; a record should be as readable as any new folder. */
  private void makeReadable(Path beside) throws IOException {
    if (Files.getFileStore(out).supportsFileAttributeView("posix")) {
      Path probe = Files.createDirectory(beside.resolve("permissions"));
      Files.setPosixFilePermissions(beside, Files.getPosixFilePermissions(probe));
      Files.delete(probe);
    }
  }

  private void moveFiles(Path beside, List<String> names, boolean replace) throws IOException {
    if (holdsRecord() && !replace) {
      throw new RecordExistsException(folder);
    }
    List<String> made = new ArrayList<>(names);
    made.remove(RECORD);
    for (String name : made) {
      Files.deleteIfExists(folder.resolve(name));
    }
    move(beside, RECORD);
    for (String name : made) {
      move(beside, name);
    }
  }

  private void move(Path beside, String name) throws IOException {
    Files.move(
        beside.resolve(name),
        folder.resolve(name),
        StandardCopyOption.ATOMIC_MOVE,
        StandardCopyOption.REPLACE_EXISTING);
  }

  private static void deleteWith(Path beside) throws IOException {
    if (!Files.isDirectory(beside)) {
      return;
    }
    try (Stream<Path> left = Files.list(beside)) {
      for (Path file : left.toList()) {
        Files.deleteIfExists(file);
      }
    }
    Files.deleteIfExists(beside);
  }
}
