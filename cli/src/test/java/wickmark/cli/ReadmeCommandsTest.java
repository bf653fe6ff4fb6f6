package wickmark.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import picocli.CommandLine;
import wickmark.cli.measuring.SampleStrip;

/** Every command line that the README names is one that the program understands. */
class ReadmeCommandsTest {
  static List<String> commandLines() throws IOException {
    List<String> lines =
        Files.readString(Path.of("..", "README.md"), StandardCharsets.UTF_8)
            .lines()
            .filter(line -> line.startsWith("wickmark ") && !line.matches("wickmark [0-9].*"))
            .toList();
    assertThat(lines).hasSizeGreaterThan(5);
    return lines;
  }

  @ParameterizedTest
  @MethodSource("commandLines")
  void isUnderstood(String line) {
    List<String> words = Arrays.asList(line.split(" +"));
    CommandLine wickmark = Wickmark.commandLine(SampleStrip.measuring());

    assertThatCode(() -> wickmark.parseArgs(words.subList(1, words.size()).toArray(String[]::new)))
        .doesNotThrowAnyException();
  }
}
