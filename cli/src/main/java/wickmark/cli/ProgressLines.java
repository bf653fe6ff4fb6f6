package wickmark.cli;

import java.io.PrintWriter;
import java.time.Duration;
import java.util.Locale;
import wickmark.cli.table.TextTable;

/** A line a picture, with the time left where it is worth telling. */
final class ProgressLines implements Progress {
  private static final Duration WORTH_TELLING = Duration.ofSeconds(20);

  private final int pictures;
  private final PrintWriter err;
  private final long startNanos = System.nanoTime();
  private int done;

  ProgressLines(int pictures, PrintWriter err) {
    this.pictures = pictures;
    this.err = err;
  }

  @Override
  public void after(PictureResult result, Runnable printing) {
    done++;
    err.println(line(result));
    printing.run();
  }

  @Override
  public void close() {}

  private String line(PictureResult result) {
    return String.format(
        Locale.ROOT,
        "[%d of %d%s] %s: %s",
        done,
        pictures,
        timeLeft(Duration.ofNanos(System.nanoTime() - startNanos)),
        TextTable.printable(result.picture()),
        result.outcome().words());
  }

  /** By the mean of the pictures so far; those measured before take hardly any time. */
  private String timeLeft(Duration soFar) {
    Duration left = soFar.multipliedBy(pictures - done).dividedBy(done);
    if (left.compareTo(WORTH_TELLING) < 0) {
      return "";
    }
    long seconds = left.toSeconds();
    return seconds < 100
        ? ", about " + seconds + " s left"
        : seconds < 6000
            ? ", about " + Math.round(seconds / 60.0) + " min left"
            : ", about " + Math.round(seconds / 3600.0) + " h left";
  }
}
