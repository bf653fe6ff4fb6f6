package wickmark.testdata.scene;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import wickmark.testdata.truth.PointPx;

class PinholeTest {
  private final CameraPlan straight = CameraPlan.above(1200, 1600, 8);

  @Test
  void aCameraStraightAboveIsTrueToScale() {
    PointPx place = new Pinhole(straight).project(10, 20, 0);

    assertThat(place.x()).isCloseTo(600 + 80, within(1e-9));
    assertThat(place.y()).isCloseTo(800 - 160, within(1e-9));
  }

  @Test
  void whatLiesHigherLooksLargerByDistance() {
    PointPx place = new Pinhole(straight).project(10, 0, 2);

    // Magnification of a pinhole: Z / (Z - z).
    double larger = straight.distanceMm() / (straight.distanceMm() - 2);
    assertThat(place.x() - 600).isCloseTo(80 * larger, within(1e-9));
  }

  @Test
  void thePlaceSeenAtAPixelIsSeenThere() {
    Pinhole camera = new Pinhole(straight.tilted(27, 215, 33).withDistortion(-0.03));
    double[] xy = new double[2];

    camera.placeAt(123.4, 1501.2, 1.7, xy);
    PointPx back = camera.project(xy[0], xy[1], 1.7);

    assertThat(back.x()).isCloseTo(123.4, within(1e-6));
    assertThat(back.y()).isCloseTo(1501.2, within(1e-6));
  }

  @Test
  void looksFromTheSideThatTheAzimuthNames() {
    Pinhole fromBelow = new Pinhole(straight.tilted(20, 270, 0));

    double near = fromBelow.project(10, -60, 0).x() - fromBelow.project(0, -60, 0).x();
    double far = fromBelow.project(10, 60, 0).x() - fromBelow.project(0, 60, 0).x();

    assertThat(near).isGreaterThan(far * 1.1);
  }
}
