package wickmark.imaging;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import wickmark.core.chromatogram.SpotFlag;
import wickmark.core.colour.LabColour;
import wickmark.imaging.finding.Doubt;
import wickmark.imaging.line.FittedLine;
import wickmark.imaging.spot.SpotRegion;

class SpotDoubtsTest {
  private static final double CELLS_PER_MM = 8;
  private static final double WIDTH = 400;

  private static SpotRegion spot(double topMm, double bottomMm, SpotFlag... flags) {
    double top = topMm * CELLS_PER_MM;
    double bottom = bottomMm * CELLS_PER_MM;
    double middle = (top + bottom) / 2;
    return new SpotRegion(
        new SpotRegion.Centroid(200, middle, 0.5),
        new double[] {200, middle},
        new SpotRegion.Box(150, 250, top, bottom),
        100 * (bottom - top),
        0.5,
        new LabColour(70, 40, 30),
        Set.of(flags),
        0.99,
        List.of());
  }

  private static List<String> codes(SpotRegion... spots) {
    FittedLine baseline =
        FittedLine.byHand(new double[] {0, 880}, new double[] {WIDTH, 880}, 1, WIDTH);
    FittedLine front = FittedLine.byHand(new double[] {0, 80}, new double[] {WIDTH, 80}, 1, WIDTH);
    ReadingAssembly.Lanes lanes =
        new ReadingAssembly.Lanes(List.of(), List.of("X"), List.of(List.of(spots)), List.of());
    return new SpotDoubts(baseline, front, CELLS_PER_MM)
        .of(lanes, Optional.empty()).stream().map(Doubt::code).toList();
  }

  @Test
  void spotsThatTouchAreNotDoubted() {
    assertThat(codes(spot(30, 38), spot(36, 45))).isEmpty();
  }

  @Test
  void aSpotWithinTheLengthOfAnotherIs() {
    assertThat(codes(spot(30, 50), spot(44, 51))).containsExactly("spots-run-together");
  }

  @Test
  void notIfAPersonPutItThere() {
    assertThat(codes(spot(30, 50), spot(44, 51, SpotFlag.BY_HAND)))
        .doesNotContain("spots-run-together");
  }

  @Test
  void aLongOneIsPerhapsSeveral() {
    assertThat(codes(spot(30, 62))).containsExactly("spots-long");
  }
}
