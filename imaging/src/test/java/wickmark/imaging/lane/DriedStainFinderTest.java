package wickmark.imaging.lane;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.Random;
import org.junit.jupiter.api.Test;
import wickmark.imaging.raster.Raster;

/** Rings of what dried on the paper, and what is none. */
class DriedStainFinderTest {
  private static final int WIDTH = 400;
  private static final int HEIGHT = 480;
  private static final double MM = 8;
  private static final double[] TEA = {0.03, 0.05, 0.09};
  private static final double[] PENCIL = {0.2, 0.2, 0.2};
  private static final double[] PINK = {0.01, 0.5, 0.2};

  private final Raster[] density = {
    new Raster(WIDTH, HEIGHT), new Raster(WIDTH, HEIGHT), new Raster(WIDTH, HEIGHT)
  };
  private final Raster paper = new Raster(WIDTH, HEIGHT);

  DriedStainFinderTest() {
    Arrays.fill(paper.cells(), 1);
    Random grain = new Random(5);
    for (Raster channel : density) {
      for (int i = 0; i < channel.cells().length; i++) {
        channel.cells()[i] = (float) (0.005 * grain.nextGaussian());
      }
    }
  }

  /** Adds a colour in proportion to a function of the distance from a place, all in mm. */
  private void paint(
      double x, double y, double[] colour, java.util.function.DoubleUnaryOperator amount) {
    for (int row = 0; row < HEIGHT; row++) {
      for (int column = 0; column < WIDTH; column++) {
        double away = Math.hypot((column + 0.5) / MM - x, (row + 0.5) / MM - y);
        for (int c = 0; c < 3; c++) {
          density[c].cells()[row * WIDTH + column] +=
              (float) (amount.applyAsDouble(away) * colour[c]);
        }
      }
    }
  }

  /** A rim of a millimetre, and a third of its density within. */
  private void ring(double x, double y, double radius, double[] colour, double within) {
    paint(
        x,
        y,
        colour,
        r ->
            Math.exp(-(r - radius) * (r - radius) / (2 * 0.35 * 0.35)) + (r < radius ? within : 0));
  }

  private void spot(double x, double y, double[] colour) {
    paint(x, y, colour, r -> Math.exp(-r * r / (2 * 1.5 * 1.5)));
  }

  private DriedStain.TakenOff takenOff() {
    return DriedStainFinder.takeOff(density, paper, MM);
  }

  /** Mean of the three densities within a distance of a place, all in mm. */
  private double mean(double x, double y, double reach) {
    double sum = 0;
    int n = 0;
    for (int row = 0; row < HEIGHT; row++) {
      for (int column = 0; column < WIDTH; column++) {
        if (Math.hypot((column + 0.5) / MM - x, (row + 0.5) / MM - y) < reach) {
          for (Raster channel : density) {
            sum += channel.at(column, row) / 3;
          }
          n++;
        }
      }
    }
    return sum / n;
  }

  @Test
  void aRingIsFoundAndGone() {
    ring(25, 30, 9, TEA, 0.3);

    DriedStain.TakenOff bare = takenOff();

    assertThat(bare.stains()).hasSize(1);
    DriedStain stain = bare.stains().get(0);
    assertThat(stain.left() / MM).isCloseTo(16, within(1.2));
    assertThat(stain.right() / MM).isCloseTo(34, within(1.2));
    assertThat(stain.holds(25 * MM, 30 * MM)).isTrue();
    assertThat(stain.holds(38 * MM, 30 * MM)).isFalse();
    assertThat(mean(25, 30, 8)).isCloseTo(0, within(0.003));
    assertThat(mean(16, 30, 0.8)).isCloseTo(0, within(0.008));
  }

  @Test
  void aSpotOnItStaysWhereItWas() {
    ring(25, 30, 9, TEA, 0.3);
    spot(27, 32, PINK);

    takenOff();

    double[] centre = new double[3];
    for (int row = 26 * 8; row < 38 * 8; row++) {
      for (int column = 21 * 8; column < 33 * 8; column++) {
        double green = density[1].at(column, row);
        centre[0] += green;
        centre[1] += green * (column + 0.5) / MM;
        centre[2] += green * (row + 0.5) / MM;
      }
    }
    assertThat(centre[1] / centre[0]).isCloseTo(27, within(0.1));
    assertThat(centre[2] / centre[0]).isCloseTo(32, within(0.1));
    assertThat(density[1].at(27 * 8, 32 * 8)).isCloseTo(0.5f, within(0.04f));
  }

  @Test
  void oneThatThePapersEdgeCutsIsFoundToo() {
    ring(2, 30, 9, TEA, 0.3);
    assertThat(takenOff().stains()).hasSize(1);
  }

  @Test
  void aPencilledRingAroundASpotIsNone() {
    ring(25, 30, 6, PENCIL, 0);
    spot(25, 30, PINK);
    float[] before = density[1].cells().clone();

    assertThat(takenOff().stains()).isEmpty();
    assertThat(density[1].cells()).isEqualTo(before);
  }

  @Test
  void aSpotThatIsPalerInItsMiddleIsNone() {
    // Its rim is broad: an overloaded spot's, of 9 mm.
    paint(25, 30, PINK, r -> 0.5 * Math.exp(-(r - 3) * (r - 3) / (2 * 1.2 * 1.2)));
    assertThat(takenOff().stains()).isEmpty();
  }

  @Test
  void aTideMarkFromSideToSideIsNone() {
    for (int column = 0; column < WIDTH; column++) {
      double front = 12 * MM + 3 * MM * Math.sin(column / 60.0);
      for (int row = 0; row < 30 * 8; row++) {
        double away = (row - front) / (0.35 * MM);
        for (int c = 0; c < 3; c++) {
          density[c].cells()[row * WIDTH + column] += (float) (TEA[c] * Math.exp(-away * away / 2));
        }
      }
    }
    assertThat(takenOff().stains()).isEmpty();
  }

  @Test
  void whatIsAsDenseWithinIsNoRing() {
    ring(25, 30, 9, TEA, 1.5);
    assertThat(takenOff().stains()).isEmpty();
  }
}
