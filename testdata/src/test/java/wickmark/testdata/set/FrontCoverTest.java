package wickmark.testdata.set;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import wickmark.testdata.strip.DyeCupboard;
import wickmark.testdata.strip.LanePlan;
import wickmark.testdata.strip.SolventFront;
import wickmark.testdata.strip.SpotPlan;
import wickmark.testdata.strip.SpotShape;
import wickmark.testdata.strip.StripPlan;

class FrontCoverTest {
  private static LanePlan lane(String name, double x, double rf) {
    return LanePlan.reference(
        name, x, SpotPlan.of(DyeCupboard.SKY, rf, 0.5, SpotShape.gaussian(2, 2)));
  }

  @Test
  void liesOverTheFrontBetweenTheLanesWithTheLowestSpots() {
    FrontCover cover =
        new FrontCover(
            StripPlan.sheet(60, 100)
                .front(new SolventFront(80, 45, 0, SolventFront.Mark.PENCIL, 0, 0))
                .lane(lane("A", 10, 0.9))
                .lane(lane("B", 25, 0.3))
                .lane(lane("C", 38, 0.4).drifting(4))
                .lane(lane("D", 54, 0.8))
                .build());

    // Lane C is at 42 mm when it reaches the front, which rises by 1 mm a millimetre.
    assertThat(cover.acrossMm()).isCloseTo(33.5 - 30, within(1e-9));
    assertThat(cover.alongMm()).isCloseTo(83.5 - 50, within(1e-9));
  }
}
