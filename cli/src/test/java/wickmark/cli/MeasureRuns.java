package wickmark.cli;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;
import wickmark.cli.measuring.SampleStrip;
import wickmark.cli.measuring.StripMeasuring;

/** A picture in a folder, and runs of {@code measure} on it with a measurement that is made up. */
abstract class MeasureRuns {
  @TempDir Path folder;
  Path picture = Path.of("");
  Path out = Path.of("");

  @BeforeEach
  void makeAPicture() throws IOException {
    picture = picture("strip.png");
    out = folder.resolve("records");
  }

  final Path picture(String name) throws IOException {
    Path file = folder.resolve(name);
    ImageIO.write(new BufferedImage(120, 200, BufferedImage.TYPE_INT_RGB), "png", file.toFile());
    return file;
  }

  final CommandLineRun measure(Object... more) {
    return measure(SampleStrip.measuring(), more);
  }

  final CommandLineRun measure(StripMeasuring measuring, Object... more) {
    Object[] arguments =
        Stream.concat(Stream.of("measure", "--out", out), Stream.of(more)).toArray();
    return CommandLineRun.of(measuring, arguments);
  }
}
