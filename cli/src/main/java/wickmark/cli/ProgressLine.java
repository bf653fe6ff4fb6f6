package wickmark.cli;

import java.io.PrintWriter;
import java.time.Duration;
import me.tongfei.progressbar.ProgressBar;
import me.tongfei.progressbar.ProgressBarBuilder;
import me.tongfei.progressbar.ProgressBarConsumer;
import me.tongfei.progressbar.ProgressBarStyle;

/**
 * A bar in the terminal's last line, with the time gone and the time left. It is taken away before
 * anything is printed, and put back after it. It has no colours.
 */
final class ProgressLine implements Progress {
  /**
   * Every terminal has as many columns; the bar leaves one free, or some would begin a new line.
   */
  private static final int WIDTH = 79;

  private static final Duration REFRESHED = Duration.ofMillis(500);

  private final Line line;
  private final ProgressBar bar;

  ProgressLine(int pictures, PrintWriter err) {
    this.line = new Line(err);
    this.bar =
        new ProgressBarBuilder()
            .setTaskName("Measuring")
            .setUnit(" pictures", 1)
            .setInitialMax(pictures)
            .setStyle(ProgressBarStyle.ASCII)
            .setUpdateIntervalMillis((int) REFRESHED.toMillis())
            .setConsumer(line)
            .build();
  }

  @Override
  public void after(PictureResult result, Runnable printing) {
    line.aside(printing);
    bar.step();
  }

  @Override
  public void close() {
    bar.close();
    line.end();
  }

  /** The line itself: the library's own thread writes it, the printing thread takes it away. */
  private static final class Line implements ProgressBarConsumer {
    private final PrintWriter err;
    private String shown = "";
    private boolean ended;

    Line(PrintWriter err) {
      this.err = err;
    }

    @Override
    public int getMaxRenderedLength() {
      return WIDTH;
    }

    @Override
    public synchronized void accept(String rendered) {
      takeAway();
      shown = ended ? "" : rendered;
      put();
    }

    synchronized void aside(Runnable printing) {
      takeAway();
      printing.run();
      put();
    }

    @Override
    public synchronized void clear() {
      takeAway();
      shown = "";
    }

    @Override
    public void close() {
      end();
    }

    /** Nothing is shown any more: the library draws once again at its end. */
    synchronized void end() {
      clear();
      ended = true;
    }

    private void takeAway() {
      if (!shown.isEmpty()) {
        err.print("\r" + " ".repeat(WIDTH) + "\r");
        err.flush();
      }
    }

    private void put() {
      err.print(shown);
      err.flush();
    }
  }
}
