package wickmark.cli.photo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import com.sun.management.ThreadMXBean;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.SocketTimeoutException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.zip.CRC32;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Files that are damaged, odd or made to do harm: a right picture or a sentence, and in time. */
@Timeout(60)
class HostilePicturesTest {
  /** A small picture in each kind of file that is read. */
  enum Kind {
    JPEG,
    PROGRESSIVE_JPEG,
    PNG,
    BMP,
    TIFF,
    PACKED_TIFF,
    WEBP,
    LOSSY_WEBP;

    byte[] bytes() {
      return switch (this) {
        case JPEG -> PictureBytes.written(PictureBytes.gradient(16, 12), "jpeg");
        case PROGRESSIVE_JPEG -> RareFiles.progressiveJpeg(PictureBytes.gradient(16, 12));
        case PNG -> PictureBytes.written(PictureBytes.gradient(16, 12), "png");
        case BMP -> PictureBytes.written(PictureBytes.gradient(16, 12), "bmp");
        case TIFF -> PictureBytes.written(PictureBytes.gradient(16, 12), "tiff");
        case PACKED_TIFF -> RareFiles.packedTiff(PictureBytes.gradient(16, 12));
        case WEBP -> RareFiles.losslessWebp();
        case LOSSY_WEBP -> RareFiles.lossyWebp();
      };
    }
  }

  private static Optional<PhotoFile> read(byte[] bytes) {
    try {
      return Optional.of(PhotoFile.of("strip.x", bytes));
    } catch (UnreadablePictureException e) {
      assertThat(e.getMessage())
          .startsWith("strip.x cannot be read: ")
          .endsWith(".")
          .doesNotContain("\n")
          .doesNotContain("Exception");
      return Optional.empty();
    }
  }

  private static String refusalOf(byte[] bytes) {
    UnreadablePictureException refusal =
        catchThrowableOfType(
            UnreadablePictureException.class, () -> PhotoFile.of("strip.x", bytes));
    assertThat(refusal).isNotNull();
    return refusal.getMessage();
  }

  private static int[] pixels(PhotoFile file) {
    int[] pixels = new int[file.photo().widthPx() * file.photo().heightPx()];
    for (int i = 0; i < pixels.length; i++) {
      int x = i % file.photo().widthPx();
      int y = i / file.photo().widthPx();
      pixels[i] =
          file.photo().red(x, y) << 16 | file.photo().green(x, y) << 8 | file.photo().blue(x, y);
    }
    return pixels;
  }

  @Nested
  class Damage {
    /** What is cut off may be a trailer that no pixel needs; else the file is refused. */
    @ParameterizedTest
    @EnumSource
    void cutAtAnyByteItIsRefusedOrWhole(Kind kind) {
      byte[] bytes = kind.bytes();
      int[] whole = pixels(read(bytes).orElseThrow());
      List<Integer> wrong = new ArrayList<>();
      for (int length = 0; length < bytes.length; length++) {
        Optional<PhotoFile> cut = read(Arrays.copyOf(bytes, length));
        if (cut.isPresent() && !Arrays.equals(pixels(cut.get()), whole)) {
          wrong.add(length);
        }
      }

      assertThat(wrong).isEmpty();
    }

    /** A PNG's checksums tell every flipped bit that has a say in the pixels. */
    @Test
    void aBitFlippedAnywhereInAPngIsNoticedOrChangesNothing() {
      byte[] png = Kind.PNG.bytes();
      int[] whole = pixels(read(png).orElseThrow());
      List<Integer> wrong = new ArrayList<>();
      for (int bit = 0; bit < 8 * png.length; bit++) {
        byte[] flipped = png.clone();
        flipped[bit / 8] ^= (byte) (1 << bit % 8);
        Optional<PhotoFile> read = read(flipped);
        if (read.isPresent() && !Arrays.equals(pixels(read.get()), whole)) {
          wrong.add(bit);
        }
      }

      assertThat(wrong).isEmpty();
    }

    /** The other kinds have no checksums: a flipped bit may give another picture, and no more. */
    @ParameterizedTest
    @EnumSource
    void aBitFlippedAnywhereIsAPictureOrASentence(Kind kind) {
      int refused = 0;
      byte[] bytes = kind.bytes();
      for (int bit = 0; bit < 8 * bytes.length; bit += 13) {
        byte[] flipped = bytes.clone();
        flipped[bit / 8] ^= (byte) (1 << bit % 8);
        refused += read(flipped).isEmpty() ? 1 : 0;
      }

      assertThat(refused).isPositive();
    }
  }

