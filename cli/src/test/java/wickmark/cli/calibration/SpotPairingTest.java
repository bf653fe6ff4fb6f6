package wickmark.cli.calibration;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

class SpotPairingTest {
  @Test
  void pairsAsManyAsPossible() {
    // The nearest pair first, 0.50 with 0.49, would leave 0.45 alone.
    assertThat(SpotPairing.of(List.of(at(0.45), at(0.50)), List.of(0.49, 0.54)))
        .containsExactly(0, 1);
  }

  @Test
  void whatIsFarIsNoPair() {
    assertThat(SpotPairing.of(List.of(at(0.2), at(0.8)), List.of(0.3, 0.81)))
        .containsExactly(-1, 1);
  }

  @Test
  void takesTheCloserOfTwo() {
    assertThat(SpotPairing.of(List.of(at(0.5)), List.of(0.46, 0.505))).containsExactly(1);
    assertThat(SpotPairing.of(List.of(at(0.5)), List.of(0.495, 0.54))).containsExactly(0);
  }

  @Test
  void theMiddleOfATailingSpotIsAsGoodAsItsCentroid() {
    TruthFile.Spot tailing =
        new TruthFile.Spot(1, 0.5, 0.42, 50, 42, true, false, false, Set.of("red"));

    assertThat(SpotPairing.of(List.of(tailing), List.of(0.4))).containsExactly(0);
    assertThat(SpotPairing.of(List.of(at(0.5)), List.of(0.4))).containsExactly(-1);
  }

  private static TruthFile.Spot at(double rf) {
    return new TruthFile.Spot(1, rf, rf, 100 * rf, 100 * rf, false, false, false, Set.of("red"));
  }
}
