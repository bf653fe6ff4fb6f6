package wickmark.imaging;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import wickmark.core.chromatogram.LaneEvidence;
import wickmark.imaging.finding.Refusal;
import wickmark.testdata.strip.DyeCupboard;
import wickmark.testdata.strip.LanePlan;
import wickmark.testdata.strip.StripPlan;

/**
 * A nameless ribbon with two pencilled lines as far from their ends, which may stand either way.
 */
class UnsureBottomTest {
  private static final double RF = 0.5;

  private static List<StripOutcome> outcomes(RequestBuilder request) {
    StripPlan plan =
        StripPlan.sheet(30, 110)
            .baseline(18, 0)
            .front(92)
            .lane(LanePlan.reference("A", 15, DrawnStrips.spot(DyeCupboard.RASPBERRY, RF)))
            .seed(5)
            .build();
    return StripReader.readAll(
        DrawnStrips.scanned(DrawnStrips.scan(plan), DrawnStrips.DPI), request.build());
  }

  @Test
  void isNotMeasuredAsItComes() {
    List<StripOutcome> outcomes = outcomes(new RequestBuilder());

    assertThat(outcomes).hasSize(1);
    Optional<Refusal> refusal = outcomes.get(0).fold(reading -> Optional.empty(), Optional::of);
    assertThat(refusal.map(Refusal::reason)).contains(Refusal.Reason.NOT_CERTAIN);
    assertThat(refusal.map(Refusal::message).orElseThrow()).contains("--bottom");
  }

  @Test
  void isMeasuredWhenThePersonSaysWhichEndItIs() {
    List<StripOutcome> outcomes = outcomes(new RequestBuilder().bottom(ReadingRequest.Bottom.DOWN));

    assertThat(outcomes).hasSize(1);
    LaneEvidence lane =
        outcomes
            .get(0)
            .fold(
                reading -> reading.evidence().lanes(),
                refusal -> {
                  throw new AssertionError(refusal.message());
                })
            .get(0);
    assertThat(lane.spots()).hasSize(1);
    assertThat(lane.spots().get(0).centroid().along() / lane.front().along())
        .isCloseTo(RF, within(0.01));
  }
}
