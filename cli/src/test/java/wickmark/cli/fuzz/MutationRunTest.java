package wickmark.cli.fuzz;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.InputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import wickmark.cli.ProgramInProcess;

/** The short form of a run whose long one is in testdata/RESULTS.md. */
class MutationRunTest {
  @TempDir Path folder;

  @Test
  @Timeout(300)
  void noDamagedPictureMakesTheProgramFail() throws Exception {
    Path strip = Path.of("..", "testdata", "example", "icing-scan.jpg");

    assertThat(MutationRun.wrongOf(strip, folder, 150, 7)).isZero();
  }

  /** Files on which the program failed once; each is named by what was the matter. */
  @ParameterizedTest
  @ValueSource(strings = {"dye-beyond-the-front-only.webp"})
  @Timeout(60)
  void whatOnceFailedNoLongerDoes(String name) throws Exception {
    Path file = folder.resolve(name);
    try (InputStream in = MutationRunTest.class.getResourceAsStream("found/" + name)) {
      Files.copy(Objects.requireNonNull(in), file);
    }
    StringWriter said = new StringWriter();

    int exitCode =
        ProgramInProcess.run(
            new PrintWriter(said, true),
            "measure",
            file.toString(),
            "--out",
            folder.resolve("out").toString());

    assertThat(exitCode).as(said.toString()).isIn(0, 3, 4);
  }
}
