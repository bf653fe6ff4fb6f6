package wickmark.imaging;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import wickmark.core.chromatogram.SpotFlag;
import wickmark.core.colour.LabColour;
import wickmark.imaging.finding.Doubt;
import wickmark.imaging.lane.DriedStain;
import wickmark.imaging.line.FittedLine;
import wickmark.imaging.raster.Raster;
import wickmark.imaging.spot.SpotRegion;

class SpotDoubtsTest {
  private static final double CELLS_PER_MM = 8;
  private static final double WIDTH = 400;

  private static SpotRegion spot(double topMm, double bottomMm, SpotFlag... flags) {
    return spot(topMm, bottomMm, new LabColour(70, 40, 30), flags);
  }

  private static SpotRegion spot(
      double topMm, double bottomMm, LabColour colour, SpotFlag... flags) {
    return spot(topMm, bottomMm, 0.5, colour, flags);
  }

  private static SpotRegion spot(
      double topMm, double bottomMm, double peak, LabColour colour, SpotFlag... flags) {
    double top = topMm * CELLS_PER_MM;
    double bottom = bottomMm * CELLS_PER_MM;
    double middle = (top + bottom) / 2;
    return new SpotRegion(
        new SpotRegion.Centroid(200, middle, 0.5),
        new double[] {200, middle},
        new SpotRegion.Box(150, 250, top, bottom),
        100 * (bottom - top),
        peak,
        colour,
        Set.of(flags),
        0.99,
        List.of());
  }

  private final Raster steepness = new Raster((int) WIDTH, 1000);
  private final Raster shade = new Raster((int) WIDTH, 1000);

  private List<String> codes(SpotRegion... spots) {
    return doubts(List.of(), spots).stream().map(Doubt::code).toList();
  }

  private List<Doubt> doubts(List<DriedStain> driedStains, SpotRegion... spots) {
    FittedLine baseline =
        FittedLine.byHand(new double[] {0, 880}, new double[] {WIDTH, 880}, 1, WIDTH);
    FittedLine front = FittedLine.byHand(new double[] {0, 80}, new double[] {WIDTH, 80}, 1, WIDTH);
    ReadingAssembly.Lanes lanes =
        new ReadingAssembly.Lanes(List.of(), List.of("X"), List.of(List.of(spots)), List.of());
    return new SpotDoubts(baseline, front, steepness, shade, CELLS_PER_MM)
        .of(lanes, Optional.empty(), driedStains);
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
  void aDriedStainIsSaidWithTheSpotsOnIt() {
    DriedStain stain = new DriedStain(100, 259, 200, 399);

    List<Doubt> doubts = doubts(List.of(stain), spot(30, 38), spot(60, 68));

    assertThat(doubts.stream().map(Doubt::code)).containsExactly("dried-stain");
    assertThat(doubts.get(0).message())
        .contains("20 mm wide and 25 mm high", "X spot 1 lies on it")
        .doesNotContain("spot 2");
  }

  @Test
  void aShadowThatWasTakenOffIsSaidWithTheSpotsInIt() {
    for (int x = 0; x < WIDTH; x++) {
      shade.set(x, 280, 0.9f);
    }

    List<Doubt> doubts = doubts(List.of(), spot(30, 38), spot(60, 68));

    assertThat(doubts.stream().map(Doubt::code)).containsExactly("shadow-taken-off");
    assertThat(doubts.get(0).message()).contains("X spot 1 lies in it").doesNotContain("spot 2");
  }

  @Test
  void aGreyOneAtTheEdgeOfAShadowIsDoubted() {
    LabColour grey = new LabColour(70, 1, -2);
    assertThat(codes(spot(30, 38, grey))).isEmpty();
    for (int x = 0; x < WIDTH; x++) {
      steepness.set(x, 280, 0.3f);
    }
    assertThat(codes(spot(30, 38, grey))).containsExactly("spots-unsure");
    LabColour tintOfShade = new LabColour(91, 0.1, -5.2);
    assertThat(codes(spot(30, 38, tintOfShade))).containsExactly("spots-unsure");
    assertThat(codes(spot(30, 38))).isEmpty();
    assertThat(codes(spot(50, 58, grey))).isEmpty();
  }

  /** A clip's wire or a shade, smoothed as spots are. */
  @Test
  void aGreyOneNoDarkerThanAShadowIsDoubted() {
    assertThat(codes(spot(30, 38, 0.25, new LabColour(81, 0.9, -2.4))))
        .containsExactly("spots-unsure");
    assertThat(codes(spot(30, 38, 0.25, new LabColour(81, 9, -2.4)))).isEmpty();
  }

  @Test
  void aLongOneIsPerhapsSeveral() {
    assertThat(codes(spot(30, 62))).containsExactly("spots-long");
  }
}
