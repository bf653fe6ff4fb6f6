package wickmark.imaging;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import wickmark.imaging.finding.Refusal;
import wickmark.testdata.picture.DrawnPicture;
import wickmark.testdata.scene.ScanPlan;
import wickmark.testdata.scene.Scanner;
import wickmark.testdata.strip.Baseline;
import wickmark.testdata.strip.Cut;
import wickmark.testdata.strip.Lead;
import wickmark.testdata.strip.SolventFront;
import wickmark.testdata.strip.StripPlan;

/** A blank sheet in a dark surround is no strip, and neither is the picture of both. */
class BlankSheetTest {
  @ParameterizedTest
  @ValueSource(longs = {5, 7, 8})
  void isNotTakenForAStripTogetherWithWhatIsAroundIt(long seed) {
    StripPlan plan =
        StripPlan.sheet(77, 110)
            .cut(Cut.HASTY)
            .baseline(new Baseline(23, 0, 0, 77, Lead.HARD, false))
            .front(new SolventFront(150, 0, 0, SolventFront.Mark.NONE, 0, 0))
            .seed(seed)
            .build();
    DrawnPicture picture = Scanner.scan(ScanPlan.of(plan, 300, 10).under(ScanPlan.Lid.BLACK));

    List<StripOutcome> outcomes =
        StripReader.readAll(DrawnStrips.scanned(picture, 300), new RequestBuilder().build());

    assertThat(outcomes).hasSize(1);
    Optional<Refusal.Reason> reason =
        outcomes.get(0).fold(reading -> Optional.empty(), refusal -> Optional.of(refusal.reason()));
    assertThat(reason).contains(Refusal.Reason.NO_STRIP);
  }
}
