package wickmark.cli.photo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Transparency;
import java.awt.color.ColorSpace;
import java.awt.image.BufferedImage;
import java.awt.image.ComponentColorModel;
import java.awt.image.DataBuffer;
import java.awt.image.Raster;
import java.awt.image.WritableRaster;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Base64;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import wickmark.imaging.photo.Photo;
import wickmark.imaging.photo.Resolution;

class PhotoFileTest {
  @TempDir Path folder;

  private PhotoFile read(String name, byte[] bytes) throws Exception {
    return PhotoFile.read(Files.write(folder.resolve(name), bytes));
  }

  private static int[] pixel(Photo photo, int x, int y) {
    return new int[] {photo.red(x, y), photo.green(x, y), photo.blue(x, y)};
  }

  @Nested
  class Formats {
    @ParameterizedTest
    @ValueSource(strings = {"png", "bmp", "tiff"})
    void losslessOnesComeThroughUnchanged(String format) throws Exception {
      BufferedImage drawn = PictureBytes.gradient(31, 17);

      Photo photo = read("strip." + format, PictureBytes.written(drawn, format)).photo();

      assertThat(photo.widthPx()).isEqualTo(31);
      assertThat(photo.heightPx()).isEqualTo(17);
      Color expected = new Color(drawn.getRGB(20, 5));
      assertThat(pixel(photo, 20, 5))
          .containsExactly(expected.getRed(), expected.getGreen(), expected.getBlue());
    }

    @Test
    void jpegComesThroughNearlyUnchanged() throws Exception {
      BufferedImage drawn = PictureBytes.filled(40, 24, 0x3c78b4);

      Photo photo = read("strip.jpg", PictureBytes.written(drawn, "jpeg")).photo();

      assertThat(photo.red(20, 12)).isCloseTo(0x3c, within(2));
      assertThat(photo.green(20, 12)).isCloseTo(0x78, within(2));
      assertThat(photo.blue(20, 12)).isCloseTo(0xb4, within(2));
    }

    @Test
    void losslessWebpComesThroughUnchanged() throws Exception {
      // 3 x 2 px of (200, 40, 60), the first pixel (10, 20, 30)
      byte[] webp =
          Base64.getDecoder().decode("UklGRiAAAABXRUJQVlA4TBQAAAAvAkAAAA9Qiiv41mP+w3CDg4j+hw==");

      Photo photo = read("strip.webp", webp).photo();

      assertThat(pixel(photo, 0, 0)).containsExactly(10, 20, 30);
      assertThat(pixel(photo, 2, 1)).containsExactly(200, 40, 60);
    }

    @Test
    void theEndingOfTheNamePlaysNoPart() throws Exception {
      byte[] png = PictureBytes.written(PictureBytes.filled(3, 3, 0x102030), "png");

      assertThat(pixel(read("strip.jpg", png).photo(), 1, 1)).containsExactly(16, 32, 48);
    }

    @Test
    void theFingerprintIsThatOfTheFile() throws Exception {
      // FIPS 180-4's own example values hash text, so the digest is checked against the empty PNG's
      // neighbour: the same bytes under two names agree, another picture does not.
      byte[] one = PictureBytes.written(PictureBytes.filled(3, 3, 0x102030), "png");
      byte[] other = PictureBytes.written(PictureBytes.filled(3, 3, 0x102031), "png");

      String hash = read("a.png", one).sha256();

      assertThat(hash).matches("[0-9a-f]{64}").isEqualTo(read("b.png", one).sha256());
      assertThat(read("c.png", other).sha256()).isNotEqualTo(hash);
    }
  }

  @Nested
  class Samples {
    @ParameterizedTest
    @ValueSource(strings = {"png", "tiff"})
    void greyOnesAreNotLifted(String format) throws Exception {
      BufferedImage grey = new BufferedImage(4, 4, BufferedImage.TYPE_BYTE_GRAY);
      grey.getRaster().setSample(2, 1, 0, 210);

      Photo photo = read("grey." + format, PictureBytes.written(grey, format)).photo();

      assertThat(pixel(photo, 2, 1)).containsExactly(210, 210, 210);
    }

