package wickmark.testdata.scene;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import wickmark.testdata.strip.Figure;

class ConvexOutlineTest {
  private static final ConvexOutline POINTED =
      new ConvexOutline(Figure.pointed(10).outline(20, 50));

  @Test
  void isFarFromARectangleAsItsFormulaSays() {
    ConvexOutline rectangle = new ConvexOutline(Figure.RECTANGLE.outline(20, 50));

    for (double[] place :
        List.of(
            new double[] {3, 20},
            new double[] {-4, 25},
            new double[] {26, 58},
            new double[] {10, -7},
            new double[] {20, 50})) {
      assertThat(rectangle.distance(place[0], place[1]))
          .isCloseTo(Shadows.toRectangle(place[0] - 10, place[1] - 25, 10, 25), within(1e-12));
    }
  }

  @Test
  void aPointsSidesAreFarFromTheRectanglesCorner() {
    // The lower sides run at 45 degrees: the rectangle's corner is 10 / sqrt(2) mm off them.
    assertThat(POINTED.distance(0, 0)).isCloseTo(10 / Math.sqrt(2), within(1e-12));
    assertThat(POINTED.distance(10, -3)).isCloseTo(3, within(1e-12));
    assertThat(POINTED.distance(10, 2)).isCloseTo(-2 / Math.sqrt(2), within(1e-12));
  }
}
