package wickmark.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import wickmark.cli.measuring.MeasuredStrip;
import wickmark.cli.measuring.SampleStrip;
import wickmark.cli.measuring.StripMeasuring;

/** What cannot be read, measured or written, and names that would break out. */
class MeasureTroubleTest extends MeasureRuns {
  @Test
  void noPictureIsBadUsage() {
    assertThat(measure().exitCode()).isEqualTo(ExitCode.BAD_USAGE);
  }

  @Test
  void aPictureThatCannotBeReadIsExit3() {
    CommandLineRun run = measure(folder.resolve("gone.jpg"));

    assertThat(run.exitCode()).isEqualTo(ExitCode.UNREADABLE);
    assertThat(run.err().strip()).isEqualTo("gone.jpg cannot be read: there is no such file.");
    assertThat(out).doesNotExist();
  }

  @Test
  void aStripThatCannotBeMeasuredIsExit4AndLeavesNothing() {
    StripMeasuring refusing =
        (file, said) -> List.of(new MeasuredStrip.Refused("No strip was found."));

    CommandLineRun run = measure(refusing, picture);

    assertThat(run.exitCode()).isEqualTo(ExitCode.NOT_MEASURABLE);
    assertThat(run.err().strip()).isEqualTo("strip.png: No strip was found.");
    assertThat(run.out()).isEmpty();
    assertThat(out).doesNotExist();
  }

  @Test
  void aDefectIsExit1WithItsDetailsInAFile() {
    StripMeasuring broken =
        (file, said) -> {
          throw new IllegalStateException("a wheel came off");
        };

    CommandLineRun run = measure(broken, picture);

    assertThat(run.exitCode()).isEqualTo(ExitCode.DEFECT);
    assertThat(run.err().strip()).hasLineCount(1).contains("strip.fault.txt");
    assertThat(out.resolve("strip.fault.txt")).content().contains("a wheel came off");
  }

  @Test
  void aBadPictureStopsNoOthersAndTheHighestCodeCounts() throws Exception {
    Path text = Files.writeString(folder.resolve("notes.jpg"), "not a picture");
    Path second = picture("second.png");

    CommandLineRun run = measure(picture, text, second);

    assertThat(run.exitCode()).isEqualTo(ExitCode.UNREADABLE);
    assertThat(run.err()).contains("[2 of 3] notes.jpg: not measured");
    assertThat(out.resolve("second/record.json")).exists();
  }

  @Test
  void aFolderStandsForThePicturesInIt() throws Exception {
    Path inside = Files.createDirectory(folder.resolve("class"));
    Files.copy(picture, inside.resolve("b.png"));
    Files.copy(picture, inside.resolve("a.PNG"));
    Files.writeString(inside.resolve("notes.txt"), "mine");

    CommandLineRun run = measure(inside);

    assertThat(run.exitCode()).isEqualTo(ExitCode.DONE);
    assertThat(run.err()).contains("[1 of 2] a.PNG").contains("[2 of 2] b.png");
  }

  @Test
  void twoPicturesForOneFolderAreRefused() throws Exception {
    Path twin = folder.resolve("strip.bmp");
    Files.copy(picture, twin);

    CommandLineRun run = measure(picture, twin);

    assertThat(run.exitCode()).isEqualTo(ExitCode.BAD_USAGE);
    assertThat(run.err()).contains("one folder");
  }

  @Test
  void aFolderThatCannotBeWrittenIsSaid() throws Exception {
    Files.writeString(folder.resolve("records"), "a file in the way");

    CommandLineRun run = measure(picture);

    assertThat(run.exitCode()).isEqualTo(ExitCode.DEFECT);
    assertThat(run.err().strip()).hasLineCount(1).contains("a file where the folder should be");
  }

  @Test
  void stayTextEverywhere() throws Exception {
    String script = "<script>alert(1)</script>";
    StripMeasuring hostile =
        (file, said) ->
            List.of(
                new MeasuredStrip.Done(
                    SampleStrip.record(script, "../../x", "=cmd|' /C calc'!A0"),
                    SampleStrip.straightened()));

    measure(hostile, picture, "--title", "</title>" + script);

    // The page's own: the data, and the script whose hash its policy names.
    String page = Files.readString(out.resolve("strip/report.html"));
    assertThat(page).doesNotContain(script, "<script>alert").contains("\\u003cscript>alert(1)");
    assertThat(page.split("<script", -1)).hasSize(3);
    assertThat(out.resolve("strip/spots.csv")).content().contains("'=cmd|").doesNotContain(",=cmd");
    try (Stream<Path> written = Files.walk(out)) {
      assertThat(written.filter(Files::isRegularFile)).hasSize(4);
    }
  }

  @Test
  void aPictureMayHaveOne() throws Exception {
    CommandLineRun run = measure("--", picture("@-Probe Ä 日本 .png"));

    assertThat(run.exitCode()).isEqualTo(ExitCode.DONE);
    assertThat(out.resolve("@-Probe Ä 日本/record.json")).exists();
  }
}
