package wickmark.imaging.line;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class CrossLineTest {
  private static final double NOISE = 0.01;
  private static final double UNTOLD = Double.NaN;

  @Test
  void binsThatCannotShowALineDoNotSpeakAgainstIt() {
    CrossLine line = line(0.1, 0.1, 0.1, 0.1, UNTOLD, UNTOLD, UNTOLD, UNTOLD);
    CrossLine faded = line(0.1, 0.1, 0.1, 0.1, 0, 0, 0, 0);
    assertThat(line.coverage()).isEqualTo(1);
    assertThat(line.strength()).isEqualTo(0.1);
    assertThat(line.certainty()).isGreaterThan(faded.certainty() + 0.3);
  }

  @Test
  void aLineOfWhichHardlyAnythingCouldBeSeenIsNone() {
    CrossLine line = line(0.1, UNTOLD, UNTOLD, UNTOLD, UNTOLD, UNTOLD, UNTOLD, UNTOLD, UNTOLD, 0);
    assertThat(line.strength()).isZero();
    assertThat(line.coverage()).isEqualTo(0.25);
  }

  private static CrossLine line(double... contrast) {
    double[] x = new double[contrast.length];
    for (int i = 0; i < x.length; i++) {
      x[i] = i;
    }
    return new CrossLine(LineKind.PENCIL, x, new double[x.length], contrast, NOISE);
  }
}
