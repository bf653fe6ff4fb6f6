package wickmark.imaging.spot;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import wickmark.core.chromatogram.SpotFlag;

/** A dye that the solvent does not move has an Rf of 0 (common practice). */
class OriginStainTest {
  private static final double[] BLUE = {0.5, 0.3, 0.05};
  private static final double[] PENCIL = {0.5, 0.5, 0.5};

  @Test
  void aLargeStainThatStayedIsOneSpotOnTheBaseline() {
    List<SpotRegion> spots = new Blots().with(20, 0.2, 1.8, BLUE).spots(20).get(0);

    assertThat(spots).hasSize(1);
    assertThat(spots.get(0).flags()).contains(SpotFlag.AT_ORIGIN);
    assertThat(Blots.alongMm(spots.get(0))).isCloseTo(0.2, within(0.25));
    assertThat(spots.get(0).centroid().x() / Blots.MM).isCloseTo(20, within(0.1));
  }

  @Test
  void whatStayedComesAfterWhatMoved() {
    List<SpotRegion> spots =
        new Blots().with(20, 0, 1.2, BLUE).with(20, 30, 1.5, 0.02, 0.5, 0.4).spots(20).get(0);

    assertThat(spots).hasSize(2);
    assertThat(Blots.alongMm(spots.get(0))).isCloseTo(30, within(0.1));
    assertThat(spots.get(0).flags()).doesNotContain(SpotFlag.AT_ORIGIN);
    assertThat(spots.get(1).flags()).contains(SpotFlag.AT_ORIGIN);
  }

  @Test
  void pencilIsNoDye() {
    assertThat(new Blots().with(20, 0, 1.2, PENCIL).with(20, 30, 1.5, BLUE).spots(20).get(0))
        .hasSize(1);
  }

  /** Cut off by the edge of the sheet. */
  @Test
  void aStainAtTheEdgeIsOneToo() {
    List<SpotRegion> spots = new Blots().with(1, 0, 1.5, BLUE).spots(1.5).get(0);

    assertThat(spots).hasSize(1);
    assertThat(spots.get(0).flags()).contains(SpotFlag.AT_ORIGIN);
  }

  /** Rf 0.08: the same dye a little further on, its flank on the baseline. */
  @Test
  void aSpotCloseAboveTheBaselineHasMoved() {
    List<SpotRegion> spots = new Blots().with(20, 4, 1.6, BLUE).spots(20).get(0);

    assertThat(spots).hasSize(1);
    assertThat(spots.get(0).flags()).doesNotContain(SpotFlag.AT_ORIGIN);
    assertThat(Blots.alongMm(spots.get(0))).isCloseTo(4, within(0.3));
  }
}
