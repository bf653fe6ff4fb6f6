package wickmark.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.file.Files;
import java.util.concurrent.atomic.AtomicReference;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import wickmark.cli.measuring.MeasuringRequest;
import wickmark.cli.measuring.SampleStrip;
import wickmark.core.chromatogram.SpotCentre;
import wickmark.imaging.ReadingRequest;

/** What the person says reaches the measurement and the record. */
class MeasureSettingsTest extends MeasureRuns {
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
