package wickmark.imaging.raster;

import static org.assertj.core.api.Assertions.assertThat;

import boofcv.alg.filter.blur.GBlurImageOps;
import boofcv.struct.image.GrayF32;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SmoothingTest {
  private static Raster noise(int width, int height) {
    Random random = new Random(7);
    Raster raster = new Raster(width, height);
    for (int i = 0; i < raster.cells().length; i++) {
      raster.cells()[i] = random.nextFloat() - 0.3f;
    }
    return raster;
  }

  /** An independent library's blur of the same cells: BoofCV 0.44, GBlurImageOps.gaussian. */
  private static float[] byBoofCv(Raster in, double sigma) {
    GrayF32 image = new GrayF32(in.width(), in.height());
    System.arraycopy(in.cells(), 0, image.data, 0, in.cells().length);
    GrayF32 out = image.createSameShape();
    GBlurImageOps.gaussian(image, out, sigma, -1, null);
    return out.data;
  }

  /**
   * Wide and narrow kernels, pictures that are smaller than the kernel in one or both directions.
   */
  @ParameterizedTest
  @CsvSource({
    "64, 40, 0.5", "64, 40, 0.8", "64, 40, 1.0", "61, 43, 1.2", "64, 40, 2.0", "64, 40, 3.6",
    "50, 9, 3.6", "9, 50, 3.6", "5, 7, 4.0", "1, 30, 1.0", "30, 1, 1.0", "200, 120, 10.4"
  })
  void theGaussianIsAnotherLibrarysToTheLastBit(int width, int height, double sigma) {
    Raster in = noise(width, height);

    assertThat(Smoothing.gaussian(in, sigma).cells()).isEqualTo(byBoofCv(in, sigma));
  }

  @Test
  void noBlurIsACopy() {
    Raster in = noise(5, 4);

    assertThat(Smoothing.gaussian(in, 0).cells()).isEqualTo(in.cells()).isNotSameAs(in.cells());
  }
}
