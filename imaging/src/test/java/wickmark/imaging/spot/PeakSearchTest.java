package wickmark.imaging.spot;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** How many dyes are read from a painted profile. */
class PeakSearchTest {
  private static final double START = 2.2;
  private static final double STEP = 0.25;
  private static final int SAMPLES = 260;
  private static final double NOISE = 0.012;
  private static final double LANE_MM = 14;

  private static final double[] RED = {0.05, 1, 0.55};
  private static final double[] BLUE = {1, 0.42, 0.06};

  private record Dye(double centre, double sd, double height, double[] hue) {}

  @Test
  void onePeakIsFoundWhereItIs() {
    List<PeakShape> found = find(new Dye(31.4, 2.1, 1.5, RED));
    assertThat(found).hasSize(1);
    assertThat(found.get(0).centre()).isCloseTo(31.4, within(0.1));
    assertThat(found.get(0).ahead()).isCloseTo(2.1, within(0.25));
    assertThat(found.get(0).behind()).isCloseTo(2.1, within(0.25));
  }

  @Test
  void twoOfOneHueWithAValleyAreTwo() {
    List<PeakShape> found = find(new Dye(28, 1.9, 1.5, RED), new Dye(35, 1.9, 1.1, RED));
    assertThat(found).hasSize(2);
    assertThat(found.get(0).centre()).isCloseTo(28, within(0.2));
    assertThat(found.get(1).centre()).isCloseTo(35, within(0.2));
  }

  @Test
  void aShoulderOfOneHueIsNoSpotOfItsOwn() {
    assertThat(find(new Dye(28, 1.9, 1.5, RED), new Dye(31.2, 1.9, 0.7, RED))).hasSize(1);
  }

  @Test
  void twoHuesThatRunIntoOneAnotherAreTwo() {
    // Three millimetres apart there is no valley between them: their sum has one maximum.
    List<PeakShape> found = find(new Dye(28, 1.9, 1.2, RED), new Dye(31, 1.9, 1.0, BLUE));
    assertThat(found).hasSize(2);
    assertThat(found.get(0).centre()).isCloseTo(28, within(0.25));
    assertThat(found.get(1).centre()).isCloseTo(31, within(0.25));
  }

  @Test
  void theWavesOfAStreakAreNoSpots() {
    List<PeakShape> found = find(streak(54, 0.13, 0.25, RED), new Dye(54, 1.6, 1.6, RED));
    assertThat(found).hasSize(1);
    assertThat(found.get(0).centre()).isCloseTo(54, within(0.15));
    assertThat(found.get(0).streak()).isCloseTo(0.13 / 1.6, within(0.03));
  }

  @Test
  void aSpotOfAnotherHueOnAStreakIsASpot() {
    List<PeakShape> found =
        find(streak(54, 0.13, 0.05, RED), new Dye(54, 1.6, 1.6, RED), new Dye(24, 1.8, 0.5, BLUE));
    assertThat(found).hasSize(2);
    // The peak takes some of the uneven streak along; it must not be swallowed by it.
    assertThat(found.get(0).centre()).isCloseTo(24, within(1.5));
  }

  @Test
  void aDyeBetweenTwoOfOneHueDoesNotMakeThemOne() {
    // Without the green one there is a valley between the yellow ones; with it there is none.
    double[] yellow = {0.01, 0.09, 1};
    double[] green = {1, 0.21, 0.68};
    List<PeakShape> found =
        find(
            new Dye(34.1, 3.1, 1.48, yellow),
            new Dye(42.6, 3.7, 1, green),
            new Dye(50.4, 2.7, 1.36, yellow));
    assertThat(found).hasSize(3);
    assertThat(found.get(0).centre()).isCloseTo(34.1, within(0.3));
    assertThat(found.get(1).centre()).isCloseTo(42.6, within(0.3));
    assertThat(found.get(2).centre()).isCloseTo(50.4, within(0.3));
  }

  /** What a dye left on its way to its place, uneven as paper is. */
  private static Dye[] streak(double to, double height, double waves, double[] hue) {
    double[] at = {5, 12, 18, 25, 32, 38, 45};
    double[] part = {1 + waves, 1 - waves, 1, 1 - waves / 2, 1 + waves, 1 - waves, 1 + waves};
    Dye[] pieces = new Dye[at.length + 1];
    for (int i = 0; i < at.length; i++) {
      pieces[i] = new Dye(at[i], 3.4, 0.8 * height * part[i], hue);
    }
    pieces[at.length] = new Dye(to - 3, 3.4, 0.6 * height, hue);
    return pieces;
  }

  private static List<PeakShape> find(Dye[] some, Dye... others) {
    List<Dye> all = new ArrayList<>(List.of(some));
    all.addAll(List.of(others));
    return find(all.toArray(Dye[]::new));
  }

  @Test
  void aLowShoulderOfAnotherHueThatStandsClearIsASpot() {
    double[] indigo = {1, 0.93, 0.14};
    double[] cyan = {1, 0.46, 0.13};
    List<PeakShape> found = find(new Dye(33.8, 0.95, 3.7, indigo), new Dye(36.1, 0.7, 0.95, cyan));
    assertThat(found).hasSize(2);
    assertThat(found.get(1).centre()).isCloseTo(36.1, within(0.2));
  }

