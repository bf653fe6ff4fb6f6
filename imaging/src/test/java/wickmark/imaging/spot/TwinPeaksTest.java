package wickmark.imaging.spot;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Two dyes of one hue 2.6 mm apart, each with a standard deviation of 1 mm: there is no valley. */
class TwinPeaksTest {
  private static final double[] RED = {0.03, 0.5, 0.4};
  private static final double[] PALE_RED = {0.012, 0.2, 0.16};
  private static final double[] BLUE = {0.5, 0.3, 0.05};

  @Test
  void lanesInWhichEachIsAlonePartThem() {
    List<SpotRegion> spots =
        together().with(8, 33, 1, RED).with(32, 30.4, 1, RED).spots(8, 20, 32).get(1);

    assertThat(spots).hasSize(2);
    assertThat(Blots.alongMm(spots.get(0))).isCloseTo(33, within(0.15));
    assertThat(Blots.alongMm(spots.get(1))).isCloseTo(30.4, within(0.4));
  }

  @Test
  void whatIsWrittenBeyondTheFrontDoesNotDimTheLanesBeside() {
    List<SpotRegion> spots =
        together()
            .with(8, 33, 1, RED)
            .with(32, 30.4, 1, RED)
            .with(8, 56, 1.2, 4, 4, 4)
            .spots(8, 20, 32)
            .get(1);

    assertThat(spots).hasSize(2);
  }

  @Test
  void byThemselvesTheyAreOneSpot() {
    assertThat(together().spots(20).get(0)).hasSize(1);
  }

  @Test
  void oneOfThemDoesNotTellOfTheOther() {
    assertThat(together().with(8, 33, 1, RED).spots(8, 20).get(1)).hasSize(1);
  }

  @Test
  void dyesOfAnotherHueDoNotPartThem() {
    assertThat(together().with(8, 33, 1, RED).with(32, 30.4, 1, BLUE).spots(8, 20, 32).get(1))
        .hasSize(1);
  }

  /** A spot of one dye, larger than the same dye's beside it. */
  @Test
  void aLargerSpotIsNotTwo() {
    List<List<SpotRegion>> lanes =
        new Blots()
            .with(20, 31.7, 1.6, RED)
            .with(8, 33, 1, RED)
            .with(32, 30.4, 1, RED)
            .spots(8, 20, 32);

    assertThat(lanes.get(1)).hasSize(1);
  }

  private static Blots together() {
    return new Blots().with(20, 33, 1, RED).with(20, 30.4, 1, PALE_RED);
  }
}
