package wickmark.cli;

import picocli.CommandLine;
import picocli.CommandLine.Command;

/** The root command. */
@Command(
    name = "wickmark",
    description = "Measures photos and scans of dried paper-chromatography strips.",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class)
public final class Wickmark {
  /** Runs the command line and ends the process with its exit code. */
  public static void main(String[] arguments) {
    System.exit(new CommandLine(new Wickmark()).execute(arguments));
  }
}