    @Test
    void greyJpegIsNotLifted() throws Exception {
      BufferedImage grey = new BufferedImage(16, 16, BufferedImage.TYPE_BYTE_GRAY);
      for (int i = 0; i < 256; i++) {
        grey.getRaster().setSample(i % 16, i / 16, 0, 210);
      }

      Photo photo = read("grey.jpg", PictureBytes.written(grey, "jpeg")).photo();

      assertThat(photo.green(8, 8)).isCloseTo(210, within(1));
    }

    @ParameterizedTest
    @ValueSource(strings = {"png", "tiff"})
    void sixteenBitGreyKeepsItsUpperByte(String format) throws Exception {
      BufferedImage grey = new BufferedImage(4, 4, BufferedImage.TYPE_USHORT_GRAY);
      grey.getRaster().setSample(2, 1, 0, 210 * 257);

      Photo photo = read("grey16." + format, PictureBytes.written(grey, format)).photo();

      assertThat(pixel(photo, 2, 1)).containsExactly(210, 210, 210);
    }

    @Test
    void sixteenBitColourKeepsItsUpperByte() throws Exception {
      ComponentColorModel model =
          new ComponentColorModel(
              ColorSpace.getInstance(ColorSpace.CS_sRGB),
              false,
              false,
              Transparency.OPAQUE,
              DataBuffer.TYPE_USHORT);
      WritableRaster raster = Raster.createInterleavedRaster(DataBuffer.TYPE_USHORT, 4, 4, 3, null);
      raster.setPixel(1, 2, new int[] {200 * 257, 100 * 257, 50 * 257});
      BufferedImage image = new BufferedImage(model, raster, false, null);

      Photo photo = read("deep.png", PictureBytes.written(image, "png")).photo();

      assertThat(pixel(photo, 1, 2)).containsExactly(200, 100, 50);
    }

    @Test
    void sixteenBitColourTiffKeepsItsUpperByte() throws Exception {
      byte[] tiff = PictureBytes.deepTiff(5, 3, 200 * 257, 100 * 257, 50 * 257);

      assertThat(pixel(read("deep.tif", tiff).photo(), 4, 2)).containsExactly(200, 100, 50);
    }

    @Test
    void paletteAndOneBitPicturesComeThrough() throws Exception {
      BufferedImage bits = new BufferedImage(5, 5, BufferedImage.TYPE_BYTE_BINARY);
      bits.setRGB(3, 3, 0xffffff);

      Photo photo = read("bits.png", PictureBytes.written(bits, "png")).photo();

      assertThat(pixel(photo, 3, 3)).containsExactly(255, 255, 255);
      assertThat(pixel(photo, 2, 3)).containsExactly(0, 0, 0);
    }

    @Test
    void transparentPartsLieOnWhite() throws Exception {
      BufferedImage image = new BufferedImage(4, 4, BufferedImage.TYPE_INT_ARGB);
      image.setRGB(1, 1, 0x80ff0000);

      Photo photo = read("clear.png", PictureBytes.written(image, "png")).photo();

      assertThat(pixel(photo, 0, 0)).containsExactly(255, 255, 255);
      assertThat(photo.red(1, 1)).isEqualTo(255);
      assertThat(photo.green(1, 1)).isCloseTo(127, within(1));
    }
  }

