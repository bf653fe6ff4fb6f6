package wickmark.imaging;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import wickmark.imaging.finding.Doubt;
import wickmark.testdata.picture.DrawnPicture;
import wickmark.testdata.strip.Baseline;
import wickmark.testdata.strip.Blemish;
import wickmark.testdata.strip.DyeCupboard;
import wickmark.testdata.strip.LanePlan;
import wickmark.testdata.strip.Lead;
import wickmark.testdata.strip.SpotPlan;
import wickmark.testdata.strip.SpotShape;
import wickmark.testdata.strip.StripPlan;

/** What is sure is not doubted; what is not is named, with its figures and what to do. */
class FindingDoubtsTest {
  private static final StripReading.Confidence SURE =
      new StripReading.Confidence(0.8, 0.7, 1, 0.95, 0.9, 1);

  @Test
  void whatIsSureIsNotDoubted() {
    assertThat(FindingDoubts.of(SURE)).isEmpty();
  }

  @Test
  void eachFindingIsDoubtedByItself() {
    List<StripReading.Confidence> one =
        List.of(
            new StripReading.Confidence(0.1, 0.7, 1, 0.95, 0.9, 1),
            new StripReading.Confidence(0.8, 0.1, 1, 0.95, 0.9, 1),
            new StripReading.Confidence(0.8, 0.7, 0.1, 0.95, 0.9, 1),
            new StripReading.Confidence(0.8, 0.7, 1, 0.1, 0.9, 1),
            new StripReading.Confidence(0.8, 0.7, 1, 0.95, 0.1, 1),
            new StripReading.Confidence(0.8, 0.7, 1, 0.95, 0.9, 0.1));
    assertThat(one.stream().map(FindingDoubts::of))
        .allSatisfy(
            doubts -> {
              assertThat(doubts).hasSize(1);
              assertThat(doubts.get(0).message()).contains("0.10");
            });
    assertThat(one.stream().flatMap(c -> FindingDoubts.of(c).stream()).map(Doubt::code).distinct())
        .hasSize(6);
  }

  /** Both lines are as sure as the bottom is: with the other end below they change places. */
  @Test
  void linesThatHangOnTheBottomAloneAreNotDoubtedByThemselves() {
    assertThat(FindingDoubts.of(new StripReading.Confidence(0.8, 0.36, 1, 0.36, 0.36, 1)))
        .extracting(Doubt::code)
        .containsExactly("bottom-unsure");
    assertThat(FindingDoubts.of(new StripReading.Confidence(0.8, 0.6, 1, 0.9, 0.6, 1)))
        .extracting(Doubt::code)
        .containsExactly("bottom-unsure");
    assertThat(FindingDoubts.of(new StripReading.Confidence(0.36, 0.36, 1, 0.36, 0.9, 1)))
        .extracting(Doubt::code)
        .contains("strip-unsure", "baseline-unsure");
  }

  @Test
  void aPlainStripIsReadWithoutADoubt() {
    DrawnPicture picture = DrawnStrips.scan(DrawnStrips.sheet().build());
    StripReading reading =
        SaidPlacesTest.read(DrawnStrips.scanned(picture, DrawnStrips.DPI), new RequestBuilder());
    assertThat(reading.doubts()).isEmpty();
  }

  /** Two lanes 9.5 mm apart whose spots are nearly as wide, and nobody says how many there are. */
  @Test
  void lanesOfARibbonAreCountedWithoutADoubt() {
    SpotShape wide = SpotShape.gaussian(2.4, 1.8);
    DrawnPicture picture =
        DrawnStrips.scan(
            StripPlan.sheet(31, 150)
                .baseline(21, 0)
                .front(140)
                .namedLane(LanePlan.unknown("?", 9, SpotPlan.of(DyeCupboard.SKY, 0.2, 0.25, wide)))
                .namedLane(
                    LanePlan.reference("K1", 18.5, SpotPlan.of(DyeCupboard.SKY, 0.2, 0.6, wide)))
                .seed(4)
                .build());
    StripReading reading =
        SaidPlacesTest.read(DrawnStrips.scanned(picture, DrawnStrips.DPI), new RequestBuilder());
    assertThat(reading.evidence().lanes()).hasSize(2);
    assertThat(reading.doubts()).isEmpty();
  }

  @Test
  void aSpotAtTheBaselineIsDoubted() {
    DrawnPicture picture =
        DrawnStrips.scan(
            DrawnStrips.sheet()
                .lane(
                    LanePlan.reference(
                        "C",
                        41,
                        SpotPlan.of(DyeCupboard.LEAF, 0.045, 0.5, SpotShape.gaussian(1.6, 1.2))))
                .build());
    StripReading reading =
        SaidPlacesTest.read(DrawnStrips.scanned(picture, DrawnStrips.DPI), new RequestBuilder());
    assertThat(reading.doubts()).extracting("code").contains("spots-near-origin");
  }

  @Test
  void inkThatRanOutOfTheBaselineIsSaidAndIsNoSpot() {
    DrawnPicture picture =
        DrawnStrips.scan(
            DrawnStrips.sheet()
                .baseline(new Baseline(18, 0.3, 0, DrawnStrips.WIDTH_MM, Lead.USUAL, false))
                .blemish(new Blemish.RunningLine(18, 6, 0.4, DyeCupboard.INK))
                .build());
    StripReading reading =
        SaidPlacesTest.read(DrawnStrips.scanned(picture, DrawnStrips.DPI), new RequestBuilder());
    assertThat(reading.doubts()).extracting("code").contains("baseline-ran");
    assertThat(reading.evidence().lanes()).hasSize(3);
    assertThat(reading.evidence().lanes().stream().map(lane -> lane.spots().size()))
        .containsExactly(1, 1, 2);
    assertThat(SaidPlacesTest.rf(reading, 1, 0)).isCloseTo(0.48, within(0.02));
  }
}
