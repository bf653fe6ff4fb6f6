package wickmark.cli;

import java.io.PrintWriter;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;
import wickmark.cli.table.TextTable;

/** Where a command prints: results on standard output, all talk on standard error. */
@Command // a mixin without options is none otherwise
final class Screen {
  @Spec(Spec.Target.MIXEE)
  private @Nullable CommandSpec command;

  private CommandLine line() {
    return Objects.requireNonNull(command, "set before the command is called").commandLine();
  }

  PrintWriter out() {
    return line().getOut();
  }

  PrintWriter err() {
    return line().getErr();
  }

  /** A line of talk, in which names of files and samples may stand as they are. */
  void say(String line) {
    err().println(TextTable.printable(line));
  }

  /** Says what is the matter with an input. */
  void say(Exception matter) {
    say(String.valueOf(matter.getMessage()));
  }

  void flush() {
    out().flush();
    err().flush();
  }

  /** A command line that is wrong, to throw; the message goes before a hint at the help. */
  ParameterException wrong(String message) {
    return new ParameterException(line(), message);
  }

  /** The same, for what was found wrong elsewhere. */
  ParameterException wrong(String message, Exception cause) {
    return new ParameterException(line(), message, cause);
  }
}
