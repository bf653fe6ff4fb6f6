package wickmark.cli.program;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/**
 * Runs the consoles of the README one after the other in an empty folder, as a reader would, and
 * compares what they print. With {@code -Dreadme.write=true} it puts into the README what they
 * print now; read the difference before you keep it.
 */
@DisabledOnOs(
    value = OS.WINDOWS,
    disabledReason = "the README's consoles are those of a Unix shell")
class ReadmeIT {
  private static final Path README = Path.of("..", "README.md");

  @TempDir Path folder;

  /** The build has been made already, and the program is on the PATH. */
  private static String withoutTheBuild(String command) {
    return command
        .replace("mvn -q -DskipTests package && ", "")
        .replace("cli/target/wickmark/bin/", "");
  }

  @Test
  void consolesPrintWhatTheReadmeSays() throws IOException {
    String readme = Files.readString(README, StandardCharsets.UTF_8);
    Map<String, String> said = new LinkedHashMap<>();
    Map<String, String> printed = new LinkedHashMap<>();
    for (ConsoleBlocks.Block block : ConsoleBlocks.of(readme)) {
      said.put(block.command(), block.output());
      printed.put(block.command(), ProgramRun.in(folder, withoutTheBuild(block.command())).said());
    }
    if (Boolean.getBoolean("readme.write")) {
      Files.writeString(
          README, ConsoleBlocks.rewritten(readme, printed::get), StandardCharsets.UTF_8);
      return;
    }

    assertThat(said).isNotEmpty();
    assertThat(printed).isEqualTo(said);
  }
}
