package wickmark.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import wickmark.cli.example.ExampleFiles;
import wickmark.cli.table.TextTable;

/** Writes the example pictures. */
@Command(
    name = "example",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    description = {
      "Writes example pictures to try everything on.",
      "They are drawn, not photographed: a bakery wants to know which food colourings of its"
          + " cupboard are in an icing. All names and figures in them are invented."
    })
final class ExampleCommand implements Callable<Integer> {
  @Spec private @Nullable CommandSpec spec;

  @Parameters(paramLabel = "DIR", description = "Folder to write to; it is made if needed.")
  private Path folder = Path.of("");

  @Option(names = "--replace", description = "Replace files of the same name.")
  private boolean replace;

  @Override
  public Integer call() {
    CommandSpec command = Objects.requireNonNull(spec, "set before the command is called");
    PrintWriter out = command.commandLine().getOut();
    PrintWriter err = command.commandLine().getErr();
    List<String> names = ExampleFiles.names();
    try {
      Files.createDirectories(folder);
      for (String name : names) {
        if (!replace && Files.exists(folder.resolve(name))) {
          err.println(
              "There is a file "
                  + TextTable.printable(folder.resolve(name).toString())
                  + " already; use --replace or another folder.");
          return ExitCode.BAD_USAGE;
        }
      }
      for (String name : names) {
        ExampleFiles.copy(name, folder);
        out.println(folder.resolve(name));
      }
      return ExitCode.DONE;
    } catch (IOException e) {
      err.println(
          "The examples cannot be written to "
              + TextTable.printable(folder.toString())
              + ": "
              + e.getMessage());
      return ExitCode.DEFECT;
    } finally {
      out.flush();
      err.flush();
    }
  }
}
