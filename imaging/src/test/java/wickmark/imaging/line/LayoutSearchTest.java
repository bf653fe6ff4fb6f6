package wickmark.imaging.line;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;
import wickmark.imaging.paper.DensityMap;
import wickmark.imaging.raster.Raster;

/** Strips of 60 mm by 120 mm with a pencilled baseline, three blue spots, and something above. */
class LayoutSearchTest {
  private static final double CELLS_PER_MM = 5;
  private static final int WIDTH = 300;
  private static final int HEIGHT = 600;

  /** Densities in red, green and blue. */
  private static final double[] PENCIL = {0.15, 0.15, 0.15};

  private static final double[] BLUE = {0.5, 0.25, 0.05};

  /** What solvent washes out of paper absorbs blue most and red least (common practice). */
  private static final double[] BROWN = {0.054, 0.077, 0.118};

  private final Raster[] density = {noise(1), noise(2), noise(3)};

  /** How fast the light changes, density per millimetre. */
  private final Raster steepness = new Raster(WIDTH, HEIGHT);

  private static Raster noise(long seed) {
    Random random = new Random(seed);
    Raster raster = new Raster(WIDTH, HEIGHT);
    for (int i = 0; i < raster.cells().length; i++) {
      raster.cells()[i] = (float) (0.008 * random.nextGaussian());
    }
    return raster;
  }

  private void add(int x, int y, double[] colour, double share) {
    for (int c = 0; c < 3; c++) {
      density[c].cells()[y * WIDTH + x] += (float) (colour[c] * share);
    }
  }

  private void lineAt(int row, double[] colour, double sigma) {
    for (int y = Math.max(0, row - 20); y < Math.min(HEIGHT, row + 20); y++) {
      double off = (y + 0.5 - row) / sigma;
      for (int x = 0; x < WIDTH; x++) {
        add(x, y, colour, StrictMath.exp(-off * off / 2));
      }
    }
  }

  private void spotAt(int column, int row) {
    for (int y = row - 40; y < row + 40; y++) {
      for (int x = column - 40; x < column + 40; x++) {
        double off = Math.hypot(x - column, y - row) / 10;
        add(x, y, BLUE, StrictMath.exp(-off * off / 2));
      }
    }
  }

  private Layout layout() {
    return layout(0);
  }

  /** The layout where the strip may stand so, by quarter turns. */
  private Layout layout(Integer... turns) {
    lineAt(500, PENCIL, 1.2);
    spotAt(60, 300);
    spotAt(150, 380);
    spotAt(240, 220);
    Raster paper = new Raster(WIDTH, HEIGHT);
    Arrays.fill(paper.cells(), 1);
    SaidLayout upright = new SaidLayout(Set.of(turns), Optional.empty(), Optional.empty());
    return LayoutSearch.find(
        map(density, paper, steepness), map(turned(), paper.turned(), steepness.turned()), upright);
  }

  private Raster[] turned() {
    return new Raster[] {density[0].turned(), density[1].turned(), density[2].turned()};
  }

  private static DensityMap map(Raster[] density, Raster paper, Raster steepness) {
    return new DensityMap(
        density, paper, steepness, CELLS_PER_MM, new double[] {0.008, 0.008, 0.008});
  }

  private static void assertFront(Layout layout, LineKind kind) {
    assertThat(layout.front())
        .satisfies(
            front -> {
              assertThat(front.kind()).isEqualTo(kind);
              assertThat(front.y().get(0) * HEIGHT).isCloseTo(100, within(3.0));
            });
  }

  /** Pencil in the light of a lamp, on tinted paper: brown as well as dark. */
  @Test
  void aPencilledFrontInWarmLightIsNoInk() {
    lineAt(100, new double[] {0.14, 0.18, 0.25}, 1.2);

    assertFront(layout(), LineKind.PENCIL);
  }

  @Test
  void aDeepTideMarkIsTheFrontAndNoLineOfInk() {
    lineAt(100, BROWN, 3);

    assertFront(layout(), LineKind.TIDE_MARK);
  }

  /** Paper yellows before it browns. */
  @Test
  void aYellowOneIsNoInkEither() {
    lineAt(100, new double[] {0.02, 0.04, 0.09}, 2);

    assertFront(layout(), LineKind.TIDE_MARK);
  }

  @Test
  void aLineOfInkIsNoTideMark() {
    lineAt(100, BLUE, 3);

    assertThat(layout().front()).isNull();
  }

  /** As pale as a tide mark, but it absorbs green as much as blue. */
  @Test
  void norIsOneOfPaleRedInk() {
    lineAt(100, new double[] {0.01, 0.12, 0.11}, 3);

    assertThat(layout().front()).isNull();
  }

