package wickmark.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.net.InetAddress;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.api.parallel.ResourceLock;
import org.junit.jupiter.api.parallel.Resources;
import wickmark.cli.measuring.SampleStrip;

/** Files that are passed on tell nothing of where, by whom and on what they were made. */
class PrivacyTest {
  private static final String SECRET = "taken at 51.4778 N 0.0015 W";
  private static final String USER = "secret-user-name";
  private static final Pattern PICTURE = Pattern.compile("data:image/[a-z]+;base64,([^\"]+)");

  @TempDir Path folder;

  /** A JPEG as a phone writes it: an EXIF segment with the place, and a comment. */
  private static byte[] photo(int shade) throws IOException {
    BufferedImage image = new BufferedImage(120, 200, BufferedImage.TYPE_INT_RGB);
    image.setRGB(5, 5, shade);
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ImageIO.write(image, "jpeg", out);
    byte[] jpeg = out.toByteArray();
    byte[] exif = ("Exif\0\0" + SECRET).getBytes(StandardCharsets.ISO_8859_1);
    ByteBuffer tagged = ByteBuffer.allocate(jpeg.length + 2 * (exif.length + 4));
    tagged.put(jpeg, 0, 2);
    for (int marker : new int[] {0xffe1, 0xfffe}) {
      tagged.putShort((short) marker).putShort((short) (exif.length + 2)).put(exif);
    }
    return tagged.put(jpeg, 2, jpeg.length - 2).array();
  }

  private static Stream<byte[]> withPicturesInside(byte[] file) {
    Stream.Builder<byte[]> parts = Stream.builder();
    parts.add(file);
    Matcher pictures = PICTURE.matcher(new String(file, StandardCharsets.ISO_8859_1));
    while (pictures.find()) {
      parts.add(Base64.getDecoder().decode(pictures.group(1)));
    }
    return parts.build();
  }

  @Test
  @ResourceLock(Resources.SYSTEM_PROPERTIES)
  void noFileTellsPlaceUserHostOrPath() throws IOException {
    Path here = Files.createDirectories(folder.resolve("home-of-somebody"));
    Path first = Files.write(here.resolve("one.jpg"), photo(1));
    Path second = Files.write(here.resolve("two.jpg"), photo(2));
    Path hand = here.resolve("hand.csv");
    Files.writeString(hand, "lane,spot,distance_mm\nA,1,54\n");
    Path out = here.resolve("records");
    String user = System.getProperty("user.name");
    System.setProperty("user.name", USER);
    try {
      for (List<Object> line :
          List.<List<Object>>of(
              List.of("measure", first, second, "--out", out),
              List.of("check", out.resolve("one"), hand),
              List.of(
                  "pool", out.resolve("one"), out.resolve("two"), "--out", here.resolve("p")))) {
        CommandLineRun run = CommandLineRun.of(SampleStrip.measuring(), line.toArray());
        assertThat(run.exitCode()).as(run.err()).isIn(ExitCode.DONE, ExitCode.CHECK_FAILED);
      }
    } finally {
      System.setProperty("user.name", user);
    }

    List<Path> written = new ArrayList<>();
    for (Path made : List.of(out, here.resolve("p"))) {
      try (Stream<Path> files = Files.walk(made)) {
        files.filter(Files::isRegularFile).forEach(written::add);
      }
    }
    assertThat(written)
        .extracting(file -> file.getFileName().toString())
        .contains("record.json", "report.html", "index.html", "check.html", "pool.html");
    String host = InetAddress.getLocalHost().getHostName();
    for (Path file : written) {
      assertThat(withPicturesInside(Files.readAllBytes(file)))
          .allSatisfy(
              part -> {
                String text = new String(part, StandardCharsets.ISO_8859_1);
                assertThat(text.contains(SECRET) || text.contains("Exif")).as("place").isFalse();
                assertThat(text.contains("home-of-somebody")).as("path in " + file).isFalse();
                assertThat(text.contains(USER)).as("user").isFalse();
                assertThat(host.length() > 5 && text.contains(host)).as("host").isFalse();
              });
    }
  }
}
