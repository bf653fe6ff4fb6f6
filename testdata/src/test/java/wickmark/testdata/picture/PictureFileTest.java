package wickmark.testdata.picture;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PictureFileTest {

  /** 4 x 2 pixels whose red tells the column and whose green tells the row. */
  private static Picture numbered() {
    byte[] rgb = new byte[3 * 8];
    for (int i = 0; i < 8; i++) {
      rgb[3 * i] = (byte) (i % 4);
      rgb[3 * i + 1] = (byte) (i / 4);
    }
    return new Picture(4, 2, rgb);
  }

  /**
   * TIFF 6.0 (1992), tag 274: which corner of the upright picture the stored first pixel is, and
   * whether stored rows are upright columns.
   */
  @ParameterizedTest
  @CsvSource({
    "1,0,0,4", "2,3,0,4", "3,3,1,4", "4,0,1,4", "5,0,0,2", "6,3,0,2", "7,3,1,2", "8,0,1,2"
  })
  void storesThePixelsAsTheOrientationSays(
      int orientation, int firstColumn, int firstRow, int width) {
    PictureTags tags = new PictureTags(orientation, Optional.empty(), OptionalDouble.empty());

    Picture stored = tags.stored(numbered());

    assertThat(stored.value(0, 0, 0)).isEqualTo(firstColumn);
    assertThat(stored.value(0, 0, 1)).isEqualTo(firstRow);
    assertThat(stored.widthPx()).isEqualTo(width);
  }

  @Test
  void aJpegCarriesItsResolutionInDotsPerInch() {
    byte[] file = PictureFile.jpeg(new Picture(16, 16, new byte[768]), 90, PictureTags.dpi(300));

    // JFIF 1.02: units at byte 13 (1 = dots per inch), densities as 16-bit numbers after it.
    assertThat(file[13]).isEqualTo((byte) 1);
    assertThat(((file[14] & 0xff) << 8) | (file[15] & 0xff)).isEqualTo(300);
  }

  @Test
  void aJpegWithOrientationCanStillBeRead() {
    PictureTags tags = new PictureTags(6, Optional.empty(), OptionalDouble.of(26.4));

    Picture read =
        PictureFile.decoded(PictureFile.jpeg(new Picture(32, 16, new byte[1536]), 90, tags));

    assertThat(read.widthPx()).isEqualTo(16);
    assertThat(read.heightPx()).isEqualTo(32);
  }

  @Test
  void aPngGivesBackItsPixels() {
    assertThat(PictureFile.decoded(PictureFile.png(numbered(), PictureTags.dpi(200))).rgb())
        .isEqualTo(numbered().rgb());
  }
}
