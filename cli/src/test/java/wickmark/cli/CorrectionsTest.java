package wickmark.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.atomic.AtomicReference;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wickmark.cli.measuring.MeasuredStrip;
import wickmark.cli.measuring.MeasuringRequest;
import wickmark.cli.measuring.SampleStrip;
import wickmark.cli.measuring.StripMeasuring;
import wickmark.cli.photo.PhotoFile;
import wickmark.imaging.ReadingRequest.SaidSpot;
import wickmark.imaging.photo.PhotoPoint;

/** Corrections on the command line, with a measurement that finds one strip in every picture. */
class CorrectionsTest {
  @TempDir Path folder;
  private Path picture = Path.of("");
  private Path out = Path.of("");
  private final AtomicReference<MeasuringRequest> said = new AtomicReference<>();

  @BeforeEach
  void makeAPicture() throws IOException {
    picture = folder.resolve("strip.png");
    out = folder.resolve("records");
    ImageIO.write(new BufferedImage(120, 200, BufferedImage.TYPE_INT_RGB), "png", picture.toFile());
  }

  private CommandLineRun measure(StripMeasuring measuring, Object... more) {
    List<Object> arguments = new ArrayList<>(List.of("measure", "--out", out, picture));
    arguments.addAll(List.of(more));
    return CommandLineRun.of(measuring, arguments.toArray());
  }

  private CommandLineRun measure(Object... more) {
    return measure(
        (photo, request) -> {
          said.set(request);
          return SampleStrip.measuring().measure(photo, request);
        },
        more);
  }

  private Path corrections(String strip, String settings) throws Exception {
    return Files.writeString(
        folder.resolve("corrections.json"),
        """
        {"format": "wickmark-corrections/1",
         "photo": {"file": "strip.png", "sha256": "%s"},
         "strip": {%s, "cornersPx": [[0, 0], [120, 0], [120, 200], [0, 200]]},
         "settings": {%s}}
        """
            .formatted(PhotoFile.read(picture).sha256(), strip, settings));
  }

  private static final String ONLY = "\"number\": 1, \"of\": 1";
  private static final String SETTINGS =
      "\"title\": \"Icing\", \"stripWidth\": 60, \"spots\": [[\"remove\", 3, 4.25]]";

  @Test
  void whatWasSaidIsMeasuredWithAndKept() throws Exception {
    Path file = corrections(ONLY, SETTINGS);
    measure();

    CommandLineRun run = measure("--corrections", file, "--replace");

    assertThat(run.exitCode()).isEqualTo(ExitCode.DONE);
    assertThat(said.get().reading().spots())
        .containsExactly(new SaidSpot.Removed(new PhotoPoint(3, 4.25)));
    JsonNode record = new ObjectMapper().readTree(out.resolve("strip/record.json").toFile());
    assertThat(record.at("/settings/title").asText()).isEqualTo("Icing");
    assertThat(record.at("/settings/stripWidth").asDouble()).isEqualTo(60);
    assertThat(record.at("/settings/spots/0/2").asDouble()).isEqualTo(4.25);
  }

  @Test
  void anEarlierRecordIsNotOverwrittenUnasked() throws Exception {
    Path file = corrections(ONLY, SETTINGS);
    measure();

    CommandLineRun run = measure("--corrections", file);

    assertThat(run.exitCode()).isEqualTo(ExitCode.BAD_USAGE);
    assertThat(run.err()).contains("use --replace");
  }

  @Test
  void theyAreForTheirPictureAlone() throws Exception {
    Path file = corrections(ONLY, SETTINGS);
    ImageIO.write(new BufferedImage(121, 200, BufferedImage.TYPE_INT_RGB), "png", picture.toFile());

    CommandLineRun run = measure("--corrections", file);

    assertThat(run.exitCode()).isEqualTo(ExitCode.BAD_USAGE);
    assertThat(run.err())
        .contains("the corrections are for another picture, which was called strip.png");
    assertThat(out).doesNotExist();
  }

  @Test
  void nothingElseIsSaidBesideThem() throws Exception {
    Path file = corrections(ONLY, SETTINGS);

    for (String[] more :
        new String[][] {
          {"--lanes", "A,B"}, {"--dpi", "300"}, {"--front", "1,2,3,4"}, {"--spot-centre", "middle"}
        }) {
      CommandLineRun run = measure("--corrections", file, more[0], more[1]);
      assertThat(run.exitCode()).as(more[0]).isEqualTo(ExitCode.BAD_USAGE);
      assertThat(run.err()).contains("say nothing more");
    }
    Path other = Files.copy(picture, folder.resolve("other.png"));
    assertThat(measure("--corrections", file, other).err()).contains("one picture at a time");
  }

  @Test
  void aFileThatIsNoneIsNamed() throws Exception {
    Path file = Files.writeString(folder.resolve("corrections.json"), "{}");

    CommandLineRun run = measure("--corrections", file);

    assertThat(run.exitCode()).isEqualTo(ExitCode.UNREADABLE);
    assertThat(run.err()).contains("corrections.json: it is no file of corrections");
  }

  /** Of several strips the one that was corrected is written anew, into its own folder. */
  @Test
  void theOtherStripsOfThePictureStayAsTheyAre() throws Exception {
    Path file = corrections("\"number\": 2, \"of\": 2", SETTINGS);
    StripMeasuring two =
        (photo, request) ->
            List.of(
                new MeasuredStrip.Refused("No front."),
                new MeasuredStrip.Done(SampleStrip.record(), SampleStrip.straightened()));

    CommandLineRun run = measure(two, "--corrections", file);

    assertThat(run.exitCode()).isEqualTo(ExitCode.DONE);
    assertThat(out.resolve("strip-2/record.json")).exists();
    assertThat(out.resolve("strip-1")).doesNotExist();
    assertThat(out.resolve("strip")).doesNotExist();
  }

  @Test
  void aStripThatIsNotFoundAgainIsNotTakenForAnother() throws Exception {
    Path file = corrections(ONLY, SETTINGS);
    Files.writeString(
        file, Files.readString(file).replace("[120, 200], [0, 200]", "[120, 900], [0, 900]"));

    CommandLineRun run = measure("--corrections", file);

    assertThat(run.exitCode()).isEqualTo(ExitCode.NOT_MEASURABLE);
    assertThat(run.err()).contains("was not found again");
  }
}
