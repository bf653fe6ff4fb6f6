package wickmark.imaging;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static wickmark.imaging.DrawnStrips.bare;
import static wickmark.imaging.DrawnStrips.scanned;
import static wickmark.imaging.DrawnStrips.seen;

import org.junit.jupiter.api.Test;
import wickmark.imaging.ReadingRequest.SaidScale;
import wickmark.imaging.photo.Photo;
import wickmark.imaging.scale.PixelScale;
import wickmark.testdata.picture.DrawnPicture;

/** The scale that a person says is used, and compared with the one in the picture. */
class SaidScaleTest {
  private static final DrawnPicture SCAN = DrawnStrips.Plain.SCAN;
  private static final DrawnPicture TILTED = DrawnStrips.Tilted.PHOTO;

  private static final double FRONT_MM = 84 - 18;

  private static StripReading read(Photo photo, SaidScale said) {
    return SaidPlacesTest.read(photo, new RequestBuilder().scale(said));
  }

  private static double frontMm(StripReading reading) {
    assertThat(reading.evidence().lengthsAreMillimetres()).isTrue();
    return reading.evidence().lanes().get(1).front().along();
  }

  @Test
  void withoutAScaleThereAreNoMillimetres() {
    StripReading reading = SaidPlacesTest.read(bare(TILTED), new RequestBuilder());
    assertThat(reading.evidence().lengthsAreMillimetres()).isFalse();
    assertThat(reading.doubts()).extracting("code").contains("no-scale");
  }

  @Test
  void aResolutionSaidScalesAScanWithoutOne() {
    StripReading reading = read(bare(SCAN), new SaidScale.Dpi(DrawnStrips.DPI));
    assertThat(reading.scale().source()).isEqualTo(PixelScale.Source.RESOLUTION);
    assertThat(frontMm(reading)).isCloseTo(FRONT_MM, within(0.25));
    assertThat(reading.doubts()).isEmpty();
  }

  @Test
  void aResolutionThatTheFileContradictsIsDoubted() {
    StripReading reading = read(scanned(SCAN, 300), new SaidScale.Dpi(DrawnStrips.DPI));
    assertThat(frontMm(reading)).isCloseTo(FRONT_MM, within(0.25));
    assertThat(reading.doubts()).extracting("code").contains("scales-disagree");
  }

  @Test
  void aResolutionSaidOfAPictureInPerspectiveIsDoubted() {
    StripReading reading = read(bare(TILTED), new SaidScale.Dpi(230));
    assertThat(reading.doubts()).extracting("code").contains("not-flat");
  }

  @Test
  void theHeightSaidScalesAPhoto() {
    StripReading reading = read(bare(TILTED), new SaidScale.StripHeight(DrawnStrips.HEIGHT_MM));
    assertThat(reading.scale().source()).isEqualTo(PixelScale.Source.STRIP_SIZE);
    assertThat(frontMm(reading)).isCloseTo(FRONT_MM, within(0.6));
  }

  @Test
  void theWidthSaidScalesAPhoto() {
    StripReading reading = read(bare(TILTED), new SaidScale.StripWidth(DrawnStrips.WIDTH_MM));
    assertThat(frontMm(reading)).isCloseTo(FRONT_MM, within(1.0));
  }

  @Test
  void widthAndHeightTogetherCheckTheProportions() {
    StripReading right =
        read(bare(TILTED), new SaidScale.StripSize(DrawnStrips.WIDTH_MM, DrawnStrips.HEIGHT_MM));
    assertThat(frontMm(right)).isCloseTo(FRONT_MM, within(0.8));
    assertThat(right.doubts()).isEmpty();
    StripReading swapped =
        read(bare(TILTED), new SaidScale.StripSize(DrawnStrips.HEIGHT_MM, DrawnStrips.WIDTH_MM));
    assertThat(swapped.doubts()).extracting("code").contains("proportions-differ");
  }

  @Test
  void aSpanSaidScalesAPhoto() {
    SaidScale.Span span = new SaidScale.Span(seen(TILTED, 5, 18), seen(TILTED, 5, 84), FRONT_MM);
    StripReading reading = read(bare(TILTED), span);
    assertThat(reading.scale().source()).isEqualTo(PixelScale.Source.SPAN);
    assertThat(frontMm(reading)).isCloseTo(FRONT_MM, within(0.4));
  }

  @Test
  void aSpanThatTheScanContradictsIsUsedAndDoubted() {
    SaidScale.Span span = new SaidScale.Span(seen(SCAN, 5, 18), seen(SCAN, 5, 84), 60);
    StripReading reading = read(scanned(SCAN, DrawnStrips.DPI), span);
    assertThat(frontMm(reading)).isCloseTo(60, within(0.4));
    assertThat(reading.doubts()).extracting("code").contains("scales-disagree");
  }
}
