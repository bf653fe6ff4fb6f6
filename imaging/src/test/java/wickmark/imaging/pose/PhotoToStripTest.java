package wickmark.imaging.pose;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import wickmark.imaging.photo.PhotoPoint;

class PhotoToStripTest {
  private static final double[] KNOWN = {0.051, 0.004, -12, -0.003, -0.049, 88, 4e-5, -3e-5, 1};

  @Test
  void aKnownHomographyIsFoundAgain() {
    List<PhotoPoint> photo = new ArrayList<>();
    List<double[]> strip = new ArrayList<>();
    for (double x = 300; x <= 1500; x += 200) {
      for (double y = 200; y <= 2000; y += 300) {
        photo.add(new PhotoPoint(x, y));
        strip.add(mapped(x, y));
      }
    }
    List<Double> found = PhotoToStrip.fit(photo, strip);
    for (int i = 0; i < 9; i++) {
      assertThat(found.get(i)).as("element %d", i).isCloseTo(KNOWN[i], within(1e-9 * size(i)));
    }
  }

  @Test
  void fourPlacesAreMetExactly() {
    List<PhotoPoint> photo =
        List.of(
            new PhotoPoint(100, 90),
            new PhotoPoint(900, 120),
            new PhotoPoint(950, 1400),
            new PhotoPoint(70, 1350));
    List<double[]> strip = photo.stream().map(p -> mapped(p.x(), p.y())).toList();
    List<Double> found = PhotoToStrip.fit(photo, strip);
    for (int i = 0; i < 9; i++) {
      assertThat(found.get(i)).as("element %d", i).isCloseTo(KNOWN[i], within(1e-8 * size(i)));
    }
  }

  private static double size(int element) {
    return Math.max(1e-3, Math.abs(KNOWN[element]));
  }

  private static double[] mapped(double x, double y) {
    double w = KNOWN[6] * x + KNOWN[7] * y + KNOWN[8];
    return new double[] {
      (KNOWN[0] * x + KNOWN[1] * y + KNOWN[2]) / w, (KNOWN[3] * x + KNOWN[4] * y + KNOWN[5]) / w
    };
  }
}