  @Test
  void aPenOnTheStripIsNoDyeThatRanPastTheFront() {
    lineAt(100, PENCIL, 1.2);
    for (int y = 20; y < 70; y++) {
      for (int x = 200; x < WIDTH; x++) {
        add(x, y, new double[] {1.8, 1.4, 0.8}, 1);
      }
    }

    assertFront(layout(), LineKind.PENCIL);
  }

  @Test
  void whereThePaperEndsIsNoPencilLine() {
    lineAt(100, PENCIL, 1.2);
    Arrays.fill(steepness.cells(), 97 * WIDTH, 103 * WIDTH, 0.2f);

    assertThat(layout().front()).isNull();
  }

  @Test
  void aShadowsEdgeAcrossAPencilLineLeavesItOne() {
    lineAt(100, PENCIL, 1.2);
    for (int y = 0; y < HEIGHT; y++) {
      Arrays.fill(steepness.cells(), y * WIDTH + 140, y * WIDTH + 160, 0.2f);
    }

    assertFront(layout(), LineKind.PENCIL);
  }

  @Test
  void noiseHasNoFront() {
    assertThat(layout().front()).isNull();
  }

  /** Skin is as coloured as dye, and a fingertip larger than all spots together. */
  @Test
  void aFingerThatHoldsTheSheetIsNoDyeBelowTheBaseline() {
    lineAt(100, PENCIL, 1.2);
    names(515, 3);
    for (int y = 555; y < HEIGHT; y++) {
      for (int x = 180; x < 280; x++) {
        add(x, y, new double[] {0.1, 0.35, 0.45}, 1);
      }
    }

    Layout layout = layout(0, 2);

    assertThat(layout.quarterTurns()).isZero();
    // With the finger among the dye it was 2.8.
    assertThat(layout.lead()).isGreaterThan(5);
    assertFront(layout, LineKind.PENCIL);
  }

  /** With the strip upside down the finger lies beyond the front, and hides no names from it. */
  @Test
  void namesAtAFingerSpeakAgainstARemarkAtTheOtherEnd() {
    lineAt(100, PENCIL, 1.2);
    names(515, 3);
    names(40, 3);
    for (int y = 555; y < HEIGHT; y++) {
      for (int x = 180; x < 280; x++) {
        add(x, y, new double[] {0.1, 0.35, 0.45}, 1);
      }
    }

    Layout layout = layout(0, 2);

    assertThat(layout.quarterTurns()).isZero();
    // Where they had no say it was 1.3.
    assertThat(layout.lead()).isGreaterThan(2.5);
  }

  /**
   * Two lines alike at the same distance from their ends; where the samples were put it is dark.
   */
  @Test
  void theOneOfTwoLinesWithDotsAtTheLanesIsTheBaseline() {
    lineAt(100, PENCIL, 1.2);
    dots(100);

    Layout layout = layout(0, 2);

    assertThat(layout.quarterTurns()).isEqualTo(2);
    // Where dots have no say the other one is.
    assertThat(layout.lead()).isGreaterThan(0.5);
  }

  /** Some write the names beside the front, where they are not in the solvent's way. */
  @Test
  void dotsTellMoreOfTheBaselineThanNamesDo() {
    lineAt(100, PENCIL, 1.2);
    names(55, 3);
    dots(500);

    Layout layout = layout(0, 2);

    assertThat(layout.quarterTurns()).isZero();
    // Where dots on the other line do not speak against it, it stands on its head by 4.5.
    assertThat(layout.lead()).isGreaterThan(0.3);
  }

  /** A cross of thin strokes at each lane. */
  private void dots(int row) {
    for (int column : new int[] {60, 150, 240}) {
      for (int i = -4; i <= 4; i++) {
        add(column + i, row + i, PENCIL, 2);
        add(column + i, row - i, PENCIL, 2);
      }
    }
  }

  @Test
  void namesWrittenWithASoftPencilAreNames() {
    lineAt(100, PENCIL, 1.2);
    names(515, 6);

    Layout layout = layout(0, 2);

    assertThat(layout.quarterTurns()).isZero();
    assertThat(layout.lead()).isGreaterThan(5);
  }

  /** A stroke of 0.4 mm below or above each lane, so many times as dark as the lines. */
  private void names(int top, double dark) {
    for (int column : new int[] {60, 150, 240}) {
      for (int y = top; y < top + 30; y++) {
        add(column, y, PENCIL, dark);
        add(column + 1, y, PENCIL, dark);
      }
    }
  }
}
