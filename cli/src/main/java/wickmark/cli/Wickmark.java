package wickmark.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;
import wickmark.cli.measuring.PictureMeasuring;
import wickmark.cli.measuring.StripMeasuring;
import wickmark.cli.table.TextTable;

/** The root command. */
@Command(
    name = "wickmark",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    synopsisSubcommandLabel = "COMMAND",
    description = {
      "Measures photos and scans of dried paper-chromatography strips: baseline, front, lanes and"
          + " spots, distances in millimetres, Rf with its uncertainty, and which references"
          + " explain the unknown."
    },
    footer = {
      "",
      "Exit codes: 0 all done, 1 a fault of the program, 2 the command line is wrong, 3 an input"
          + " cannot be read, 4 a picture cannot be measured, 5 done but a check failed."
    })
public final class Wickmark implements Runnable {
  @Spec private @Nullable CommandSpec spec;

  private Wickmark() {}

  /** Runs the command line and ends the process with its exit code. */
  public static void main(String[] arguments) {
    System.exit(commandLine(new PictureMeasuring(), arguments).execute(arguments));
  }

  /**
   * Returns the command line for arguments: where a command comes first, with it alone, since to
   * set up the options of all takes longer than a start of Java.
   */
  static CommandLine commandLine(StripMeasuring measuring, String... arguments) {
    Map<String, Supplier<Object>> commands = commands(measuring);
    if (arguments.length > 0 && commands.containsKey(arguments[0])) {
      commands.keySet().retainAll(List.of(arguments[0]));
    }
    CommandLine line = new CommandLine(new Wickmark());
    commands.forEach((name, command) -> line.addSubcommand(name, command.get()));
    // A file may be called "@strip.jpg".
    line.setExpandAtFiles(false);
    line.setUsageHelpWidth(100);
    line.setParameterExceptionHandler(
        (e, wrongArguments) -> {
          CommandLine command = e.getCommandLine();
          PrintWriter err = command.getErr();
          err.println(TextTable.printable(wrong(e)));
          CommandLine.UnmatchedArgumentException.printSuggestions(e, err);
          err.println("Try: " + command.getCommandSpec().qualifiedName() + " --help");
          err.flush();
          return ExitCode.BAD_USAGE;
        });
    line.setExecutionExceptionHandler(
        (e, command, result) -> {
          command.getErr().println("wickmark: " + FaultFile.write(Path.of(""), "wickmark", e));
          command.getErr().flush();
          return ExitCode.DEFECT;
        });
    return line;
  }

  /** The commands by their names, in the order in which the help has them. */
  private static Map<String, Supplier<Object>> commands(StripMeasuring measuring) {
    Map<String, Supplier<Object>> commands = new LinkedHashMap<>();
    commands.put("measure", () -> new MeasureCommand(measuring));
    commands.put("check", CheckCommand::new);
    commands.put("reproduce", () -> new ReproduceCommand(measuring));
    commands.put("pool", PoolCommand::new);
    commands.put("plan", PlanCommand::new);
    commands.put("card", CardCommand::new);
    commands.put("example", ExampleCommand::new);
    return commands;
  }

  /** What is wrong; the parser itself knows no commands, only arguments that it cannot match. */
  private static String wrong(CommandLine.ParameterException e) {
    return e.getCommandLine().getParent() == null
            && e instanceof CommandLine.UnmatchedArgumentException unmatched
            && !unmatched.isUnknownOption()
        ? "There is no command " + unmatched.getUnmatched().get(0) + "."
        : String.valueOf(e.getMessage());
  }

  /** Without a command the help is what is wanted. */
  @Override
  public void run() {
    CommandLine line =
        Objects.requireNonNull(spec, "set before the command is called").commandLine();
    line.usage(line.getOut());
  }
}
