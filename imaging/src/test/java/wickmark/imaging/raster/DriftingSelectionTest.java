package wickmark.imaging.raster;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** What stands at a rank is what stands there after {@link Arrays#sort}, whatever came before. */
class DriftingSelectionTest {
  private final Random chance = new Random(5);
  private final DriftingSelection selection = new DriftingSelection();

  @Test
  void setsThatChangeLittleAndSetsThatJump() {
    double middle = 0;
    for (int set = 0; set < 2000; set++) {
      middle += set % 50 == 0 ? 1e3 * chance.nextGaussian() : 1e-3 * chance.nextGaussian();
      float[] values = new float[1 + chance.nextInt(80)];
      for (int i = 0; i < values.length; i++) {
        values[i] = (float) (middle + 0.01 * chance.nextGaussian());
      }
      isAsSorted(values, 1 + chance.nextInt(values.length));
    }
  }

  @Test
  void tiesBothZerosAndTheLargestNumbers() {
    float[] few = {-1, -0f, 0, 1, Float.MAX_VALUE, -Float.MAX_VALUE, Float.MIN_VALUE};
    for (int set = 0; set < 2000; set++) {
      float[] values = new float[40];
      for (int i = 0; i < values.length; i++) {
        values[i] = few[chance.nextInt(1 + set * few.length / 2000)];
      }
      isAsSorted(values, values.length);
    }
  }

  private void isAsSorted(float[] values, int count) {
    float[] sorted = Arrays.copyOf(values, count);
    Arrays.sort(sorted);
    int rank = chance.nextInt(count);
    float[] given = values.clone();
    assertThat(selection.nth(given, count, rank)).isEqualTo(sorted[rank]);
    assertThat(given).isEqualTo(values);
  }
}
