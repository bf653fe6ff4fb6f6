package wickmark.imaging.lane;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** Persistence of peaks, worked by hand. */
class FurtherPeaksTest {
  private static double count(double half, double... values) {
    FurtherPeaks peaks = new FurtherPeaks(new CrossProfile(values, 0.1, half));
    for (double value : values) {
      peaks.add(value);
    }
    return peaks.count();
  }

  @Test
  void onePeakHasNoneBesideIt() {
    assertThat(count(0, 0, 0.2, 1, 0.7, 0.1)).isZero();
    assertThat(count(0, 1, 1, 1)).isZero();
    assertThat(count(0)).isZero();
  }

  @Test
  void whatIsPartedDownToNothingCountsWhole() {
    assertThat(count(0, 1, 0, 2, 0, 1)).isCloseTo(2, within(1e-9));
    assertThat(count(0, 2, 0, 1, 0, 2)).isCloseTo(2, within(1e-9));
  }

  /**
   * A valley to half of the lower peak leaves 0.5; less what is no valley, 0.15, and as a part of
   * what is left: 0.35 / 0.85.
   */
  @Test
  void aShallowValleyCountsInPart() {
    assertThat(count(0, 1, 0.5, 2)).isCloseTo(0.35 / 0.85, within(1e-9));
    assertThat(count(0, 2, 0.5, 1)).isCloseTo(0.35 / 0.85, within(1e-9));
    assertThat(count(0, 1, 0.9, 2)).isZero();
  }

  /** Of three peaks in a row the lowest is parted by the higher of its two valleys. */
  @Test
  void thePeakInTheMiddleIsPartedByItsHigherValley() {
    assertThat(count(0, 2, 0.2, 1, 0.5, 3)).isCloseTo(0.35 / 0.85 + 0.75 / 0.85, within(1e-9));
  }

  @Test
  void aPalePeakCountsLess() {
    assertThat(count(1, 3, 0, 1)).isCloseTo(0.25, within(1e-9));
    assertThat(count(0, 3, 0, 0.05)).isZero();
  }
}