  @Nested
  class TooLarge {
    private static final long ENOUGH_FOR_A_HEADER = 16L << 20;

    private void isRefusedBeforeMemoryIsTaken(byte[] bytes) {
      ThreadMXBean threads = (ThreadMXBean) ManagementFactory.getThreadMXBean();
      read(Kind.PNG.bytes()); // loads what every picture needs
      long before = threads.getCurrentThreadAllocatedBytes();

      String refusal = refusalOf(bytes);

      assertThat(threads.getCurrentThreadAllocatedBytes() - before).isLessThan(ENOUGH_FOR_A_HEADER);
      assertThat(refusal).contains("60000 x 60000 pixels").contains("120 megapixels");
    }

    @Test
    void png() {
      byte[] png = Kind.PNG.bytes();
      ByteBuffer.wrap(png).putInt(16, 60_000).putInt(20, 60_000);
      CRC32 sum = new CRC32();
      sum.update(png, 12, 17);
      ByteBuffer.wrap(png).putInt(29, (int) sum.getValue());

      isRefusedBeforeMemoryIsTaken(png);
    }

    @Test
    void jpeg() {
      byte[] jpeg = Kind.JPEG.bytes();
      int frame = RareFiles.indexOf(jpeg, 0xff, 0xc0);
      ByteBuffer.wrap(jpeg).putShort(frame + 5, (short) 60_000).putShort(frame + 7, (short) 60_000);

      isRefusedBeforeMemoryIsTaken(jpeg);
    }

    @Test
    void bmp() {
      byte[] bmp = Kind.BMP.bytes();
      ByteBuffer.wrap(bmp).order(ByteOrder.LITTLE_ENDIAN).putInt(18, 60_000).putInt(22, 60_000);

      isRefusedBeforeMemoryIsTaken(bmp);
    }

    @Test
    void tiff() {
      byte[] tiff = PictureBytes.deepTiff(8, 8, 1, 2, 3);
      ByteBuffer.wrap(tiff).putShort(10 + 8, (short) 60_000).putShort(22 + 8, (short) 60_000);

      isRefusedBeforeMemoryIsTaken(tiff);
    }

    @Test
    void webp() {
      isRefusedBeforeMemoryIsTaken(RareFiles.extendedWebp(60_000, 60_000, 0));
    }
  }

  @Nested
  class OddKinds {
    @Test
    void aProgressiveJpegIsReadAsAnyOther() {
      assertThat(pixels(read(Kind.PROGRESSIVE_JPEG.bytes()).orElseThrow()))
          .isEqualTo(pixels(read(Kind.JPEG.bytes()).orElseThrow()));
    }

    /** Adobe's CMYK is stored inverted: 255 is no ink. */
    @Test
    void aCmykJpegIsReadInItsColours() throws Exception {
      PhotoFile file = read(RareFiles.cmykJpeg(24, 16, 255, 40, 40, 255)).orElseThrow();

      assertThat(file.photo().red(9, 9)).isGreaterThan(180);
      assertThat(file.photo().green(9, 9)).isLessThan(120);
      assertThat(file.photo().blue(9, 9)).isLessThan(120);
      assertThat(file.photo().widthPx()).isEqualTo(24);
    }

    @Test
    void ofAnAnimatedPngTheStillPictureIsMeasuredAndItIsSaid() {
      byte[] frames = {0, 0, 0, 3, 0, 0, 0, 0};
      PhotoFile file = read(PictureBytes.withChunk(Kind.PNG.bytes(), "acTL", frames)).orElseThrow();

      assertThat(pixels(file)).isEqualTo(pixels(read(Kind.PNG.bytes()).orElseThrow()));
      assertThat(file.remarks())
          .containsExactly("strip.x holds 3 pictures; only the first is measured.");
    }

    @Test
    void anAnimatedWebpIsRefusedInWords() {
      assertThat(refusalOf(RareFiles.extendedWebp(40, 30, 2))).contains("animated");
    }

    @Test
    void onePixelIsAPicture() {
      byte[] png = PictureBytes.written(PictureBytes.filled(1, 1, 0x112233), "png");

      assertThat(pixels(read(png).orElseThrow())).containsExactly(0x112233);
    }
  }

  @Nested
  class TagsThatLie {
    private final byte[] jpeg = Kind.JPEG.bytes();

