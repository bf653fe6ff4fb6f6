package wickmark.imaging.raster;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class RasterTest {
  private static Raster counted() {
    Raster raster = new Raster(5, 3);
    for (int i = 0; i < 15; i++) {
      raster.cells()[i] = i;
    }
    return raster;
  }

  @Test
  void fourQuarterTurnsAreNone() {
    Raster turned = counted().turned().turned().turned().turned();
    assertThat(turned.cells()).isEqualTo(counted().cells());
    assertThat(turned.width()).isEqualTo(5);
  }

  @Test
  void aQuarterTurnIsClockwise() {
    Raster turned = counted().turned();
    assertThat(turned.width()).isEqualTo(3);
    assertThat(turned.height()).isEqualTo(5);
    // The lower left corner comes to the upper left, the upper left to the upper right.
    assertThat(turned.at(0, 0)).isEqualTo(10);
    assertThat(turned.at(2, 0)).isEqualTo(0);
  }

  @Test
  void samplesAreExactOnAPlaneAndHeldBeyond() {
    Raster raster = counted();
    assertThat(raster.sample(0.5, 0.5)).isEqualTo(0);
    assertThat(raster.sample(2.75, 1.9)).isCloseTo(2.25 + 5 * 1.4, within(1e-6));
    assertThat(raster.sample(-3, 9)).isEqualTo(10);
  }

  @Test
  void blurringKeepsTheSumInside() {
    Raster dot = new Raster(41, 41);
    dot.set(20, 20, 1);
    Raster soft = Smoothing.gaussian(dot, 3);
    double sum = 0;
    for (float v : soft.cells()) {
      sum += v;
    }
    assertThat(sum).isCloseTo(1, within(1e-4));
    // The peak of a plane Gaussian of unit mass; the kernel ends early and is the higher for it.
    double peak = 1 / (2 * Math.PI * 9);
    assertThat((double) soft.at(20, 20)).isCloseTo(peak, within(0.03 * peak));
  }
}
