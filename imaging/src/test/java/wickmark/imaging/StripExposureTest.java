package wickmark.imaging;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import wickmark.imaging.finding.Doubt;
import wickmark.imaging.photo.Photo;
import wickmark.imaging.photo.PhotoPoint;
import wickmark.imaging.pose.PlaneView;
import wickmark.imaging.straight.PaperShape;
import wickmark.imaging.straight.StraightStrip;
import wickmark.imaging.straight.StripFrame;
import wickmark.testdata.picture.Picture;
import wickmark.testdata.picture.PictureChanges;

class StripExposureTest {
  private static final int WIDTH = 120;
  private static final int HEIGHT = 200;

  /** Paper of one grey, with its upper rows at the end of the scale. */
  private static List<String> codes(int grey, int clippedRows, List<Doubt> before) {
    byte[] rgb = new byte[3 * WIDTH * HEIGHT];
    for (int i = 0; i < rgb.length; i++) {
      rgb[i] = (byte) (i < 3 * WIDTH * clippedRows ? 255 : grey);
    }
    Photo photo =
        new Photo(WIDTH, HEIGHT, rgb, java.util.Optional.empty(), OptionalDouble.empty(), false);
    List<PhotoPoint> corners =
        List.of(
            new PhotoPoint(0, 0),
            new PhotoPoint(WIDTH, 0),
            new PhotoPoint(WIDTH, HEIGHT),
            new PhotoPoint(0, HEIGHT));
    PlaneView view = new PlaneView(WIDTH / 2.0, HEIGHT / 2.0, 100, 0, 0, 0);
    StraightStrip strip =
        StraightStrip.of(
            photo, StripFrame.around(view, corners, 0.01), new PaperShape(corners, List.of()));
    return StripExposure.doubts(strip, before).stream().map(Doubt::code).toList();
  }

  @Test
  void brightPaperThatIsNotAtTheEndIsFine() {
    assertThat(codes(250, 0, List.of())).isEmpty();
  }

  @Test
  void aGleamIsFineAndAFifthOfThePaperIsNot() {
    assertThat(codes(235, 12, List.of())).isEmpty();
    assertThat(codes(235, 40, List.of())).containsExactly("over-exposed");
  }

  /** The pale mark of the solvent is lost in paper that is white in all of the picture. */
  @Test
  void aRefusalSaysThatThePictureIsTooBright() {
    assertThat(refusalOf(DrawnStrips.scan(DrawnStrips.unseenFront().build()).picture()))
        .contains("front")
        .doesNotContain("darker");
    assertThat(
            refusalOf(
                PictureChanges.brighter(
                    DrawnStrips.scan(DrawnStrips.unseenFront().build()).picture(), 0.8)))
        .contains("darker");
  }

  private static String refusalOf(Picture picture) {
    Photo photo =
        new Photo(
            picture.widthPx(),
            picture.heightPx(),
            picture.rgb(),
            java.util.Optional.empty(),
            OptionalDouble.empty(),
            false);
    return StripReader.readAll(photo, ReadingRequest.nothing())
        .get(0)
        .fold(
            reading -> {
              throw new AssertionError("measured");
            },
            refusal -> refusal.message());
  }

  @Test
  void whatTheCardSaidAlreadyIsNotSaidAgain() {
    assertThat(codes(235, 40, List.of(new Doubt("over-exposed", "The card's white …")))).isEmpty();
  }
}
