package wickmark.imaging;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;
import static org.assertj.core.api.Assertions.within;
import static wickmark.imaging.DrawnStrips.scanned;
import static wickmark.imaging.DrawnStrips.seen;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import wickmark.core.chromatogram.LaneEvidence;
import wickmark.imaging.finding.Refusal;
import wickmark.imaging.line.LineKind;
import wickmark.imaging.photo.Photo;
import wickmark.imaging.photo.PhotoPoint;
import wickmark.testdata.picture.DrawnPicture;
import wickmark.testdata.strip.Baseline;
import wickmark.testdata.strip.Lead;

/** Each place that a person says replaces the search for that part, and nothing else. */
class SaidPlacesTest {
  private static final DrawnPicture PLAIN = DrawnStrips.Plain.SCAN;

  static StripReading read(Photo photo, RequestBuilder said) {
    return only(StripReader.readAll(photo, said.build()));
  }

  private static StripReading only(List<StripOutcome> outcomes) {
    assertThat(outcomes).hasSize(1);
    return outcomes
        .get(0)
        .fold(
            reading -> reading,
            refusal -> {
              throw new AssertionError(refusal.message());
            });
  }

  static Refusal refusal(Photo photo, RequestBuilder said) {
    return StripReader.readAll(photo, said.build())
        .get(0)
        .fold(
            reading -> {
              throw new AssertionError("measured");
            },
            refused -> refused);
  }

  private static Photo plain() {
    return scanned(PLAIN, DrawnStrips.DPI);
  }

  /** Rf of a lane's spot, counted from the front. */
  static double rf(StripReading reading, int lane, int spot) {
    LaneEvidence evidence = reading.evidence().lanes().get(lane);
    return evidence.spots().get(spot).centroid().along() / evidence.front().along();
  }

  @Test
  void theDrawnStripIsReadWithoutAWordAndEachStageIsToldInItsTurn() {
    List<ReadingStage> told = new ArrayList<>();
    StripReading reading =
        only(StripReader.readAll(plain(), new RequestBuilder().build(), told::add));

    assertThat(reading.evidence().lanes()).hasSize(3);
    assertThat(rf(reading, 1, 0)).isCloseTo(0.48, within(0.006));

    assertThat(told)
        .containsSubsequence(
            ReadingStage.RULER,
            ReadingStage.CARD,
            ReadingStage.FIND,
            ReadingStage.CHOOSE,
            ReadingStage.STRAIGHTEN,
            ReadingStage.LINES,
            ReadingStage.LANES,
            ReadingStage.SPOTS,
            ReadingStage.DISTANCES)
        .containsOnlyOnce(ReadingStage.STRAIGHTEN, ReadingStage.SPOTS);
  }

  @Test
  void cornersMayBeSaidInAnyOrder() {
    List<PhotoPoint> corners = DrawnStrips.corners(PLAIN);
    StripReading reading =
        read(
            plain(),
            new RequestBuilder()
                .corners(List.of(corners.get(2), corners.get(0), corners.get(3), corners.get(1))));
    for (int i = 0; i < 4; i++) {
      assertThat(reading.placed().corners().get(i)).isEqualTo(corners.get(i));
    }
    assertThat(rf(reading, 1, 0)).isCloseTo(0.48, within(0.006));
  }

  @Test
  void theBottomSaidIsTheBottom() {
    List<PhotoPoint> up =
        read(plain(), new RequestBuilder().bottom(ReadingRequest.Bottom.DOWN)).placed().corners();
    assertThat(up.get(3).y()).isGreaterThan(up.get(0).y());
    // The pencilled front is then the baseline, and the spots keep their places.
    StripOutcome turned =
        StripReader.readAll(plain(), new RequestBuilder().bottom(ReadingRequest.Bottom.UP).build())
            .get(0);
    boolean obeyed =
        turned.fold(
            reading ->
                reading.placed().corners().get(3).y() < reading.placed().corners().get(0).y(),
            refused -> true);
    assertThat(obeyed).isTrue();
  }

