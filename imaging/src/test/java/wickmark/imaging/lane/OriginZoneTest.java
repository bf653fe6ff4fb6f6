package wickmark.imaging.lane;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import wickmark.imaging.line.FittedLine;
import wickmark.imaging.line.LineKind;
import wickmark.imaging.raster.Raster;

/** What stands above the baseline and is no spot. */
class OriginZoneTest {
  private static final int WIDTH = 480;
  private static final int HEIGHT = 800;
  private static final double MM = 8;
  private static final double BASELINE = 700;

  private static FittedLine level(LineKind kind, double row) {
    return new FittedLine(
        kind,
        WIDTH / 2.0,
        WIDTH / 2.0,
        List.of(row, 0.0),
        new double[][] {{0.01, 0}, {0, 0.01}},
        0.1,
        1,
        1);
  }

  /** Stain from the baseline up to a height, in columns up to a part of the width. */
  private static OriginZone zone(double heightMm, double part) {
    Raster mask = new Raster(WIDTH, HEIGHT);
    for (int x = 0; x < part * WIDTH; x++) {
      for (int y = (int) (BASELINE - heightMm * MM); y < BASELINE; y++) {
        mask.set(x, y, 1);
      }
    }
    DyeMap dye = new DyeMap(mask, mask, 0.002, new Raster[] {mask, mask, mask}, List.of());
    return OriginZone.of(dye, level(LineKind.PENCIL, BASELINE), level(LineKind.PENCIL, 100), MM);
  }

  @Test
  void aCleanBaselineHasTheUsualZone() {
    assertThat(zone(0, 1)).isEqualTo(new OriginZone(2.2, false));
  }

  @Test
  void stainAboveAllOfTheLineIsInkThatRan() {
    OriginZone zone = zone(7, 1);
    assertThat(zone.ran()).isTrue();
    assertThat(zone.heightMm()).isCloseTo(7.6, within(0.3));
  }

  @Test
  void spotsThatSitOnTheLineAreNot() {
    assertThat(zone(7, 0.7).ran()).isFalse();
  }

  @Test
  void aShallowRimIsNot() {
    assertThat(zone(1.8, 1).ran()).isFalse();
  }
}
