package wickmark.imaging.paper;

import wickmark.imaging.raster.Raster;
import wickmark.imaging.raster.Selection;
import wickmark.imaging.straight.StraightStrip;

/**
 * Optical density (−log10 of the light over the blank paper's light there) for red, green and blue,
 * on the cells of the straight strip. Blank paper is 0, and so is all beside the paper; pencil is
 * the same in all three; a dye is strongest in the channels that it absorbs.
 *
 * @param density red, green and blue
 * @param paper 1 on the paper, 0 beside it or within half a millimetre of its edge
 * @param steepness how fast the light changes there, density per millimetre: at the edge of a
 *     shadow a density is that much less certain
 * @param shade the part of the direct light that is missing in the shadow of a narrow thing
 * @param cellsPerMm cells per millimetre, or per nominal millimetre where there is no scale yet
 * @param noise standard deviation of one cell on blank paper, each channel
 * @param shadeNoise how much more one cell varies where all of the direct light is missing
 * @param white where the blank paper is as bright as the picture can be
 */
public record DensityMap(
    Raster[] density,
    Raster paper,
    Raster steepness,
    Raster shade,
    double cellsPerMm,
    double[] noise,
    double shadeNoise,
    WhiteChannels white) {
  /** How far the edge of a shadow may be from where the light was found to change, mm. */
  private static final double EDGE_BLUR_MM = 0.45;

  /** Change of the light that is followed without fault, density per mm. */
  private static final double GENTLE = 0.008;

  /** Of a cell where there is hardly any paper to tell. */
  private static final double UNKNOWN_NOISE = 0.01;

  /** Part of the direct light from which its lack is a shadow's midst. */
  private static final double MIDST = 0.8;

  /** A map of paper that is nowhere white in the picture, and in no narrow shadow. */
  public DensityMap(
      Raster[] density, Raster paper, Raster steepness, double cellsPerMm, double[] noise) {
    this(
        density,
        paper,
        steepness,
        new Raster(paper.width(), paper.height()),
        cellsPerMm,
        noise,
        0,
        WhiteChannels.none(paper.width(), paper.height()));
  }

  public int width() {
    return paper.width();
  }

  public int height() {
    return paper.height();
  }

  /**
   * Density that may be light and no dye: where the light changes, and in a shadow that was taken
   * off, the paper's is not sure.
   */
  public double unsure(int x, int y) {
    return EDGE_BLUR_MM * Math.max(0, steepness.at(x, y) - GENTLE) + shadeNoise * shade.at(x, y);
  }

  /** Measures the density of a strip. */
  public static DensityMap of(StraightStrip strip, double cellsPerMm) {
    return of(strip, cellsPerMm, 1);
  }

  /**
   * Measures the density with a background in blocks of a given size.
   *
   * @param blockMm side of a block: 1 mm follows the edge of a shadow, 2 mm is quicker
   */
  public static DensityMap of(StraightStrip strip, double cellsPerMm, double blockMm) {
    Raster[] log = new Raster[3];
    for (int c = 0; c < 3; c++) {
      log[c] = logarithm(strip.light().channel(c));
    }
    Raster paper = Shrinkage.awayFromEdge(strip.paper(), 0.5 * cellsPerMm);
    PaperBackground.Fitted fitted = PaperBackground.fit(log, paper, cellsPerMm, blockMm);
    Raster[] background = fitted.light();
    double[] noise = new double[3];
    for (int c = 0; c < 3; c++) {
      float[] d = log[c].cells();
      float[] b = background[c].cells();
      for (int i = 0; i < d.length; i++) {
        // However much light there is, a channel shows no more than white.
        d[i] = (b[i] < 0 ? b[i] : 0) - d[i];
      }
      noise[c] = noise(log[c], paper, UNKNOWN_NOISE);
    }
    double inMidst = noise(log[1], midst(fitted.shade(), paper), noise[1]);
    double shadeNoise = Math.max(0, inMidst - noise[1]);
    Raster peeled = EdgePeel.peel(log, paper, cellsPerMm);
    for (int i = 0; i < peeled.cells().length; i++) {
      if (peeled.cells()[i] == 0) {
        // Beside the paper there is nothing: no filter may carry the desk onto it.
        log[0].cells()[i] = 0;
        log[1].cells()[i] = 0;
        log[2].cells()[i] = 0;
      }
    }
    return new DensityMap(
        log,
        peeled,
        steepness(background[1], cellsPerMm),
        fitted.shade(),
        cellsPerMm,
        noise,
        shadeNoise,
        WhiteChannels.of(background));
  }

  private static Raster midst(Raster shade, Raster paper) {
    Raster out = new Raster(paper.width(), paper.height());
    for (int i = 0; i < out.cells().length; i++) {
      out.cells()[i] = shade.cells()[i] > MIDST ? paper.cells()[i] : 0;
    }
    return out;
  }

  private static Raster steepness(Raster light, double cellsPerMm) {
    int d = (int) Math.max(1, Math.round(cellsPerMm / 2));
    Raster out = new Raster(light.width(), light.height());
    for (int y = 0; y < light.height(); y++) {
      int above = Math.max(0, y - d);
      int below = Math.min(light.height() - 1, y + d);
      for (int x = 0; x < light.width(); x++) {
        int left = Math.max(0, x - d);
        int right = Math.min(light.width() - 1, x + d);
        double dx = (light.at(right, y) - light.at(left, y)) * cellsPerMm / (right - left);
        double dy = (light.at(x, below) - light.at(x, above)) * cellsPerMm / (below - above);
        out.set(x, y, (float) Math.sqrt(dx * dx + dy * dy));
      }
    }
    return out;
  }

  private static Raster logarithm(Raster light) {
    Raster out = new Raster(light.width(), light.height());
    float[] in = light.cells();
    for (int i = 0; i < in.length; i++) {
      out.cells()[i] = LogTable.log10(in[i]);
    }
    return out;
  }

  /** From the differences of neighbouring cells, by their median, so that spots have no say. */
  private static double noise(Raster density, Raster paper, double otherwise) {
    double[] differences = new double[density.cells().length / 7 + 1];
    int n = 0;
    for (int i = 0; i + 2 < density.cells().length; i += 7) {
      if (paper.cells()[i] > 0 && paper.cells()[i + 2] > 0) {
        differences[n++] = Math.abs(density.cells()[i] - density.cells()[i + 2]);
      }
    }
    if (n < 10) {
      return otherwise;
    }
    return Math.max(1e-4, 1.4826 * Selection.median(differences, n) / Math.sqrt(2));
  }

  /** The same map turned a quarter clockwise. */
  public DensityMap turned() {
    Raster[] d = new Raster[3];
    for (int c = 0; c < 3; c++) {
      d[c] = density[c].turned();
    }
    return new DensityMap(
        d,
        paper.turned(),
        steepness.turned(),
        shade.turned(),
        cellsPerMm,
        noise,
        shadeNoise,
        white.turned());
  }

  /**
   * The least density of the channels that tell it: pencil and shadow have it, a pure colour
   * hardly.
   */
  public Raster neutral() {
    Raster out = new Raster(width(), height());
    for (int i = 0; i < out.cells().length; i++) {
      out.cells()[i] = white.least(density, i);
    }
    return out;
  }

  /** The greatest difference between two channels: colour of any hue, and no shadow. */
  public Raster chroma() {
    return chroma(density);
  }

  /** The same of any three densities, red, green and blue. */
  public static Raster chroma(Raster[] density) {
    Raster out = new Raster(density[0].width(), density[0].height());
    float[] red = density[0].cells();
    float[] green = density[1].cells();
    float[] blue = density[2].cells();
    for (int i = 0; i < red.length; i++) {
      float less = red[i] < green[i] ? red[i] : green[i];
      float more = red[i] < green[i] ? green[i] : red[i];
      out.cells()[i] = (more > blue[i] ? more : blue[i]) - (less < blue[i] ? less : blue[i]);
    }
    return out;
  }
}
