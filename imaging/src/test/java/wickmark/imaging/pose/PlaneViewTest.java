package wickmark.imaging.pose;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import wickmark.imaging.photo.PhotoPoint;

class PlaneViewTest {
  private static final PlaneView VIEW = new PlaneView(800, 600, 1500, -0.04, 0.35, -0.2);

  @Test
  void fromThePhotoToThePlaneAndBackIsTheSamePlace() {
    for (double x = 0; x <= 1600; x += 100) {
      for (double y = 0; y <= 1200; y += 100) {
        PhotoPoint back = VIEW.toPhoto(VIEW.toPlane(new PhotoPoint(x, y)));
        assertThat(Math.hypot(back.x() - x, back.y() - y)).isLessThan(1e-6);
      }
    }
  }

  @Test
  void straightBelowTheCameraIsNearestToIt() {
    // A plane tilted by (a, b) has its foot point at (a f, b f) from the middle, by a pinhole's
    // geometry.
    PlaneView pinhole = new PlaneView(800, 600, 1500, 0, 0.35, -0.2);
    PhotoPoint foot = pinhole.toPhoto(pinhole.nadir());
    assertThat(foot.x()).isCloseTo(800 + 0.35 * 1500, within(1e-9));
    assertThat(foot.y()).isCloseTo(600 - 0.2 * 1500, within(1e-9));
    assertThat(pinhole.tilt())
        .isCloseTo(StrictMath.atan(StrictMath.hypot(0.35, 0.2)), within(1e-12));
  }

  @Test
  void anUntiltedViewOnlyScales() {
    PlaneView above = new PlaneView(800, 600, 1500, 0, 0, 0);
    PlanePoint p = above.toPlane(new PhotoPoint(950, 450));
    PlanePoint q = above.toPlane(new PhotoPoint(800, 600));
    assertThat(p.distanceTo(q)).isCloseTo(Math.sqrt(2) * 150 / 1500, within(1e-12));
  }
}