  @Test
  void aLowShoulderOfTheSameHueIsNone() {
    double[] indigo = {1, 0.93, 0.14};
    assertThat(find(new Dye(33.8, 0.95, 3.7, indigo), new Dye(36.1, 0.7, 0.95, indigo))).hasSize(1);
  }

  /** No Gaussian with two flanks is narrow at the top and has so long and low a tail. */
  @Test
  void aLongLowTailBelongsToItsSpot() {
    LaneProfile profile =
        profile(new Dye(62.6, 1, 4.8, RED), new Dye(57, 3, 0.6, RED), new Dye(50, 4, 0.12, RED));
    PeakFit fit = PeakSearch.find(profile);
    assertThat(fit.shapes()).hasSizeGreaterThan(1);
    List<SpotPeaks> spots = SpotPeaks.of(fit, new PeakParting(profile));
    assertThat(spots).hasSize(1);
    assertThat(fit.shapes().get(spots.get(0).highest()).centre()).isCloseTo(62.6, within(0.3));
  }

  @Test
  void peaksOfSeveralDyesAreSpotsOfTheirOwn() {
    LaneProfile profile = profile(new Dye(28, 1.9, 1.2, RED), new Dye(31, 1.9, 1.0, BLUE));
    assertThat(SpotPeaks.of(PeakSearch.find(profile), new PeakParting(profile))).hasSize(2);
  }

  @Test
  void noiseAloneIsNothing() {
    assertThat(find()).isEmpty();
  }

  /**
   * Noise with the texture of spots, in which a search without a bound takes 32 fits; taking away
   * what was added takes a few more than the bound.
   */
  @Test
  void theFootOfWhatLiesOutsideTakesNoSpotAway() {
    // Left-over dye of the origin: only its flank is seen, and as a peak it is two hundred times
    // as high as all spots.
    List<PeakShape> found =
        find(
            new Dye(START - 8.5, 2.27, 221, BLUE),
            new Dye(17, 1.8, 0.5, BLUE),
            new Dye(45, 2, 1, new double[] {0.04, 0.4, 1}),
            new Dye(51.4, 2.8, 1.4, new double[] {0, 0.05, 1}));
    assertThat(found.stream().map(PeakShape::centre).filter(place -> place > START))
        .usingElementComparator((a, b) -> Math.abs(a - b) < 0.5 ? 0 : Double.compare(a, b))
        .containsExactly(17.0, 45.0, 51.4);
  }

  @Test
  void aFootOnPaperThatIsNotQuiteBlankIsNoSpot() {
    double[] yellow = {0.005, 0.04, 1};
    double[] yellowOnGrey = {0.24, 0.22, 1};
    double[] yellowOnGreen = {0.6, 0.1, 1};
    Dye spot = new Dye(51.4, 1.5, 4.6, yellow);
    assertThat(find(spot, new Dye(47, 1.6, 0.5, yellowOnGrey))).hasSize(1);
    assertThat(find(spot, new Dye(47, 1.6, 0.5, yellowOnGreen))).hasSize(2);
  }

  @Test
  void noiseThatLooksLikeSpotsEndsTheSearch() {
    Random chance = new Random(0);
    double[][] density = new double[3][160];
    double[] noise = new double[160];
    double[] texture = new double[4];
    for (int k = 0; k < noise.length; k++) {
      noise[k] = NOISE;
      texture[3] = 0.93 * texture[3] + 0.15 * chance.nextGaussian();
      for (int c = 0; c < 3; c++) {
        texture[c] = 0.93 * texture[c] + 0.05 * chance.nextGaussian();
        density[c][k] = Math.max(-0.02, texture[3] + texture[c]) + NOISE * chance.nextGaussian();
      }
    }
    PeakSearch search = new PeakSearch(new LaneProfile(START, STEP, density, noise, width()));

    search.search();

    assertThat(search.fits()).isBetween(PeakSearch.MOST_FITS, PeakSearch.MOST_FITS + 4);
  }

  /** Of a lane, mm; as long as any profile here. */
  private static double[] width() {
    double[] width = new double[SAMPLES];
    Arrays.fill(width, LANE_MM);
    return width;
  }

  private static List<PeakShape> find(Dye... dyes) {
    return PeakSearch.find(profile(dyes)).shapes().stream()
        .sorted(Comparator.comparingDouble(PeakShape::centre))
        .toList();
  }

  private static LaneProfile profile(Dye... dyes) {
    Random chance = new Random(2);
    double[][] density = new double[3][SAMPLES];
    double[] noise = new double[SAMPLES];
    for (int k = 0; k < SAMPLES; k++) {
      double place = START + (k + 0.5) * STEP;
      noise[k] = NOISE;
      for (int c = 0; c < 3; c++) {
        density[c][k] = NOISE * chance.nextGaussian();
        for (Dye dye : dyes) {
          double z = (place - dye.centre) / dye.sd;
          density[c][k] += dye.height * dye.hue[c] * StrictMath.exp(-z * z / 2);
        }
      }
    }
    return new LaneProfile(START, STEP, density, noise, width());
  }
}
