package wickmark.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wickmark.cli.measuring.MeasuredStrip;
import wickmark.cli.measuring.SampleStrip;
import wickmark.cli.measuring.StripMeasuring;
import wickmark.core.chromatogram.SpotCentre;

class ReproduceCommandTest {
  @TempDir Path folder;
  private Path picture = Path.of("");
  private Path record = Path.of("");

  @BeforeEach
  void measureOnce() throws IOException {
    picture = folder.resolve("strip.png");
    ImageIO.write(new BufferedImage(120, 200, BufferedImage.TYPE_INT_RGB), "png", picture.toFile());
    CommandLineRun.of(
        SampleStrip.measuring(),
        "measure",
        picture,
        "--out",
        folder.resolve("wickmark-records"),
        "--lanes=A,B,X",
        "--spot-centre=middle",
        "--tolerance-rf=0.03",
        "--tolerance-colour=5");
    record = folder.resolve("wickmark-records/strip");
  }

  private CommandLineRun reproduce(StripMeasuring measuring, Object... more) {
    Object[] arguments = new Object[more.length + 1];
    arguments[0] = "reproduce";
    System.arraycopy(more, 0, arguments, 1, more.length);
    return CommandLineRun.of(measuring, arguments);
  }

  @Test
  void findsThePictureBesideAndEveryNumberTheSame() {
    CommandLineRun run = reproduce(SampleStrip.measuring(), record);

    assertThat(run.exitCode()).isEqualTo(ExitCode.DONE);
    assertThat(run.out()).contains("every number is the same");
  }

  @Test
  void measuresWithTheRecordedSettings() {
    CommandLineRun run =
        reproduce(
            (file, said) -> {
              assertThat(said.reading().laneNames()).containsExactly("A", "B", "X");
              assertThat(said.centre()).isEqualTo(SpotCentre.MIDDLE);
              assertThat(said.matching().toleranceRf()).isEqualTo(0.03);
              assertThat(said.matching().toleranceColour()).isEqualTo(5);
              return SampleStrip.measuring().measure(file, said);
            },
            record.resolve("record.json"));

    assertThat(run.exitCode()).isEqualTo(ExitCode.DONE);
  }

  @Test
  void findsARenamedPictureElsewhere() throws Exception {
    Path other = Files.createDirectories(folder.resolve("far/away/archive"));
    Files.move(picture, other.resolve("IMG_0001.png"));

    assertThat(reproduce(SampleStrip.measuring(), record).exitCode())
        .isEqualTo(ExitCode.UNREADABLE);
    CommandLineRun run =
        reproduce(SampleStrip.measuring(), record, "--pictures", folder.resolve("far"));

    assertThat(run.out()).contains("every number is the same");
  }

  @Test
  void printsEachDifference() {
    StripMeasuring renamed =
        (file, said) ->
            List.of(
                new MeasuredStrip.Done(
                    SampleStrip.record("A", "C", "X"), SampleStrip.straightened()));

    CommandLineRun run = reproduce(renamed, record);

    assertThat(run.exitCode()).isEqualTo(ExitCode.CHECK_FAILED);
    assertThat(run.out()).contains("lanes[1].name").contains("\"B\"").contains("\"C\"");
  }

  @Test
  void noticesARecordEditedByHand() throws Exception {
    Path file = record.resolve("record.json");
    Files.writeString(file, Files.readString(file).replace("\"rf\" : 0.72,", "\"rf\" : 0.73,"));

    CommandLineRun run = reproduce(SampleStrip.measuring(), record, "--json");

    assertThat(run.exitCode()).isEqualTo(ExitCode.CHECK_FAILED);
    assertThat(new ObjectMapper().readTree(run.out()).at("/0/differences/0/field").asText())
        .isEqualTo("lanes[0].spots[0].rf");
  }

  @Test
  void aFileThatIsNoRecordIsExit3() throws Exception {
    Path other = Files.writeString(folder.resolve("other.json"), "{\"a\": 1}");

    CommandLineRun run = reproduce(SampleStrip.measuring(), other, record);

    assertThat(run.exitCode()).isEqualTo(ExitCode.UNREADABLE);
    assertThat(run.err()).contains("not a record");
    assertThat(run.out()).contains("every number is the same");
  }
}
