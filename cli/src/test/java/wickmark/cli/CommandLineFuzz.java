package wickmark.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import picocli.CommandLine;
import wickmark.cli.measuring.SampleStrip;

/** Values of options, and the table of pictures, under a search that is guided by coverage. */
public final class CommandLineFuzz {
  private static final String[] OPTIONS = {
    "--lanes", "--unknown", "--lane-count", "--origin", "--dpi", "--strip-width", "--strip-height",
    "--span", "--corners", "--bottom", "--baseline", "--front", "--ignore", "--spot-centre",
    "--tolerance-rf", "--tolerance-colour", "--threads", "--title", "--list"
  };

  private CommandLineFuzz() {}

  /** A line is an option, chosen by its first letter, and its value. The picture does not exist. */
  public static void fuzzerTestOneInput(byte[] data) throws IOException {
    List<String> arguments = new ArrayList<>(List.of("measure", "no-such-picture.jpg"));
    Path table = Files.createTempFile("list", ".csv");
    try {
      for (String line : new String(data, StandardCharsets.UTF_8).split("\n", 8)) {
        if (!line.isEmpty()) {
          String option = OPTIONS[line.charAt(0) % OPTIONS.length];
          if (option.equals("--list")) {
            Files.writeString(table, line.substring(1).replace('|', '\n').replace('\uFFFD', '?'));
            arguments.add("--list=" + table);
          } else {
            arguments.add(option + "=" + line.substring(1));
          }
        }
      }
      StringWriter err = new StringWriter();
      CommandLine program = Wickmark.commandLine(SampleStrip.measuring());
      program.setOut(new PrintWriter(new StringWriter()));
      program.setErr(new PrintWriter(err));
      int exitCode = program.execute(arguments.toArray(new String[0]));
      if (exitCode != ExitCode.BAD_USAGE && exitCode != ExitCode.UNREADABLE) {
        throw new IllegalStateException(exitCode + " of " + arguments + ": " + err);
      }
    } finally {
      Files.delete(table);
    }
  }
}
