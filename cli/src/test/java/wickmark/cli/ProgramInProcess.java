package wickmark.cli;

import java.io.PrintWriter;
import java.io.StringWriter;
import picocli.CommandLine;
import wickmark.cli.measuring.PictureMeasuring;
import wickmark.cli.measuring.StripMeasuring;

/** The whole program but for ending the process, for those in other packages. */
public final class ProgramInProcess {
  private ProgramInProcess() {}

  /**
   * Runs a command line, what goes to standard error into the writer, and returns the exit code.
   */
  public static int run(PrintWriter err, String... arguments) {
    return run(new PictureMeasuring(), err, arguments);
  }

  /** The same with another way to measure. */
  public static int run(StripMeasuring measuring, PrintWriter err, String... arguments) {
    CommandLine line = Wickmark.commandLine(measuring);
    line.setOut(new PrintWriter(new StringWriter()));
    line.setErr(err);
    return line.execute(arguments);
  }
}