  @Nested
  class Upright {
    /**
     * CIPA DC-008, section 4.6.4: which corner of the upright picture the stored one's first is.
     */
    @ParameterizedTest
    @CsvSource({
      "1, 0, 0, 48, 32",
      "2, 47, 0, 48, 32",
      "3, 47, 31, 48, 32",
      "4, 0, 31, 48, 32",
      "5, 0, 0, 32, 48",
      "6, 31, 0, 32, 48",
      "7, 31, 47, 32, 48",
      "8, 0, 47, 32, 48",
      "9, 0, 0, 48, 32"
    })
    void theFirstStoredPixelGoesToItsCorner(int tag, int x, int y, int width, int height)
        throws Exception {
      BufferedImage drawn = PictureBytes.filled(48, 32, 0xffffff);
      Graphics2D pen = drawn.createGraphics();
      pen.setColor(Color.BLACK);
      pen.fillRect(0, 0, 8, 8);
      pen.dispose();
      byte[] jpeg = PictureBytes.written(drawn, "jpeg");

      Photo photo =
          read("o.jpg", PictureBytes.withSegment(jpeg, 0xe1, PictureBytes.exif(tag, 300, 26)))
              .photo();

      assertThat(photo.widthPx()).isEqualTo(width);
      assertThat(photo.heightPx()).isEqualTo(height);
      assertThat(photo.green(x, y)).isLessThan(30);
      assertThat(photo.green(width - 1 - x, y)).isGreaterThan(225);
      assertThat(photo.green(x, height - 1 - y)).isGreaterThan(225);
    }

    /** The second row or column tells a turn from a mirror. */
    @Test
    void aQuarterTurnIsNoMirrorImage() throws Exception {
      byte[] jpeg = PictureBytes.written(PictureBytes.gradient(64, 48), "jpeg");

      Photo photo =
          read("o.jpg", PictureBytes.withSegment(jpeg, 0xe1, PictureBytes.exif(6, 300, 26)))
              .photo();

      // Stored red grows to the right, so it grows downwards; green grew down, so it grows
      // leftwards.
      assertThat(photo.red(24, 60)).isGreaterThan(photo.red(24, 4) + 150);
      assertThat(photo.green(4, 32)).isGreaterThan(photo.green(44, 32) + 150);
    }
  }

  @Nested
  class Metadata {
    private final byte[] jpeg = PictureBytes.written(PictureBytes.filled(16, 16, 0x808080), "jpeg");

    @Test
    void exifGivesResolutionAndFocalLengthOfACamera() throws Exception {
      Photo photo =
          read("e.jpg", PictureBytes.withSegment(jpeg, 0xe1, PictureBytes.exif(1, 240, 26)))
              .photo();

      assertThat(photo.resolution()).contains(new Resolution(240, 240));
      assertThat(photo.focalLength35mm()).hasValue(26);
      assertThat(photo.fromCamera()).isTrue();
    }

    @Test
    void jfifGivesTheResolutionOfAScanner() throws Exception {
      byte[] scan = jpeg.clone();
      scan[13] = 1; // dots per inch
      scan[14] = 1;
      scan[15] = 44;
      scan[16] = 1;
      scan[17] = 44;

      Photo photo = read("s.jpg", scan).photo();

      assertThat(photo.resolution()).contains(new Resolution(300, 300));
      assertThat(photo.fromCamera()).isFalse();
    }

    @Test
    void anAspectRatioIsNoResolution() throws Exception {
      assertThat(read("s.jpg", jpeg).photo().resolution()).isEmpty();
    }

    @Test
    void pngGivesPixelsPerMetre() throws Exception {
      byte[] png = PictureBytes.written(PictureBytes.filled(4, 4, 0x808080), "png");
      byte[] perMetre = {0, 0, 0x2e, 0x23, 0, 0, 0x2e, 0x23, 1}; // 11811, what 300 dpi becomes

      Resolution found =
          read("p.png", PictureBytes.withChunk(png, "pHYs", perMetre))
              .photo()
              .resolution()
              .orElseThrow();

      assertThat(found.dpiX()).isCloseTo(300, within(0.01));
    }

