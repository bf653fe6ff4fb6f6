package wickmark.cli.photo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.zip.CRC32;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

@Timeout(30)
class UnreadableFilesTest {
  @TempDir Path folder;

  private String refusalOf(Path file) {
    UnreadablePictureException refusal =
        catchThrowableOfType(UnreadablePictureException.class, () -> PhotoFile.read(file));
    assertThat(refusal).isNotNull();
    assertThat(refusal.getMessage()).endsWith(".").doesNotContain("\n").doesNotContain("Exception");
    return refusal.getMessage();
  }

  private String refusalOf(String name, byte[] bytes) throws Exception {
    return refusalOf(Files.write(folder.resolve(name), bytes));
  }

  @Test
  void aMissingFile() {
    assertThat(refusalOf(folder.resolve("strip.jpg")))
        .isEqualTo("strip.jpg cannot be read: there is no such file.");
  }

  @Test
  void aFolder() throws Exception {
    assertThat(refusalOf(Files.createDirectory(folder.resolve("strips")))).contains("a folder");
  }

  @Test
  void anEmptyFile() throws Exception {
    assertThat(refusalOf("strip.jpg", new byte[0])).contains("empty");
  }

  @Test
  void aText() throws Exception {
    assertThat(refusalOf("strip.jpg", "lane,spot\n".getBytes(StandardCharsets.UTF_8)))
        .contains("a text file");
  }

  @Test
  void aPipe() throws Exception {
    Path pipe = folder.resolve("pipe.jpg");
    boolean made;
    try {
      made = new ProcessBuilder("mkfifo", pipe.toString()).start().waitFor() == 0;
    } catch (java.io.IOException e) {
      made = false;
    }
    assumeTrue(made, "this system has no named pipes");

    assertThat(refusalOf(pipe)).contains("a pipe");
  }

  @Test
  void aHeicPhoto() throws Exception {
    byte[] head = "\0\0\0\30ftypheic\0\0\0\0mif1heic".getBytes(StandardCharsets.ISO_8859_1);

    assertThat(refusalOf("IMG_1.HEIC", head))
        .startsWith("IMG_1.HEIC cannot be read")
        .contains("HEIC");
  }

  @ParameterizedTest
  @ValueSource(strings = {"jpeg", "png", "bmp", "tiff"})
  void aFileCutInHalf(String format) throws Exception {
    byte[] whole = PictureBytes.written(PictureBytes.gradient(200, 150), format);

    assertThat(refusalOf("half." + format, Arrays.copyOf(whole, whole.length / 2)))
        .containsAnyOf("cut short", "damaged");
  }

  @ParameterizedTest
  @ValueSource(strings = {"jpeg", "png", "bmp", "tiff"})
  void aFileCutInItsHeader(String format) throws Exception {
    byte[] whole = PictureBytes.written(PictureBytes.gradient(200, 150), format);

    assertThat(refusalOf("head." + format, Arrays.copyOf(whole, 30))).isNotEmpty();
  }

  @Test
  void aJpegWithADamagedMiddle() throws Exception {
    byte[] whole = PictureBytes.written(PictureBytes.gradient(600, 400), "jpeg");
    Arrays.fill(whole, whole.length / 2, whole.length / 2 + 40, (byte) 0);

    assertThat(refusalOf("damaged.jpg", whole)).contains("damaged");
  }

  /** A reader that takes the end for zeros went round in circles on this lossless WebP. */
  @Test
  void aWebpThatEndsInItsTables() throws Exception {
    byte[] head =
        HexFormat.of()
            .parseHex(
                "524946465c000000574542505650384c500000002f95c01800cd0044d2fee22344f43fd54620");

    assertThat(refusalOf("cut.webp", head)).contains("cut short");
  }

  @Test
  void aPngWithAWrongChecksum() throws Exception {
    byte[] whole = PictureBytes.written(PictureBytes.gradient(60, 40), "png");
    whole[whole.length - 30] ^= 1;

    assertThat(refusalOf("damaged.png", whole)).contains("damaged");
  }

  @Test
  void aPngThatDeclaresMoreThanIsAllowed() throws Exception {
    byte[] whole = PictureBytes.written(PictureBytes.gradient(60, 40), "png");
    ByteBuffer.wrap(whole).putInt(16, 60_000).putInt(20, 60_000);
    CRC32 sum = new CRC32();
    sum.update(whole, 12, 17);
    ByteBuffer.wrap(whole).putInt(29, (int) sum.getValue());

    assertThat(refusalOf("huge.png", whole)).contains("60000 x 60000 pixels").contains("120");
  }

  @Test
  void aPackedTextInAPngIsNotUnpacked() throws Exception {
    byte[] text = PictureBytes.packed(new byte[64 << 20]);
    byte[] chunk = new byte[text.length + 3];
    chunk[0] = 'x';
    System.arraycopy(text, 0, chunk, 3, text.length);
    byte[] png = PictureBytes.written(PictureBytes.filled(4, 4, 0x102030), "png");

    PhotoFile file =
        PhotoFile.read(
            Files.write(folder.resolve("t.png"), PictureBytes.withChunk(png, "zTXt", chunk)));

    assertThat(file.photo().red(1, 1)).isEqualTo(16);
  }

  @Test
  void controlCharactersInTheNameStayOutOfTheMessage() throws Exception {
    assertThat(refusalOf("a\nb.jpg", new byte[0])).startsWith("a?b.jpg cannot");
  }
}
