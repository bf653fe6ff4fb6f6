package wickmark.imaging.raster;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import org.junit.jupiter.api.Test;

class MaskMorphologyTest {
  @Test
  void isThatOfCellsOfAnyValue() {
    Random random = new Random(7);
    for (double share : new double[] {0, 0.03, 0.5, 0.97, 1}) {
      Raster mask = new Raster(23, 17);
      for (int i = 0; i < mask.cells().length; i++) {
        mask.cells()[i] = random.nextDouble() < share ? 1 : 0;
      }
      for (int radius : new int[] {0, 1, 3, 20, 30}) {
        Raster wider = SquareMorphology.dilated(mask, radius);
        assertThat(MaskMorphology.dilated(mask, radius).cells()).isEqualTo(wider.cells());
        assertThat(MaskMorphology.eroded(mask, radius).cells())
            .isEqualTo(SquareMorphology.eroded(mask, radius).cells());
        assertThat(MaskMorphology.closed(mask, radius).cells())
            .isEqualTo(SquareMorphology.eroded(wider, radius).cells());
      }
    }
  }
}
