package wickmark.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.file.Files;
import java.util.List;
import org.junit.jupiter.api.Test;
import wickmark.cli.measuring.MeasuredStrip;
import wickmark.cli.measuring.SampleStrip;
import wickmark.cli.measuring.StripMeasuring;

class MeasureCommandTest extends MeasureRuns {
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

  @Test
  void printsTheSchema() throws Exception {
    CommandLineRun run = CommandLineRun.of(SampleStrip.measuring(), "measure", "--print-schema");

    assertThat(new ObjectMapper().readTree(run.out()).path("$schema").asText())
        .isEqualTo("https://json-schema.org/draft/2020-12/schema");
  }
}
