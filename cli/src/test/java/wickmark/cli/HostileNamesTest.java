package wickmark.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.abort;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import wickmark.cli.measuring.MeasuredStrip;
import wickmark.cli.measuring.SampleStrip;
import wickmark.cli.measuring.StripMeasuring;

/** Names that would break out: of the folder, of a line, of a cell or of a page. */
class HostileNamesTest {
  @TempDir Path folder;

  static Stream<String> pictureNames() {
    return Stream.of(
        "with spaces .png",
        " leading.png",
        "line\nbreak.png",
        "tab\tand\u0007bell.png",
        "-leading-dash.png",
        "--out.png",
        "@file.png",
        "~.png",
        "$HOME.png",
        "*.png",
        "Süße Probe.png",
        "e\u0301.png",
        "日本語.png",
        "\u05D0\u05D1\u05D2.png",
        "\u202Egnp.exe.png",
        "CON.png",
        "nul .png",
        "LPT\u00B9.x.png",
        "..png",
        "....png",
        "...png.png",
        "a\\..\\..\\b.png",
        "C:x.png",
        "<script>alert(1)<\u2215script>.png",
        "=cmd|' \u2215C calc'!A0.png",
        "x".repeat(251) + ".png",
        "ß".repeat(125) + ".png",
        "\uD83D\uDE00".repeat(62) + ".png",
        "y".repeat(255));
  }

  /** Whatever the picture is called, four files come into one new folder inside the output. */
  @ParameterizedTest
  @MethodSource("pictureNames")
  void aPictureMayBeCalledAnything(String name) throws IOException {
    Path pictures = Files.createDirectory(folder.resolve("in"));
    Path picture = named(pictures, name);
    Path out = folder.resolve("out");

    CommandLineRun run =
        CommandLineRun.of(SampleStrip.measuring(), "measure", "--out", out, "--", picture);

    assertThat(run.exitCode()).as(run.err()).isEqualTo(ExitCode.DONE);
    try (Stream<Path> inside = Files.list(folder)) {
      assertThat(inside).containsExactlyInAnyOrder(pictures, out);
    }
    try (Stream<Path> records = Files.list(out)) {
      Path record = records.filter(Files::isDirectory).toList().get(0);
      String written = record.getFileName().toString();
      assertThat(written).doesNotContainPattern("[\\p{Cntrl}\u202A-\u202E<>:\"|?*\\\\]");
      assertThat(written).doesNotEndWith(".").doesNotEndWith(" ").doesNotStartWith(".");
      assertThat(record)
          .isDirectoryContaining("glob:**/record.json")
          .isDirectoryContaining("glob:**/spots.csv")
          .isDirectoryContaining("glob:**/report.html")
          .isDirectoryContaining("glob:**/straightened.png");
      assertThat(record.resolve("report.html"))
          .content()
          .doesNotContain("<script>alert")
          .doesNotContainPattern("[\u202A-\u202E\u0007]");
    }
    assertThat(run.out()).doesNotContainPattern("[\u202A-\u202E\u0007]");
  }

  private static Path named(Path folder, String name) throws IOException {
    try {
      Path picture = folder.resolve(name);
      try (var out = Files.newOutputStream(picture)) {
        ImageIO.write(new BufferedImage(120, 200, BufferedImage.TYPE_INT_RGB), "png", out);
      }
      return picture;
    } catch (InvalidPathException | FileSystemException e) {
      return abort("this file system has no such names");
    }
  }

  /** Several strips of a picture with the longest name still get a folder each. */
  @Test
  void severalStripsOfALongName() throws IOException {
    StripMeasuring two =
        (photo, said) ->
            List.of(
                new MeasuredStrip.Done(SampleStrip.record(), SampleStrip.straightened()),
                new MeasuredStrip.Done(SampleStrip.record(), SampleStrip.straightened()));

    CommandLineRun run =
        CommandLineRun.of(
            two, "measure", named(folder, "z".repeat(255)), "--out", folder.resolve("out"));

    assertThat(run.exitCode()).as(run.err()).isEqualTo(ExitCode.DONE);
    try (Stream<Path> records = Files.list(folder.resolve("out")).filter(Files::isDirectory)) {
      assertThat(records).hasSize(2);
    }
  }

  @Test
  void aFaultWithALongNameLeavesItsDetailsToo() throws IOException {
    StripMeasuring broken =
        (photo, said) -> {
          throw new IllegalStateException("a wheel came off");
        };

    CommandLineRun run =
        CommandLineRun.of(
            broken, "measure", named(folder, "z".repeat(255)), "--out", folder.resolve("out"));

    assertThat(run.err()).contains("the details are in");
  }

  private CommandLineRun measured(String... options) throws IOException {
    List<Object> arguments =
        new ArrayList<>(
            List.of("measure", named(folder, "strip.png"), "--out", folder.resolve("out")));
    arguments.addAll(List.of(options));
    return CommandLineRun.of(SampleStrip.measuring(), arguments.toArray());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"A,\u202EB", "A,B\u2066", "A\nB", "A\u0000", "A,B\u200F", "A\u2028B", "\u001B[2J"})
  void aLaneWhoseNameWouldMisleadIsRefused(String lanes) throws IOException {
    CommandLineRun run = measured("--lanes=" + lanes);

    assertThat(run.exitCode()).isEqualTo(ExitCode.BAD_USAGE);
    assertThat(run.err()).contains("--lanes has a character in it that is not seen");
    assertThat(run.err()).doesNotContainPattern("[\u202A-\u202E\u2066-\u2069\u001B]");
  }

  /** Names of right-to-left languages are names like others. */
  @Test
  void aLaneMayBeNamedInHebrewOrArabic() throws IOException {
    CommandLineRun run = measured("--lanes=\u05D0,\u0628,X", "--title=\u0645");

    assertThat(run.exitCode()).isEqualTo(ExitCode.DONE);
  }

  @Test
  void aTitleThatTurnsTheWritingIsRefused() throws IOException {
    CommandLineRun run = measured("--title=\u202Ex");

    assertThat(run.exitCode()).isEqualTo(ExitCode.BAD_USAGE);
    assertThat(run.err()).contains("--title");
  }
}
