package wickmark.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import org.junit.jupiter.api.Test;

class ProgressTest {
  private final StringWriter shown = new StringWriter();

  private static PictureResult result(String name) {
    return PictureResult.failed(name, ExitCode.UNREADABLE, name + " cannot be read.");
  }

  private void run(int pictures, boolean onTerminal) {
    PrintWriter err = new PrintWriter(shown);
    try (Progress progress = Progress.of(pictures, err, onTerminal)) {
      for (int i = 1; i <= pictures; i++) {
        PictureResult result = result("strip-" + i + ".jpg");
        progress.after(result, () -> result.messages().forEach(err::println));
      }
    }
    err.flush();
  }

  @Test
  void elsewhereEachPictureHasALine() {
    run(2, false);

    assertThat(shown.toString())
        .startsWith("[1 of 2] strip-1.jpg: not measured")
        .contains("[2 of 2] strip-2.jpg: not measured")
        .doesNotContain("\r");
  }

  @Test
  void onATerminalABarShowsHowFarItIs() {
    run(3, true);

    assertThat(shown.toString()).containsPattern("Measuring .*3/3 pictures");
  }

  @Test
  void nothingOfTheBarStaysAmongWhatIsPrinted() {
    run(3, true);

    String printed = shown.toString().replaceAll("[^\n]*\r", "");
    assertThat(printed.lines().map(String::strip).filter(l -> !l.isEmpty()))
        .containsExactly(
            "strip-1.jpg cannot be read.",
            "strip-2.jpg cannot be read.",
            "strip-3.jpg cannot be read.");
  }

  @Test
  void theBarHasNoColoursAndFitsIntoEightyColumns() {
    run(1000, true);

    assertThat(shown.toString()).doesNotContain("\u001b");
    assertThat(shown.toString().split("[\r\n]+")).allMatch(line -> line.length() <= 79);
  }

  @Test
  void aSinglePictureNeedsNone() {
    run(1, true);

    assertThat(shown.toString().strip()).isEqualTo("strip-1.jpg cannot be read.");
  }
}
