package wickmark.imaging.spot;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

class LaneStainTest {
  /** Both fade into one another, and the pale one is a tenth of the whole. */
  @Test
  void aPaleSpotThatTouchesAStrongOneOfTheNextLaneIsItsOwn() {
    List<List<SpotRegion>> lanes =
        new Blots()
            .with(14, 40, 2.2, 0.6, 0.1, 0.08)
            .with(25, 40, 1.6, 0.13, 0.03, 0.02)
            .spots(14, 25);

    assertThat(lanes.get(0)).hasSize(1);
    assertThat(lanes.get(1)).hasSize(1);
    assertThat(lanes.get(1).get(0).centroid().x() / Blots.MM).isCloseTo(25, within(0.3));
    assertThat(Blots.alongMm(lanes.get(1).get(0))).isCloseTo(40, within(0.1));
  }

  @Test
  void theFringeOfAWideSpotIsNoSpotOfTheNextLane() {
    List<List<SpotRegion>> lanes = new Blots().with(14, 40, 3.2, 0.6, 0.1, 0.08).spots(14, 25);

    assertThat(lanes.get(0)).hasSize(1);
    assertThat(lanes.get(1)).isEmpty();
  }

  /** The wide one touches a spot of its own dye in the lane on its other side: one figure. */
  @Test
  void norIsItWhereTheFigureIsPartedForAnotherLane() {
    List<List<SpotRegion>> lanes =
        new Blots()
            .with(18, 40, 3, 0.6, 0.1, 0.08)
            .with(30, 40, 3, 0.5, 0.08, 0.06)
            .spots(7, 18, 30);

    assertThat(lanes.get(0)).isEmpty();
    assertThat(lanes.get(1)).hasSize(1);
    assertThat(lanes.get(2)).hasSize(1);
  }
}
