package wickmark.cli.record;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.concurrent.locks.ReentrantLock;

/**
 * Keeps other runs out of the records of an output folder while the files of one are exchanged, so
 * that two runs with other settings cannot leave one's record with the other's table. The system
 * lets go of the lock when a process dies, however it dies.
 *
 * <p>The locked file stays in the folder. Were it deleted, a run that had opened it before and one
 * that makes it anew would each hold a lock, on two files of one name.
 */
final class FolderLock {
  static final String NAME = ".wickmark-lock";

  /**
   * The system's lock belongs to the process, not to the thread, and is gone as soon as the process
   * closes the file anywhere: threads take turns before they ask for it.
   */
  private static final ReentrantLock TURN = new ReentrantLock();

  private final FileChannel channel;

  private FolderLock(FileChannel channel) {
    this.channel = channel;
  }

  /** Waits for the lock of an output folder. */
  static FolderLock of(Path out) throws IOException {
    TURN.lock();
    FolderLock lock = null;
    try {
      FileChannel channel =
          FileChannel.open(
              out.resolve(NAME),
              StandardOpenOption.CREATE,
              StandardOpenOption.WRITE,
              LinkOption.NOFOLLOW_LINKS);
      try {
        channel.lock();
        lock = new FolderLock(channel);
      } finally {
        if (lock == null) {
          channel.close();
        }
      }
      return lock;
    } finally {
      if (lock == null) {
        TURN.unlock();
      }
    }
  }

  /** Lets others go on. */
  void close() throws IOException {
    try {
      channel.close();
    } finally {
      TURN.unlock();
    }
  }
}
