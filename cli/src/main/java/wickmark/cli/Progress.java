package wickmark.cli;

import java.io.PrintWriter;
import java.util.Locale;

/** Tells where a run over pictures stands, beside what is printed of each. */
interface Progress extends AutoCloseable {
  /**
   * A picture is done.
   *
   * @param printing prints what came of it
   */
  void after(PictureResult result, Runnable printing);

  /** All are done, or the run ends. */
  @Override
  void close();

  /**
   * Returns a bar with the time left where a person looks on at a terminal, plain lines elsewhere,
   * and nothing for a single picture.
   *
   * @param onTerminal whether standard error is a terminal that can go back to a line's start
   */
  static Progress of(int pictures, PrintWriter err, boolean onTerminal) {
    if (pictures < 2) {
      return new NoProgress();
    }
    return onTerminal ? new ProgressLine(pictures, err) : new ProgressLines(pictures, err);
  }

  /** Whether the launcher says that standard error is a terminal: Java itself cannot tell. */
  static boolean isOnTerminal() {
    return "yes".equals(System.getProperty("wickmark.terminal", "").toLowerCase(Locale.ROOT));
  }

  /** For one picture, which is done before a bar could be read. */
  final class NoProgress implements Progress {
    @Override
    public void after(PictureResult result, Runnable printing) {
      printing.run();
    }

    @Override
    public void close() {}
  }
}
