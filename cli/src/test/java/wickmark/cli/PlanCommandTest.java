package wickmark.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.awt.image.BufferedImage;
import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import wickmark.cli.measuring.SampleStrip;

class PlanCommandTest {
  @TempDir Path folder;

  private static CommandLineRun run(Object... arguments) {
    return CommandLineRun.of(SampleStrip.measuring(), arguments);
  }

  @Nested
  class Layout {
    private JsonNode plan(String paper, String samples) throws IOException {
      return new ObjectMapper()
          .readTree(run("plan", "--paper", paper, "--samples", samples, "--json").out());
    }

    /** The figures of school method sheets: 2 cm, 1 cm deep, three quarters up. */
    @Test
    void followsCommonPractice() throws IOException {
      JsonNode plan = plan("100x160", "A,B,C,X");

      assertThat(plan.path("baselineMm").asDouble()).isEqualTo(20);
      assertThat(plan.path("solventMm").asDouble()).isEqualTo(10);
      assertThat(plan.path("frontMm").asDouble()).isEqualTo(120);
    }

    @Test
    void spacesOriginsEvenlyFromSideToSide() throws IOException {
      JsonNode plan = plan("100x160", "A,B,C,X");

      assertThat(plan.path("origins").findValuesAsText("acrossMm"))
          .containsExactly("12.5", "37.5", "62.5", "87.5");
    }

    @Test
    void keepsOriginsTenMillimetresFromTheSides() throws IOException {
      assertThat(plan("60x130", "5").path("origins").findValuesAsText("acrossMm"))
          .containsExactly("10.0", "20.0", "30.0", "40.0", "50.0");
    }

    @Test
    void asksForSmallerSpotsWhereLanesAreNarrow() throws IOException {
      assertThat(plan("60x130", "5").path("widestSpotMm").asDouble()).isEqualTo(2);
      assertThat(plan("100x130", "5").path("widestSpotMm").asDouble()).isEqualTo(3);
    }
  }