  @Test
  void aFrontSaidMakesARefusedPictureMeasurable() {
    DrawnPicture picture = DrawnStrips.scan(DrawnStrips.unseenFront().build());
    Photo photo = scanned(picture, DrawnStrips.DPI);
    assertThat(refusal(photo, new RequestBuilder()).reason()).isEqualTo(Refusal.Reason.NO_FRONT);
    StripReading reading =
        read(photo, new RequestBuilder().front(seen(picture, 10, 84), seen(picture, 55, 84)));
    assertThat(reading.placed().confidence().front()).isEqualTo(1);
    assertThat(reading.placed().frontKind()).isEqualTo(LineKind.BY_HAND);
    assertThat(rf(reading, 1, 0)).isCloseTo(0.48, within(0.006));
    // Two places, each set within 0.2 mm and a pixel of 0.17 mm.
    assertThat(reading.evidence().lanes().get(1).front().standardUncertainty())
        .isBetween(0.15, 0.4);
  }

  @Test
  void aBaselineSaidMakesARefusedPictureMeasurable() {
    DrawnPicture picture =
        DrawnStrips.scan(
            DrawnStrips.sheet()
                .baseline(new Baseline(18, 0, 0.5, 63.5, Lead.USUAL, false))
                .build());
    Photo photo = scanned(picture, DrawnStrips.DPI);
    StripReading reading =
        read(photo, new RequestBuilder().baseline(seen(picture, 60, 18), seen(picture, 5, 18)));
    assertThat(reading.placed().confidence().baseline()).isEqualTo(1);
    assertThat(rf(reading, 1, 0)).isCloseTo(0.48, within(0.008));
  }

  @Test
  void aLineSaidThatRunsAlongTheStripIsRefused() {
    Refusal refused =
        refusal(
            plain(),
            new RequestBuilder()
                .bottom(ReadingRequest.Bottom.DOWN)
                .baseline(seen(PLAIN, 30, 10), seen(PLAIN, 31, 90)));
    assertThat(refused.reason()).isEqualTo(Refusal.Reason.NO_BASELINE);
    assertThat(refused.message()).contains("as they were said");
  }

  @Test
  void aLineSaidBesideTheStripIsRefused() {
    Refusal refused =
        refusal(plain(), new RequestBuilder().front(new PhotoPoint(1, 1), new PhotoPoint(20, 1)));
    assertThat(refused.message()).contains("--front").contains("no strip");
  }

  @Test
  void anOriginSaidMovesItsLaneOnly() {
    PhotoPoint said = seen(PLAIN, 34, 18);
    StripReading found = read(plain(), new RequestBuilder().lanes("A", "B", "X"));
    StripReading moved = read(plain(), new RequestBuilder().lanes("A", "B", "X").origin("B", said));
    assertThat(moved.pictures().get(1).originPx().get(0)).isCloseTo(said.x(), offset(0.3));
    assertThat(moved.pictures().get(0).originPx()).isEqualTo(found.pictures().get(0).originPx());
    assertThat(rf(moved, 1, 0)).isCloseTo(0.48, within(0.006));
  }

  @Test
  void originsOfAllLanesNeedNoSearch() {
    RequestBuilder said =
        new RequestBuilder()
            .lanes("left", "right")
            .origin("left", seen(PLAIN, 14, 18))
            .origin("right", seen(PLAIN, 50, 18));
    StripReading reading = read(plain(), said);
    assertThat(reading.evidence().lanes())
        .extracting(LaneEvidence::name)
        .containsExactly("left", "right");
  }

  @Test
  void originsInAnotherOrderThanTheNamesAreRefused() {
    RequestBuilder said =
        new RequestBuilder()
            .lanes("left", "right")
            .origin("right", seen(PLAIN, 14, 18))
            .origin("left", seen(PLAIN, 50, 18));
    assertThat(refusal(plain(), said).message()).contains("order");
  }

  @Test
  void anOriginOfNoLaneIsDoubted() {
    StripReading reading = read(plain(), new RequestBuilder().origin("Q", seen(PLAIN, 30, 18)));
    assertThat(reading.doubts()).extracting("code").contains("origin-not-used");
  }

  @Test
  void aSpotInAnIgnoredAreaIsNotThere() {
    StripReading reading =
        read(
            plain(),
            new RequestBuilder()
                .lanes("A", "B", "X")
                .ignore(seen(PLAIN, 24, 40), seen(PLAIN, 40, 60)));
    assertThat(reading.evidence().lanes().get(1).spots()).isEmpty();
    assertThat(reading.evidence().lanes().get(2).spots()).hasSize(2);
    assertThat(rf(reading, 0, 0)).isCloseTo(0.72, within(0.006));
  }

  @Test
  void theNumberOfLanesSaidIsFound() {
    StripReading reading = read(plain(), new RequestBuilder().laneCount(2));
    assertThat(reading.evidence().lanes()).hasSize(2);
  }
}
