package wickmark.imaging.paper;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Light of two sources, added up by hand. */
class ShadowCurveTest {
  private static final double[] SUN = {0.8, 0.76, 0.68};
  private static final double[] SKY = {0.2, 0.24, 0.32};

  private final ShadowCurve curve = ShadowCurve.to(density(0));

  /** Density of paper that has a part of the sun's light and all of the sky's. */
  private static double[] density(double sun) {
    double[] density = new double[3];
    for (int c = 0; c < 3; c++) {
      density[c] = -StrictMath.log10(SKY[c] + sun * SUN[c]);
    }
    return density;
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, 0.1, 0.5, 0.9, 1})
  void blankPaperTellsOfItsLight(double sun) {
    double[] d = density(sun);
    ShadowCurve.Place place = curve.at(d[0], d[1], d[2]);
    assertThat(place.isPaper()).isTrue();
    assertThat(place.direct()).isCloseTo(sun, within(1e-9));
    for (int c = 0; c < 3; c++) {
      assertThat(curve.logLight(c, place.direct())).isCloseTo(-d[c], within(1e-9));
    }
  }

  /** Densities of a dye and of a shadow add up (Beer and Lambert); a yellow dye lets red pass. */
  @ParameterizedTest
  @ValueSource(doubles = {0, 0.5, 1})
  void aDyeTellsOfItsLightByTheChannelThatItLeavesAlone(double sun) {
    double[] d = density(sun);
    ShadowCurve.Place place = curve.at(d[0], d[1] + 0.05, d[2] + 0.4);
    assertThat(place.isPaper()).isFalse();
    assertThat(place.direct()).isCloseTo(sun, within(1e-9));
  }
}
