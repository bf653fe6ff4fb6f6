package wickmark.imaging;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import wickmark.imaging.finding.Refusal;
import wickmark.imaging.photo.Photo;

/** A strip with lanes A, B and X for which one more is named, of which nothing is to be seen. */
class UnsureLanesTest {
  private static final String[] NAMES = {"A", "B", "C", "X"};

  private static StripOutcome outcome(RequestBuilder request) {
    Photo photo = DrawnStrips.scanned(DrawnStrips.Plain.SCAN, DrawnStrips.DPI);
    List<StripOutcome> outcomes = StripReader.readAll(photo, request.lanes(NAMES).build());
    assertThat(outcomes).hasSize(1);
    return outcomes.get(0);
  }

  /** One of the three would bear the name of the fourth. */
  @Test
  void areNotMeasuredUnderNamesThatMayBeTheirNeighbours() {
    Refusal refusal =
        outcome(new RequestBuilder())
            .fold(
                reading -> {
                  throw new AssertionError("measured");
                },
                refused -> refused);

    assertThat(refusal.reason()).isEqualTo(Refusal.Reason.NOT_CERTAIN);
    assertThat(refusal.message()).contains("The 4 lanes", "--lanes", "--origin");
  }

  @Test
  void areMeasuredWhenThePersonSaysWhereTheOneIsThatIsNotSeen() {
    StripOutcome outcome =
        outcome(
            new RequestBuilder().origin("C", DrawnStrips.seen(DrawnStrips.Plain.SCAN, 41, 18.3)));

    List<Integer> spots =
        outcome.fold(
            reading -> reading.evidence().lanes().stream().map(l -> l.spots().size()).toList(),
            refusal -> {
              throw new AssertionError(refusal.message());
            });
    assertThat(spots).containsExactly(1, 1, 0, 2);
  }
}
