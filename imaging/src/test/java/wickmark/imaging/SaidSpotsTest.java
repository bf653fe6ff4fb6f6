package wickmark.imaging;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static wickmark.imaging.DrawnStrips.scanned;
import static wickmark.imaging.DrawnStrips.seen;
import static wickmark.imaging.SaidPlacesTest.read;
import static wickmark.imaging.SaidPlacesTest.refusal;
import static wickmark.imaging.SaidPlacesTest.rf;

import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import wickmark.core.chromatogram.SpotEvidence;
import wickmark.core.chromatogram.SpotFlag;
import wickmark.imaging.ReadingRequest.SaidSpot;
import wickmark.imaging.finding.Doubt;
import wickmark.imaging.photo.Photo;
import wickmark.imaging.photo.PhotoPoint;
import wickmark.testdata.picture.DrawnPicture;

/**
 * What a person says of single spots is kept; the others are measured as before. The drawn strip
 * has its baseline at 18 mm and its front at 84 mm, so that Rf 1 is 66 mm.
 */
class SaidSpotsTest {
  private static final DrawnPicture PLAIN = DrawnStrips.Plain.SCAN;
  private static final DrawnPicture TILTED = DrawnStrips.Tilted.PHOTO;
  private static final double A_MM = 14;
  private static final double X_MM = 50;

  /** The strip as it is read when nothing is said of its spots. */
  private static StripReading untouched;

  @BeforeAll
  static void readItOnce() {
    untouched = said();
  }

  private static Photo plain() {
    return scanned(PLAIN, DrawnStrips.DPI);
  }

  private static double height(double rf) {
    return 18 + 66 * rf;
  }

  private static PhotoPoint at(double xMm, double rf) {
    return seen(PLAIN, xMm, height(rf));
  }

  private static StripReading said(SaidSpot... spots) {
    return read(plain(), new RequestBuilder().lanes("A", "B", "X").spots(spots));
  }

  private static List<SpotEvidence> spots(StripReading reading, int lane) {
    return reading.evidence().lanes().get(lane).spots();
  }

  private static List<String> doubts(StripReading reading) {
    return reading.doubts().stream().map(Doubt::code).toList();
  }

  @Test
  void aSpotThatIsMovedIsWhereThePersonPutIt() {
    StripReading after = said(new SaidSpot.Moved("A", at(A_MM, 0.72), at(A_MM, 0.70)));

    SpotEvidence moved = spots(after, 0).get(0);
    assertThat(spots(after, 0)).hasSize(1);
    assertThat(rf(after, 0, 0)).isCloseTo(0.70, within(0.003));
    assertThat(moved.flags()).contains(SpotFlag.BY_HAND);
    assertThat(moved.middle()).isEqualTo(moved.centroid());
    assertThat(moved.densest()).isEqualTo(moved.centroid());
    // 0.3 mm by eye and one pixel of 150 dpi, 0.17 mm.
    assertThat(moved.centroid().standardUncertainty()).isCloseTo(0.345, within(0.01));
    assertThat(spots(after, 1)).isEqualTo(spots(untouched, 1));
    assertThat(spots(after, 2)).isEqualTo(spots(untouched, 2));
  }

  @Test
  void itsColourAndExtentAreMeasuredWhereItIs() {
    SpotEvidence found = spots(untouched, 0).get(0);
    SpotEvidence moved =
        spots(said(new SaidSpot.Moved("A", at(A_MM, 0.72), at(A_MM, 0.725))), 0).get(0);

    assertThat(moved.look().colour().lightness())
        .isCloseTo(found.look().colour().lightness(), within(2.0));
    assertThat(moved.look().colour().b()).isCloseTo(found.look().colour().b(), within(2.0));
    assertThat(moved.extent().topAlong()).isCloseTo(found.extent().topAlong(), within(0.8));
    assertThat(moved.extent().bottomAlong()).isCloseTo(found.extent().bottomAlong(), within(0.8));
  }

  @Test
  void aSpotThatIsTakenOutIsGoneAndNotMissed() {
    StripReading after = said(new SaidSpot.Removed(at(X_MM, 0.25)));

    assertThat(spots(after, 2)).hasSize(1);
    assertThat(rf(after, 2, 0)).isCloseTo(0.72, within(0.006));
    assertThat(doubts(after)).doesNotContain("stain-left-over", "correction-not-used");
  }

  @Test
  void aSpotThatIsAddedWhereNoDyeIsSeenIsKeptAndDoubted() {
    StripReading after = said(new SaidSpot.Added("A", at(A_MM, 0.3)));

    assertThat(spots(after, 0)).hasSize(2);
    assertThat(rf(after, 0, 1)).isCloseTo(0.3, within(0.003));
    assertThat(spots(after, 0).get(1).extent().area()).isZero();
    assertThat(after.pictures().get(0).spots().get(1).outlinePx()).isEmpty();
    assertThat(doubts(after)).contains("spots-by-hand-unseen");
  }

  /** Two hands on one stain part it halfway between them. */
  @Test
  void neighboursShareTheStain() {
    StripReading after =
        said(
            new SaidSpot.Moved("A", at(A_MM, 0.72), at(A_MM, 0.735)),
            new SaidSpot.Added("A", at(A_MM, 0.705)));

    SpotEvidence upper = spots(after, 0).get(0);
    SpotEvidence lower = spots(after, 0).get(1);
    assertThat(upper.extent().bottomAlong()).isCloseTo(0.72 * 66, within(0.4));
    assertThat(lower.extent().topAlong()).isCloseTo(0.72 * 66, within(0.4));
  }

  @Test
  void whatFindsNothingAtItsOldPlaceSaysSo() {
    StripReading after =
        said(
            new SaidSpot.Removed(at(A_MM, 0.4)),
            new SaidSpot.Moved("A", at(A_MM, 0.2), at(A_MM, 0.25)));

    assertThat(doubts(after).stream().filter("correction-not-used"::equals)).hasSize(2);
    assertThat(rf(after, 0, 1)).isCloseTo(0.25, within(0.003));
  }

  @Test
  void aPlaceOnNoStripIsRefused() {
    Photo photo = plain();
    assertThat(
            refusal(
                    photo,
                    new RequestBuilder()
                        .spots(new SaidSpot.Added("1", new PhotoPoint(1, photo.heightPx() - 1))))
                .message())
        .contains("the corrections of a spot");
  }

  @Test
  void theWayFromThePictureToTheStripIsThatOfEveryPlace() {
    Photo photo = DrawnStrips.bare(TILTED);
    StripReading after =
        read(
            photo,
            new RequestBuilder()
                .lanes("A", "B", "X")
                .spots(
                    new SaidSpot.Moved(
                        "B", seen(TILTED, 32, height(0.48)), seen(TILTED, 32, height(0.55)))));

    // The view of a photo without a ruler is known to about 0.002 of Rf.
    assertThat(rf(after, 1, 0)).isCloseTo(0.55, within(0.005));
    assertThat(after.pictures().get(1).spots().get(0).centrePx().get(1))
        .isCloseTo(seen(TILTED, 32, height(0.55)).y(), within(0.01));
  }
}
