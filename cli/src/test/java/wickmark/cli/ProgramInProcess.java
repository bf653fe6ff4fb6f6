package wickmark.cli;

import java.io.PrintWriter;
import java.io.StringWriter;
import picocli.CommandLine;
import wickmark.cli.measuring.PictureMeasuring;

/** The whole program but for ending the process, for those in other packages. */
public final class ProgramInProcess {
  private ProgramInProcess() {}

  /**
   * Runs a command line, what goes to standard error into the writer, and returns the exit code.
   */
  public static int run(PrintWriter err, String... arguments) {
    CommandLine line = Wickmark.commandLine(new PictureMeasuring());
    line.setOut(new PrintWriter(new StringWriter()));
    line.setErr(err);
    return line.execute(arguments);
  }
}