    @Test
    void aLyingExifBlockSaysNothing() throws Exception {
      byte[] exif = PictureBytes.exif(1, 300, 26);
      for (int i = 14; i < exif.length; i++) {
        exif[i] = (byte) 0xff;
      }

      Photo photo = read("l.jpg", PictureBytes.withSegment(jpeg, 0xe1, exif)).photo();

      assertThat(photo.widthPx()).isEqualTo(16);
      assertThat(photo.focalLength35mm()).isEmpty();
    }
  }

  /** The colorants of the Display P3 profile, XYZ relative to D50, from memory. */
  private static final double[][] DISPLAY_P3 = {
    {0.51512, 0.24120, -0.00105}, {0.29198, 0.69225, 0.04189}, {0.15710, 0.06657, 0.78407}
  };

  @Nested
  class Profiles {
    /**
     * CSS Color Module Level 4 (W3C, 2022): sRGB lime is color(display-p3 0.4584 0.9853 0.2983).
     */
    @Test
    void displayP3BecomesSrgbInPng() throws Exception {
      byte[] png = PictureBytes.written(PictureBytes.filled(4, 4, 0x75fb4c), "png");

      Photo photo = read("p3.png", PictureBytes.withChunk(png, "iCCP", iccp(DISPLAY_P3))).photo();

      assertThat(photo.red(1, 1)).isLessThan(25);
      assertThat(photo.green(1, 1)).isCloseTo(255, within(1));
      assertThat(photo.blue(1, 1)).isLessThan(25);
    }

    @Test
    void displayP3BecomesSrgbInJpeg() throws Exception {
      byte[] jpeg = PictureBytes.written(PictureBytes.filled(16, 16, 0xea3323), "jpeg");
      byte[] icc = PictureBytes.profile(DISPLAY_P3);
      byte[] content = new byte[14 + icc.length];
      System.arraycopy("ICC_PROFILE\0\1\1".getBytes(StandardCharsets.US_ASCII), 0, content, 0, 14);
      System.arraycopy(icc, 0, content, 14, icc.length);

      Photo photo = read("p3.jpg", PictureBytes.withSegment(jpeg, 0xe2, content)).photo();

      assertThat(photo.red(8, 8)).isGreaterThan(250);
      assertThat(photo.green(8, 8)).isLessThan(30);
      assertThat(photo.blue(8, 8)).isLessThan(30);
    }

    /**
     * Neutral colours and those inside both gamuts: greys stay greys under any white-point pair.
     */
    @Test
    void greysStayWhatTheyAre() throws Exception {
      byte[] png = PictureBytes.written(PictureBytes.filled(4, 4, 0xb4b4b4), "png");

      Photo photo = read("p3.png", PictureBytes.withChunk(png, "iCCP", iccp(DISPLAY_P3))).photo();

      assertThat(photo.red(1, 1)).isCloseTo(180, within(1));
      assertThat(photo.green(1, 1)).isCloseTo(180, within(1));
      assertThat(photo.blue(1, 1)).isCloseTo(180, within(1));
    }

    @Test
    void aBrokenProfileIsSaid() throws Exception {
      byte[] png = PictureBytes.written(PictureBytes.filled(4, 4, 0x75fb4c), "png");
      byte[] garbage = ("x\0\0" + "not a packed profile").getBytes(StandardCharsets.US_ASCII);

      PhotoFile file = read("bad.png", PictureBytes.withChunk(png, "iCCP", garbage));

      assertThat(pixel(file.photo(), 1, 1)).containsExactly(0x75, 0xfb, 0x4c);
      assertThat(file.remarks()).singleElement().asString().contains("colour profile");
    }

    private byte[] iccp(double[][] colorants) throws IOException {
      byte[] packed = PictureBytes.packed(PictureBytes.profile(colorants));
      byte[] chunk = new byte[packed.length + 3];
      chunk[0] = 'p';
      System.arraycopy(packed, 0, chunk, 3, packed.length);
      return chunk;
    }
  }
}
