package wickmark.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.atomic.AtomicReference;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import wickmark.cli.measuring.MeasuredStrip;
import wickmark.cli.measuring.MeasuringRequest;
import wickmark.cli.measuring.SampleStrip;
import wickmark.cli.measuring.StripMeasuring;
import wickmark.core.chromatogram.SpotCentre;
import wickmark.imaging.ReadingRequest;

class MeasureCommandTest {
  @TempDir Path folder;
  private Path picture = Path.of("");
  private Path out = Path.of("");

  @BeforeEach
  void makeAPicture() throws IOException {
    picture = picture("strip.png");
    out = folder.resolve("records");
  }

  private Path picture(String name) throws IOException {
    Path file = folder.resolve(name);
    ImageIO.write(new BufferedImage(120, 200, BufferedImage.TYPE_INT_RGB), "png", file.toFile());
    return file;
  }

  private CommandLineRun measure(Object... more) {
    return measure(SampleStrip.measuring(), more);
  }

  private CommandLineRun measure(StripMeasuring measuring, Object... more) {
    Object[] arguments =
        Stream.concat(Stream.of("measure", "--out", out), Stream.of(more)).toArray();
    return CommandLineRun.of(measuring, arguments);
  }

  @Nested
  class OnePicture {
    @Test
    void givesTheTableOnStandardOutputAndTheWarningsBeside() {
      CommandLineRun run = measure(picture);

      assertThat(run.exitCode()).isEqualTo(ExitCode.DONE);
      assertThat(run.out()).contains("0.720 ± 0.004").contains("X is consistent with A and B");
      assertThat(run.err()).contains("Warning, strip.png: The front is faint.");
    }

    @Test
    void leavesTheFourFiles() {
      measure(picture);

      assertThat(out.resolve("strip"))
          .isDirectoryContaining("glob:**/record.json")
          .isDirectoryContaining("glob:**/spots.csv")
          .isDirectoryContaining("glob:**/straightened.png")
          .isDirectoryContaining("glob:**/report.html");
    }

    @Test
    void theRecordHoldsTheFileAndWhatWasSaidButNoPath() throws Exception {
      measure(picture, "--lanes", "A,B,X", "--unknown", "X", "--title", "Icing", "--dpi", "300");

      String text = Files.readString(out.resolve("strip/record.json"));
      JsonNode record = new ObjectMapper().readTree(text);
      assertThat(record.at("/photo/file").asText()).isEqualTo("strip.png");
      assertThat(record.at("/photo/widthPx").asInt()).isEqualTo(120);
      assertThat(record.at("/tool/version").asText()).isEqualTo(Version.number());
      assertThat(record.at("/settings/lanes/2").asText()).isEqualTo("X");
      assertThat(record.at("/settings/dpi").asDouble()).isEqualTo(300);
      assertThat(record.at("/settings/title").asText()).isEqualTo("Icing");
      assertThat(record.at("/settings/smoothing").asDouble()).isEqualTo(1.5);
      assertThat(text).doesNotContain(folder.toString());
    }

    @Test
    void twoRunsGiveTheSameBytes() throws Exception {
      measure(picture);
      byte[] record = Files.readAllBytes(out.resolve("strip/record.json"));
      byte[] report = Files.readAllBytes(out.resolve("strip/report.html"));

      measure(picture, "--replace");

      assertThat(out.resolve("strip/record.json")).hasBinaryContent(record);
      assertThat(out.resolve("strip/report.html")).hasBinaryContent(report);
    }

    @Test
    void timingsAreTalkAndChangeNoRecord() throws Exception {
      CommandLineRun plain = measure(picture);
      byte[] record = Files.readAllBytes(out.resolve("strip/record.json"));
      byte[] report = Files.readAllBytes(out.resolve("strip/report.html"));

      CommandLineRun timed = measure(picture, "--replace", "--timings");

      assertThat(timed.err()).contains("ms a picture").containsPattern("(?m)^write +\\d+\\.\\d ");
      assertThat(timed.out()).isEqualTo(plain.out());
      assertThat(out.resolve("strip/record.json")).hasBinaryContent(record);
      assertThat(out.resolve("strip/report.html")).hasBinaryContent(report);
    }

