package wickmark.cli;

import java.io.PrintWriter;
import wickmark.cli.record.RecordFolder;

/** What is said when somebody stops a run with Ctrl-C: every record that is there is whole. */
final class Interruption {
  private final Thread farewell;

  private Interruption(Thread farewell) {
    this.farewell = farewell;
  }

  static Interruption watch(PrintWriter err) {
    Thread farewell =
        new Thread(
            () -> {
              RecordFolder.endWriting();
              err.println(
                  "Stopped. What is done is kept; the same command again goes on from there.");
              err.flush();
            },
            "farewell");
    try {
      Runtime.getRuntime().addShutdownHook(farewell);
    } catch (IllegalStateException e) {
      // Somebody was quick: the process is ending, and nothing is done yet that could be kept.
    }
    return new Interruption(farewell);
  }

  void over() {
    try {
      Runtime.getRuntime().removeShutdownHook(farewell);
    } catch (IllegalStateException e) {
      // The process is ending already, and the farewell is being said.
    }
  }
}
