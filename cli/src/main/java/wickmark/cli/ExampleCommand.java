package wickmark.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import wickmark.cli.example.ExampleFiles;

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
  @Mixin private Screen screen = new Screen();

  @Parameters(paramLabel = "DIR", description = "Folder to write to; it is made if needed.")
  private Path folder = Path.of("");

  @Option(names = "--replace", description = "Replace files of the same name.")
  private boolean replace;

  @Override
  public Integer call() {
    List<String> names = ExampleFiles.names();
    try {
      Files.createDirectories(folder);
      for (String name : names) {
        if (!replace && Files.exists(folder.resolve(name))) {
          screen.say(
              "There is a file "
                  + folder.resolve(name)
                  + " already; use --replace or another folder.");
          return ExitCode.BAD_USAGE;
        }
      }
      for (String name : names) {
        ExampleFiles.copy(name, folder);
        screen.out().println(folder.resolve(name));
      }
      return ExitCode.DONE;
    } catch (IOException e) {
      screen.say("The examples cannot be written to " + folder + ": " + e.getMessage());
      return ExitCode.DEFECT;
    } finally {
      screen.flush();
    }
  }
}
