package wickmark.imaging.raster;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.Random;
import org.junit.jupiter.api.Test;

class SelectionTest {
  @Test
  void everyRankIsAsInSortedOrder() {
    Random chance = new Random(3);
    for (int n = 1; n <= 40; n++) {
      // Few different values: ties are where such searches go astray.
      double[] values = new double[n + 5];
      for (int i = 0; i < values.length; i++) {
        values[i] = n % 2 == 0 ? chance.nextInt(6) : chance.nextGaussian();
      }
      double[] sorted = Arrays.copyOf(values, n);
      Arrays.sort(sorted);
      for (int rank = 0; rank < n; rank++) {
        assertThat(Selection.nth(values.clone(), n, rank)).isEqualTo(sorted[rank]);
      }
      assertThat(Selection.median(values.clone(), n)).isEqualTo(sorted[n / 2]);
    }
  }

  @Test
  void orderedValuesAreNoWorse() {
    double[] rising = new double[10_000];
    for (int i = 0; i < rising.length; i++) {
      rising[i] = i;
    }
    assertThat(Selection.nth(rising, rising.length, 1234)).isEqualTo(1234);
  }

  @Test
  void theMedianOfARasterIsThatOfTheCellsThatCount() {
    Raster in = new Raster(4, 1, new float[] {9, 1, 5, 7});
    Raster mask = new Raster(4, 1, new float[] {0, 1, 1, 1});
    assertThat(Selection.median(in, mask, 1)).isEqualTo(5);
    assertThat(Selection.median(in, mask, 3)).isEqualTo(7);
    assertThat(Selection.median(in, new Raster(4, 1), 1)).isZero();
  }
}
