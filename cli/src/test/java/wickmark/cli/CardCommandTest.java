package wickmark.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import wickmark.cli.measuring.SampleStrip;

class CardCommandTest {
  @TempDir Path folder;

  private static CommandLineRun run(Object... arguments) {
    return CommandLineRun.of(SampleStrip.measuring(), arguments);
  }

  @ParameterizedTest
  @CsvSource({"a4,166 × 221 mm", "A5,104 × 148 mm", "letter,171 × 203 mm"})
  void writesTheSheetAndSaysWhatFitsOnIt(String sheet, String place) {
    Path file = folder.resolve("card.pdf");

    CommandLineRun run = run("card", file, "--sheet", sheet);

    assertThat(run.exitCode()).isEqualTo(ExitCode.DONE);
    assertThat(run.out()).contains(place).contains("--printed-length");
    assertThat(file).isNotEmptyFile();
  }

  @Test
  void doesNotReplaceAnotherFileUnasked() throws IOException {
    Path file = Files.writeString(folder.resolve("card.pdf"), "mine");

    CommandLineRun refused = run("card", file);

    assertThat(refused.exitCode()).isEqualTo(ExitCode.BAD_USAGE);
    assertThat(refused.err()).contains("--replace");
    assertThat(file).hasContent("mine");
    assertThat(run("card", file, "--replace").exitCode()).isEqualTo(ExitCode.DONE);
    assertThat(Files.size(file)).isGreaterThan(1000);
  }

  @ParameterizedTest
  @ValueSource(strings = {"a3", "", "210x297"})
  void refusesASheetThatItHasNoCardFor(String sheet) {
    CommandLineRun run = run("card", folder.resolve("card.pdf"), "--sheet=" + sheet);

    assertThat(run.exitCode()).isEqualTo(ExitCode.BAD_USAGE);
    assertThat(run.err()).contains("a4, a5 or letter");
  }

  @ParameterizedTest
  @ValueSource(strings = {"0", "9.7", "1000", "NaN"})
  void measureRefusesAPrintedLengthThatNoPrinterPrints(String length) {
    CommandLineRun run = run("measure", folder.resolve("strip.jpg"), "--printed-length=" + length);

    assertThat(run.exitCode()).isEqualTo(ExitCode.BAD_USAGE);
    assertThat(run.err()).contains("50 to 200");
  }

  @Test
  void measureTakesThePrintedLengthOrAnotherScaleNotBoth() {
    CommandLineRun run =
        run("measure", folder.resolve("strip.jpg"), "--printed-length", 99, "--dpi", 300);

    assertThat(run.exitCode()).isEqualTo(ExitCode.BAD_USAGE);
    assertThat(run.err()).contains("one way only");
  }
}
