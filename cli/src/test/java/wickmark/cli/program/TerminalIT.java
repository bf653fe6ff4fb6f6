package wickmark.cli.program;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Map;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/**
 * What is for a terminal's eyes only: the bar that tells how far a run is, and the colours of the
 * help. The pictures are blank, so that each is refused at once.
 */
@DisabledOnOs(value = OS.WINDOWS, disabledReason = "terminals as on Unix")
class TerminalIT {
  private static final String MEASURE = "wickmark measure --threads=1 one.png two.png";
  private static final String HELP = "wickmark measure --help";

  /** Begins each change of colour: ECMA-48, 5th ed. 1991, control sequence introducer. */
  private static final String ESCAPE = "\u001b[";

  @TempDir static Path folder;

  @BeforeAll
  static void drawBlankPictures() throws IOException {
    for (String name : new String[] {"one.png", "two.png"}) {
      ImageIO.write(
          new BufferedImage(60, 90, BufferedImage.TYPE_INT_RGB),
          "png",
          folder.resolve(name).toFile());
    }
  }

  @Nested
  class Elsewhere {
    private String said(String command) {
      return ProgramRun.in(folder, command).said();
    }

    @Test
    void eachPictureHasALineAndThereIsNoBar() {
      assertThat(said(MEASURE))
          .contains("[1 of 2] one.png: not measured", "[2 of 2] two.png: not measured")
          .doesNotContain("\r", ESCAPE);
    }

    @Test
    void theHelpHasNoColours() {
      assertThat(said(HELP)).contains("Usage: wickmark measure").doesNotContain(ESCAPE);
    }
  }

  @Nested
  class OnATerminal {
    /** On a pseudo-terminal, which shows standard output and standard error alike. */
    private String shown(String command, Map<String, String> environment) {
      assumeTrue(
          ProgramRun.in(folder, "script --version").said().contains("util-linux"),
          "util-linux's script makes the pseudo-terminal");
      Map<String, String> all = new java.util.HashMap<>(Map.of("TERM", "xterm"));
      all.putAll(environment);
      return ProgramRun.in(
              folder,
              all,
              java.util.List.of("script", "--quiet", "--command", command, "/dev/null"))
          .said();
    }

    @Test
    void aBarTakesTheLastLineAndIsTakenAway() {
      assertThat(shown(MEASURE, Map.of()))
          .containsPattern("Measuring .*[0-2]/2 pictures")
          .contains("\r")
          .doesNotContain("[1 of 2]")
          .doesNotContain(ESCAPE);
    }

    @Test
    void oneThatCannotGoBackToALinesStartHasNoBar() {
      assertThat(shown(MEASURE, Map.of("TERM", "dumb")))
          .contains("[1 of 2] one.png: not measured")
          .doesNotContain("Measuring ");
    }

    @Test
    void theHelpHasColoursUnlessTheyAreNotWanted() {
      assertThat(shown(HELP, Map.of())).contains("Usage:").contains(ESCAPE);
      // Any value but the empty one: no-color.org.
      assertThat(shown(HELP, Map.of("NO_COLOR", "1"))).contains("Usage:").doesNotContain(ESCAPE);
    }
  }
}