    private void changeNothing(byte[] exif) {
      ThreadMXBean threads = (ThreadMXBean) ManagementFactory.getThreadMXBean();
      long before = threads.getCurrentThreadAllocatedBytes();

      PhotoFile file = read(PictureBytes.withSegment(jpeg, 0xe1, exif)).orElseThrow();

      assertThat(pixels(file)).isEqualTo(pixels(read(jpeg).orElseThrow()));
      assertThat(threads.getCurrentThreadAllocatedBytes() - before).isLessThan(64L << 20);
    }

    @Test
    void aDirectoryThatPointsToItself() {
      byte[] exif = PictureBytes.exif(1, 300, 26);
      ByteBuffer.wrap(exif).putInt(6 + 8 + 2 + 4 * 12 + 8, 8); // the sub-directory is the main one
      ByteBuffer.wrap(exif).putInt(6 + 8 + 2 + 5 * 12, 8); // and so is the next

      changeNothing(exif);
    }

    @Test
    void countsOfThousandsOfMillions() {
      byte[] exif = PictureBytes.exif(1, 300, 26);
      for (int entry = 1; entry < 5; entry++) {
        ByteBuffer.wrap(exif).putInt(6 + 8 + 2 + entry * 12 + 4, 0x7fffffff);
      }

      changeNothing(exif);
    }

    @Test
    void aTiffWhoseNextPictureIsItself() {
      byte[] tiff = PictureBytes.deepTiff(8, 8, 0x1122, 0x3344, 0x5566);
      ByteBuffer.wrap(tiff).putInt(8 + 2 + 9 * 12, 8);

      Optional<PhotoFile> file = read(tiff);

      file.ifPresent(f -> assertThat(pixels(f)[0]).isEqualTo(0x113355));
    }

    /** XML can name a file or an address to fetch; nobody may be called. */
    @Test
    void aPacketOfXmlCallsNobody() throws Exception {
      try (ServerSocket server = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
        server.setSoTimeout(300);
        String address = "http://127.0.0.1:" + server.getLocalPort() + "/";
        String xmp =
            "<?xpacket begin='' id='W5M0MpCehiHzreSzNTczkc9d'?><!DOCTYPE x [<!ENTITY e SYSTEM '"
                + address
                + "'>]><x:xmpmeta xmlns:x='adobe:ns:meta/'>&e;</x:xmpmeta><?xpacket end='w'?>";

        read(RareFiles.tiffWithXmp(xmp));
        read(RareFiles.webpWithXmp(xmp));
        read(
            PictureBytes.withSegment(
                jpeg,
                0xe1,
                ("http://ns.adobe.com/xap/1.0/\0" + xmp).getBytes(StandardCharsets.UTF_8)));

        assertThat(catchThrowableOfType(SocketTimeoutException.class, server::accept)).isNotNull();
      }
    }

    /** Each scan makes the decoder go over the whole picture once more. */
    @Test
    void aJpegOfThousandsOfScansIsRefused() throws Exception {
      byte[] many = RareFiles.withLastScanRepeated(Kind.PROGRESSIVE_JPEG.bytes(), 1000);

      assertThat(refusalOf(many)).contains("scans");
    }
  }

  @Nested
  class WhileItIsRead {
    @TempDir Path folder;

    /** A file that is written to meanwhile is the old one, the new one, or refused. */
    @Test
    void aFileThatChangesIsNeverHalfOfEach() throws Exception {
      byte[] one = PictureBytes.written(PictureBytes.filled(400, 300, 0x204060), "bmp");
      byte[] other = PictureBytes.written(PictureBytes.filled(400, 300, 0xa0c0e0), "bmp");
      Path file = Files.write(folder.resolve("strip.bmp"), one);
      Thread writer =
          new Thread(
              () -> {
                try {
                  for (int i = 0; !Thread.currentThread().isInterrupted(); i++) {
                    Files.write(file, i % 2 == 0 ? other : one);
                  }
                } catch (IOException e) {
                  Thread.currentThread().interrupt(); // the test ends by what it reads
                }
              });
      writer.start();
      List<Integer> mixed = new ArrayList<>();
      try {
        for (int i = 0; i < 300; i++) {
          try {
            int[] pixels = pixels(PhotoFile.read(file));
            if (Arrays.stream(pixels).distinct().count() > 1) {
              mixed.add(i);
            }
          } catch (UnreadablePictureException e) {
            assertThat(e.getMessage()).startsWith("strip.bmp cannot be read: ");
          }
        }
      } finally {
        writer.interrupt();
        writer.join();
      }

      assertThat(mixed).isEmpty();
    }
  }
}