  @Nested
  class WhatCannotWork {
    @ParameterizedTest
    @CsvSource(
        delimiter = '|',
        value = {
          "60x130 | 7 | | room for 5",
          "60x130 | 7 | | at least 80 mm width",
          "15x130 | 1 | | too narrow for any",
          "86x50 | 3 | | at least 67 mm height",
          "86x130 | 3 | 90x150 | at most 80 × 145 mm",
          "86x130 | 7 | 60x150 | room for 4 of the 7 samples",
          "86x130 | 3 | 15x150 | larger vessel"
        })
    void isRefusedWithWhatWould(String paper, String samples, String vessel, String answer) {
      CommandLineRun run =
          vessel == null
              ? run("plan", "--paper", paper, "--samples", samples)
              : run("plan", "--paper", paper, "--samples", samples, "--vessel", vessel);

      assertThat(run.exitCode()).isEqualTo(ExitCode.BAD_USAGE);
      assertThat(run.err()).contains(answer);
      assertThat(run.out()).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"90", "90x", "0x130", "90,130", "a3", "5x5000", "-90x130"})
    void aSizeThatIsNone(String paper) {
      CommandLineRun run = run("plan", "--paper=" + paper, "--samples", "3");

      assertThat(run.exitCode()).isEqualTo(ExitCode.BAD_USAGE);
      assertThat(run.err()).contains(paper.equals("0x130") ? "between" : "was \"" + paper);
    }
  }

  @Nested
  class Cautions {
    private String text(String solvent) {
      return run("plan", "--paper", "90x130", "--samples", "3", "--solvent", solvent).out();
    }

    @ParameterizedTest
    @ValueSource(
        strings = {"ethanol", "Acetone", "propan-2-ol", "ethyl acetate", "petroleum ether"})
    void flammableSolventsAreKeptFromFlames(String solvent) {
      assertThat(text(solvent)).contains("Highly flammable").contains("No flames");
    }

    @Test
    void anUnknownSolventIsNeverCalledSafe() {
      assertThat(text("blue stuff"))
          .contains("treat it as hazardous")
          .doesNotContainIgnoringCase("not classified");
    }

    @ParameterizedTest
    @ValueSource(strings = {"water", "ammonia", "blue stuff"})
    void theTeacherAndTheDataSheetComeFirst(String solvent) {
      assertThat(text(solvent)).contains("safety data sheet").contains("teacher in charge");
    }
  }

  @Nested
  class Drawing {
    private static final int PIXELS_PER_MM = 10;

    private File draw(Object... more) {
      return drawFor("A,B,C,Größe", more);
    }

    private File drawFor(String samples, Object... more) {
      Path file = folder.resolve("plan.pdf");
      Object[] arguments = {
        "plan", "--paper", "86x130", "--samples", samples, "--pdf", file, "--replace"
      };
      Object[] all = new Object[arguments.length + more.length];
      System.arraycopy(arguments, 0, all, 0, arguments.length);
      System.arraycopy(more, 0, all, arguments.length, more.length);
      assertThat(run(all).exitCode()).isEqualTo(ExitCode.DONE);
      return file.toFile();
    }

    /** Where a row of the picture is dark for the first and the last time, mm from its left. */
    private double[] darkEnds(BufferedImage page, int row) {
      int first = -1;
      int last = -1;
      for (int x = 0; x < page.getWidth(); x++) {
        if ((page.getRGB(x, row) & 0xFF) < 128) {
          first = first < 0 ? x : first;
          last = x;
        }
      }
      return new double[] {first / (double) PIXELS_PER_MM, last / (double) PIXELS_PER_MM};
    }

    @Test
    void isTrueToScale() throws IOException {
      try (PDDocument document = Loader.loadPDF(draw())) {
        BufferedImage page = new PDFRenderer(document).renderImageWithDPI(0, 25.4f * PIXELS_PER_MM);

        double[] strip = darkEnds(page, 40 * PIXELS_PER_MM);
        assertThat(strip[1] - strip[0]).isCloseTo(86, within(0.3));
        assertThat(strip[0]).isCloseTo(10, within(0.2));
        // Only the long ticks of the bar, at 0, 50 and 100 mm, reach 16 mm above the sheet's edge.
        double[] bar = darkEnds(page, (297 - 16) * PIXELS_PER_MM);
        assertThat(bar[1] - bar[0]).isCloseTo(100, within(0.3));
      }
    }

    @Test
    void drawsAWholeClass() throws IOException {
      try (PDDocument document = Loader.loadPDF(draw("--strips", 30))) {
        // Three side by side on A4 on its side, so 10 sheets, and the table.
        assertThat(document.getNumberOfPages()).isEqualTo(11);
        assertThat(document.getPage(0).getMediaBox().getWidth())
            .isGreaterThan(document.getPage(0).getMediaBox().getHeight());
      }
    }

    @Test
    void everySampleHasItsRowsInTheTable() throws IOException {
      Path file = folder.resolve("many.pdf");
      assertThat(run("plan", "--paper", "190x130", "--samples", "16", "--pdf", file).exitCode())
          .isEqualTo(ExitCode.DONE);
      try (PDDocument document = Loader.loadPDF(file.toFile())) {
        PDFTextStripper tables = new PDFTextStripper();
        tables.setStartPage(2);
        assertThat(tables.getText(document)).contains("10", "16");
        assertThat(document.getNumberOfPages()).isEqualTo(3);
      }
    }

    @Test
    void holdsTheNamesAsText() throws IOException {
      try (PDDocument document = Loader.loadPDF(draw())) {
        assertThat(new PDFTextStripper().getText(document)).contains("Größe").contains("Rf");
      }
    }

    @Test
    void theSamePlanGivesTheSameBytes() throws IOException {
      byte[] first = Files.readAllBytes(draw().toPath());

      assertThat(draw()).hasBinaryContent(first);
    }

    @Test
    void namesWithoutLettersInThePrintStayHarmless() throws IOException {
      try (PDDocument document = Loader.loadPDF(drawFor("漢字,\u202Ebad,A"))) {
        assertThat(document.getNumberOfPages()).isEqualTo(2);
      }
    }

    @Test
    void aStripLargerThanTheSheetIsSaid() {
      CommandLineRun run =
          run("plan", "--paper", "a4", "--samples", "3", "--pdf", folder.resolve("a4.pdf"));

      assertThat(run.exitCode()).isEqualTo(ExitCode.BAD_USAGE);
      assertThat(run.err()).contains("does not fit on a sheet");
    }
  }
}