    @Test
    void jsonTakesTheTablesPlace() throws Exception {
      JsonNode printed = new ObjectMapper().readTree(measure(picture, "--json").out());

      assertThat(printed.at("/records/0/lanes/0/spots/0/rf").asDouble()).isEqualTo(0.72);
      assertThat(printed.at("/failures")).isEmpty();
    }

    @Test
    void anotherRecordIsReplacedOnlyWhenAskedTo() {
      measure(picture);

      CommandLineRun again = measure(picture, "--lanes", "D,E,F");

      assertThat(again.exitCode()).isEqualTo(ExitCode.BAD_USAGE);
      assertThat(again.err()).contains("--replace");
      assertThat(measure(picture, "--lanes", "D,E,F", "--replace").exitCode())
          .isEqualTo(ExitCode.DONE);
    }

    @Test
    void whatIsDoneIsNotDoneAgain() {
      CommandLineRun first = measure(picture, "--lanes", "A,B,X");

      CommandLineRun again =
          measure(
              (file, said) -> {
                throw new IllegalStateException("measured again");
              },
              picture,
              "--lanes",
              "A,B,X");

      assertThat(again.exitCode()).isEqualTo(ExitCode.DONE);
      assertThat(again.out()).isEqualTo(first.out());
      assertThat(again.err()).contains("measured already");
    }

    @Test
    void aRecordThatLostItsReportIsNotDone() throws Exception {
      measure(picture);
      Files.delete(out.resolve("strip/report.html"));

      assertThat(measure(picture).exitCode()).isEqualTo(ExitCode.BAD_USAGE);
    }

    @Test
    void severalStripsGetAFolderEach() {
      StripMeasuring three =
          (file, said) ->
              List.of(
                  new MeasuredStrip.Done(SampleStrip.record(), SampleStrip.straightened()),
                  new MeasuredStrip.Refused("No front was found; mark it with --front."),
                  new MeasuredStrip.Done(SampleStrip.record(), SampleStrip.straightened()));

      CommandLineRun run = measure(three, picture);

      assertThat(run.exitCode()).isEqualTo(ExitCode.NOT_MEASURABLE);
      assertThat(run.err())
          .contains("strip.png, strip 2 from the left: No front was found; mark it with --front.");
      assertThat(out.resolve("strip-1/record.json")).exists();
      assertThat(out.resolve("strip-2")).doesNotExist();
      assertThat(out.resolve("strip-3/record.json")).exists();
    }
  }

  @Nested
  class WhatIsSaid {
    private MeasuringRequest heard(Object... options) {
      AtomicReference<MeasuringRequest> heard =
          new AtomicReference<>(MeasuringRequest.of(ReadingRequest.nothing()));
      Object[] all = Stream.concat(Stream.of(picture), Stream.of(options)).toArray();
      CommandLineRun run =
          measure(
              (file, said) -> {
                heard.set(said);
                return SampleStrip.measuring().measure(file, said);
              },
              all);
      assertThat(run.err()).doesNotContain("needed");
      return heard.get();
    }

    private ReadingRequest said(Object... options) {
      return heard(options).reading();
    }

    @Test
    void ofTheSpotsReachesTheMeasurementAndTheRecord() throws Exception {
      MeasuringRequest heard =
          heard("--spot-centre=densest", "--tolerance-rf=0.05", "--tolerance-colour=6.5");

      assertThat(heard.centre()).isEqualTo(SpotCentre.DENSEST);
      assertThat(heard.matching().toleranceRf()).isEqualTo(0.05);
      assertThat(heard.matching().toleranceColour()).isEqualTo(6.5);
      JsonNode settings =
          new ObjectMapper()
              .readTree(Files.readString(out.resolve("strip/record.json")))
              .at("/settings");
      assertThat(settings.at("/spotCentre").asText()).isEqualTo("densest");
      assertThat(settings.at("/toleranceRf").asDouble()).isEqualTo(0.05);
      assertThat(settings.at("/toleranceColour").asDouble()).isEqualTo(6.5);
      assertThat(out.resolve("strip/report.html")).content().contains("densest point");
    }

