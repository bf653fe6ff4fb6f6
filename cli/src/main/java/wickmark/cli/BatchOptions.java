package wickmark.cli;

import java.nio.file.Path;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** What concerns many pictures together. */
final class BatchOptions {
  private static final int MOST_THREADS = 256;

  /** What a photo of 12 megapixels needs while it is measured, and some more. */
  private static final long BYTES_A_PICTURE = 300L << 20;

  @Option(
      names = "--list",
      paramLabel = "FILE",
      description =
          "A table (CSV) of pictures, each with its lanes and unknown: columns picture, lanes,"
              + " unknown. Where a cell is empty, what the options say holds.")
  @Nullable Path list;

  @Option(
      names = "--threads",
      paramLabel = "N",
      description =
          "Measure N pictures at a time (default: as many as the machine has processors and memory"
              + " for). The results are the same.")
  @Nullable Integer threads;

  /**
   * Returns how many pictures to measure at a time.
   *
   * @throws IllegalArgumentException if what was said cannot be done
   */
  int threads() {
    if (threads == null) {
      long forMemory = Runtime.getRuntime().maxMemory() / BYTES_A_PICTURE;
      return (int) Math.max(1, Math.min(Runtime.getRuntime().availableProcessors(), forMemory));
    }
    if (threads < 1 || threads > MOST_THREADS) {
      throw new IllegalArgumentException(
          "--threads must be 1 to " + MOST_THREADS + ", was " + threads);
    }
    return threads;
  }
}
