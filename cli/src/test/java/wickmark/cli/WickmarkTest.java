package wickmark.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import wickmark.cli.example.ExampleFiles;
import wickmark.cli.measuring.SampleStrip;

class WickmarkTest {
  @TempDir Path folder;

  private static CommandLineRun run(Object... arguments) {
    return CommandLineRun.of(SampleStrip.measuring(), arguments);
  }

  @Test
  void printsItsVersionFromTheBuild() {
    assertThat(run("--version").out().strip()).matches("wickmark \\d+\\.\\d+\\.\\d+.*");
  }

  @ParameterizedTest
  @ValueSource(strings = {"measure", "check", "reproduce", "pool", "plan", "card", "example"})
  void everyCommandHasHelpAndVersion(String command) {
    assertThat(run(command, "--help").out()).startsWith("Usage: wickmark " + command);
    assertThat(run(command, "--version").out()).startsWith("wickmark ");
  }

  /** A command that comes first is set up alone. */
  @Test
  void aCommandAloneIsWhatItIsAmongAll() {
    Map<String, CommandLine> all = Wickmark.commandLine(SampleStrip.measuring()).getSubcommands();

    assertThat(all).hasSize(7);
    all.forEach(
        (name, among) -> {
          Map<String, CommandLine> alone =
              Wickmark.commandLine(SampleStrip.measuring(), name, "--help").getSubcommands();
          assertThat(alone).containsOnlyKeys(name);
          assertThat(among.getCommandSpec().name()).isEqualTo(name);
          assertThat(among.getCommand().getClass().getAnnotation(Command.class).name())
              .isEqualTo(name);
          assertThat(alone.get(name).getUsageMessage()).isEqualTo(among.getUsageMessage());
        });
  }

  @Test
  void withoutACommandItShowsWhatThereIs() {
    assertThat(run().out()).contains("measure").contains("reproduce").contains("example");
  }

  @Test
  void anUnknownCommandIsBadUsage() {
    CommandLineRun run = run("mesure", "strip.jpg");

    assertThat(run.exitCode()).isEqualTo(ExitCode.BAD_USAGE);
    assertThat(run.err())
        .startsWith("There is no command mesure.")
        .contains("wickmark measure")
        .endsWith("Try: wickmark --help" + System.lineSeparator());
  }

  @Test
  void writesTheExamplesAndDoesNotOverwriteThem() {
    CommandLineRun first = run("example", folder);

    assertThat(first.exitCode()).isEqualTo(ExitCode.DONE);
    for (String name : ExampleFiles.names()) {
      assertThat(folder.resolve(name)).isNotEmptyFile();
      assertThat(run("example", folder).exitCode()).isEqualTo(ExitCode.BAD_USAGE);
    }
  }
}
