package wickmark.imaging.straight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

class PaperSurfaceTest {
  /** Raised by up to about 4 % of the camera's distance, more than paper on a desk is. */
  private static final PaperSurface BENT =
      new PaperSurface(480, 800, 300, 250, 3000, List.of(0.035, 0.012), List.of(0.01, -0.006), 0);

  @Test
  void flatUndoesSeen() {
    for (double x = 0; x <= 480; x += 40) {
      for (double y = 0; y <= 800; y += 40) {
        double[] seen = BENT.seen(x, y);
        double[] flat = BENT.flat(seen[0], seen[1]);
        assertThat(Math.hypot(flat[0] - x, flat[1] - y)).isLessThan(1e-3);
      }
    }
  }

  @Test
  void theCornersStayWhereTheyAre() {
    for (double[] c : new double[][] {{0, 0}, {480, 0}, {480, 800}, {0, 800}}) {
      assertThat(BENT.seen(c[0], c[1])).containsExactly(c, within(1e-9));
    }
  }

  @Test
  void raisedPaperIsSeenLargerByTheDistancesRatio() {
    PaperSurface arched =
        new PaperSurface(480, 800, 240, 400, 3000, List.of(0.03, 0.0), List.of(0.0, 0.0), 0);
    double z = 3000;
    for (double y = 0; y <= 800; y += 100) {
      double h = arched.heightAt(y);
      double[] left = arched.seen(0, y);
      double[] right = arched.seen(480, y);
      assertThat((right[0] - left[0]) / 480).isCloseTo(z / (z - h), within(1e-9));
    }
    assertThat(arched.heightAt(400)).isCloseTo(3000 * 0.03 / 1.03, within(1e-9));
  }
}
