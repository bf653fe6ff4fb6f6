package wickmark.cli;

import java.io.PrintWriter;
import java.io.StringWriter;
import picocli.CommandLine;
import wickmark.cli.measuring.StripMeasuring;

/** The command line run in this process, with what it said. */
record CommandLineRun(int exitCode, String out, String err) {
  static CommandLineRun of(StripMeasuring measuring, Object... arguments) {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    String[] texts = new String[arguments.length];
    for (int i = 0; i < arguments.length; i++) {
      texts[i] = arguments[i].toString();
    }
    CommandLine line = Wickmark.commandLine(measuring, texts);
    line.setOut(new PrintWriter(out));
    line.setErr(new PrintWriter(err));
    int exitCode = line.execute(texts);
    return new CommandLineRun(exitCode, out.toString(), err.toString());
  }
}
