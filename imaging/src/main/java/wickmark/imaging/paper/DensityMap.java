package wickmark.imaging.paper;

import java.util.Arrays;
import wickmark.imaging.raster.Raster;
import wickmark.imaging.straight.StraightStrip;

/**
 * Optical density (−log10 of the light over the blank paper's light there) for red, green and blue,
 * on the cells of the straight strip. Blank paper is 0; pencil is the same in all three; a dye is
 * strongest in the channels that it absorbs.
 *
 * @param density red, green and blue
 * @param paper 1 on the paper, 0 beside it or within half a millimetre of its edge
 * @param cellsPerMm cells per millimetre, or per nominal millimetre where there is no scale yet
 * @param noise standard deviation of one cell on blank paper, each channel
 */
public record DensityMap(Raster[] density, Raster paper, double cellsPerMm, double[] noise) {
  public int width() {
    return paper.width();
  }

  public int height() {
    return paper.height();
  }

  /** Measures the density of a strip. */
  public static DensityMap of(StraightStrip strip, double cellsPerMm) {
    Raster[] log = new Raster[3];
    for (int c = 0; c < 3; c++) {
      log[c] = logarithm(strip.light().channel(c));
    }
    Raster paper = Shrinkage.awayFromEdge(strip.paper(), 0.5 * cellsPerMm);
    Raster[] background = PaperBackground.fit(log, paper, cellsPerMm);
    double[] noise = new double[3];
    for (int c = 0; c < 3; c++) {
      float[] d = log[c].cells();
      float[] b = background[c].cells();
      for (int i = 0; i < d.length; i++) {
        d[i] = b[i] - d[i];
      }
      noise[c] = noise(log[c], paper);
    }
    return new DensityMap(log, paper, cellsPerMm, noise);
  }

  private static Raster logarithm(Raster light) {
    Raster out = new Raster(light.width(), light.height());
    float[] in = light.cells();
    for (int i = 0; i < in.length; i++) {
      out.cells()[i] = (float) StrictMath.log10(in[i] + 0.002);
    }
    return out;
  }

  /** From the differences of neighbouring cells, by their median, so that spots have no say. */
  private static double noise(Raster density, Raster paper) {
    double[] differences = new double[density.cells().length / 7 + 1];
    int n = 0;
    for (int i = 0; i + 2 < density.cells().length; i += 7) {
      if (paper.cells()[i] > 0 && paper.cells()[i + 2] > 0) {
        differences[n++] = Math.abs(density.cells()[i] - density.cells()[i + 2]);
      }
    }
    if (n < 10) {
      return 0.01;
    }
    Arrays.sort(differences, 0, n);
    return Math.max(1e-4, 1.4826 * differences[n / 2] / Math.sqrt(2));
  }

  /** The least density of the three: pencil and shadow have it, a pure colour hardly. */
  public Raster neutral() {
    Raster out = new Raster(width(), height());
    for (int i = 0; i < out.cells().length; i++) {
      out.cells()[i] =
          Math.min(
              density[0].cells()[i], Math.min(density[1].cells()[i], density[2].cells()[i]));
    }
    return out;
  }

  /** The greatest difference between two channels: colour of any hue, and no shadow. */
  public Raster chroma() {
    Raster out = new Raster(width(), height());
    for (int i = 0; i < out.cells().length; i++) {
      float r = density[0].cells()[i];
      float g = density[1].cells()[i];
      float b = density[2].cells()[i];
      out.cells()[i] = Math.max(r, Math.max(g, b)) - Math.min(r, Math.min(g, b));
    }
    return out;
  }
}
