package wickmark.testdata.strip;

import wickmark.testdata.noise.ValueNoise;

/**
 * The unevenness of blank paper, as a factor of its reflectance, and its bumps, which pencils
 * catch.
 */
final class PaperTexture {
  private final Paper paper;
  private final ValueNoise cloud;
  private final ValueNoise fibres;

  PaperTexture(Paper paper, long seed) {
    this.paper = paper;
    this.cloud = new ValueNoise(seed);
    this.fibres = new ValueNoise(seed + 1);
  }

  /** Returns the reflectance at a place over the paper's mean. */
  double factorAt(double x, double y) {
    // The noise has a standard deviation of about 0.3, so that the paper's figures are true ones.
    return 1
        + paper.cloudiness() / 0.3 * cloud.octaves(x / 4.5, y / 4.5, 3)
        + paper.grain() / 0.3 * bumpAt(x, y);
  }

  /**
   * Returns the height of the paper's bumps, about -1 to 1: fibres lie mostly along the machine's
   * way.
   */
  double bumpAt(double x, double y) {
    double size = paper.fibreMm();
    return 0.6 * fibres.at(x / size, y / (1.6 * size))
        + 0.4 * fibres.at(2.1 * x / size + 50, 2.1 * y / size);
  }
}