    @Test
    void theTableSaysOfWhichPointTheRfIs() {
      assertThat(measure(picture, "--spot-centre=middle").out()).contains("that of the middle");
      assertThat(measure(picture, "--replace").out()).doesNotContain("as asked for");
    }

    @Test
    void nothingOfTheSpotsIsTheUsual() {
      assertThat(heard()).isEqualTo(MeasuringRequest.of(ReadingRequest.nothing()));
    }

    @Test
    void anotherToleranceIsAnotherRecord() {
      measure(picture);

      CommandLineRun again = measure(picture, "--tolerance-rf=0.03");

      assertThat(again.exitCode()).isEqualTo(ExitCode.BAD_USAGE);
      assertThat(again.err()).contains("--replace");
    }

    @Test
    void aToleranceOutOfRangeIsToldInASentence() {
      assertThat(measure(picture, "--tolerance-rf=2").err())
          .contains("--tolerance-rf must be above 0 and at most 1, was 2.0");
    }

    @Test
    void reachesTheMeasurement() {
      ReadingRequest heard =
          said(
              "--lanes=A,B,X",
              "--unknown=X",
              "--lane-count=3",
              "--bottom=left",
              "--corners=0,0,9,0,9,9,0,9",
              "--baseline=0,8,9,8",
              "--front=0,1,9,1",
              "--origin=A=2,8",
              "--ignore=0,0,1,1",
              "--span=0,0,9,0=4.5");

      assertThat(heard.laneNames()).containsExactly("A", "B", "X");
      assertThat(heard.lines().origins()).containsOnlyKeys("A");
      assertThat(heard.strip().corners()).hasSize(4);
      assertThat(heard.strip().ignored()).hasSize(1);
      assertThat(heard.scale()).isPresent();
    }

    @ParameterizedTest
    @ValueSource(
        strings = {
          "--dpi=0",
          "--dpi=many",
          "--dpi=300 --strip-width=60",
          "--span=1,2,3=5",
          "--bottom=south",
          "--spot-centre=left",
          "--tolerance-rf=0",
          "--tolerance-rf=1.01",
          "--tolerance-rf=NaN",
          "--tolerance-colour=-4",
          "--tolerance-colour=101",
          "--corners=1,2,3",
          "--lanes=A,A",
          "--lanes=A,,B",
          "--lanes=A,B --unknown=X",
          "--lanes=A,B --lane-count=3",
          "--lane-count=0",
          "--origin=5,6",
          "--frontt=1,2,3,4"
        })
    void thatMakesNoSenseIsAnsweredBeforeAnythingIsDone(String options) {
      Object[] all =
          Stream.concat(Stream.of(picture), Stream.of((Object[]) options.split(" "))).toArray();

      CommandLineRun run = measure(all);

      assertThat(run.exitCode()).isEqualTo(ExitCode.BAD_USAGE);
      assertThat(run.err()).contains("Try: wickmark measure --help").doesNotContain("\tat ");
      assertThat(out).doesNotExist();
    }
  }

  @Nested
  class Trouble {
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
  }

  @Nested
  class HostileNames {
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
      assertThat(out.resolve("strip/spots.csv"))
          .content()
          .contains("'=cmd|")
          .doesNotContain(",=cmd");
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

  @Test
  void printsTheSchema() throws Exception {
    CommandLineRun run = CommandLineRun.of(SampleStrip.measuring(), "measure", "--print-schema");

    assertThat(new ObjectMapper().readTree(run.out()).path("$schema").asText())
        .isEqualTo("https://json-schema.org/draft/2020-12/schema");
  }
}
