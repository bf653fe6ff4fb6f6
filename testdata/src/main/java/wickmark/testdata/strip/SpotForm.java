package wickmark.testdata.strip;

import wickmark.testdata.noise.ValueNoise;

/** The relative density of a spot around its core, before it is scaled to its peak. */
final class SpotForm {
  private static final double TAIL_SHARE = 0.55;

  private final SpotShape shape;
  private final ValueNoise warp;
  private final ValueNoise mottle;

  SpotForm(SpotShape shape, long seed) {
    this.shape = shape;
    this.warp = new ValueNoise(seed);
    this.mottle = new ValueNoise(~seed);
  }

  /**
   * Returns the density at a place.
   *
   * @param across mm to the right of the core
   * @param along mm above the core
   */
  double at(double across, double along) {
    double ragged = shape.raggedness();
    double u = across / shape.acrossMm();
    double v = along / shape.alongMm();
    if (ragged > 0) {
      double du = warp.octaves(0.7 * u + 20, 0.7 * v + 40, 2);
      double dv = warp.octaves(0.7 * u - 40, 0.7 * v + 3, 2);
      u += 1.3 * ragged * du;
      v += 1.3 * ragged * dv;
    }
    // Beyond two standard deviations the sides run on straight, so that faint wings do not curl
    // away.
    v += shape.crescentMm() / shape.alongMm() * (Math.abs(u) < 2 ? u * u : 4 * Math.abs(u) - 4);
    double density = gaussian(u * u + v * v);
    if (shape.tailMm() > 0) {
      density += TAIL_SHARE * tail(v) * gaussian(1.5 * u * u);
    }
    if (shape.flatness() > 0) {
      density =
          (1 - gaussian(2 * shape.flatness() * density)) / (1 - gaussian(2 * shape.flatness()));
    }
    if (ragged > 0) {
      density *= 1 + 0.6 * ragged * mottle.octaves(across / 0.9, along / 0.9, 2);
    }
    return density;
  }

  /** Fades towards the baseline, and starts smoothly inside the core. */
  private double tail(double v) {
    double fade = StrictMath.exp(Math.min(v, 0) * shape.alongMm() / shape.tailMm());
    return fade / (1 + StrictMath.exp(Math.min(60, v / 0.45)));
  }

  private static double gaussian(double square) {
    return square > 80 ? 0 : StrictMath.exp(-square / 2);
  }

  /**
   * Returns how far above the core the spot reaches, mm; beyond, its density is below a millionth.
   */
  double reachUp() {
    return 5.5 * shape.alongMm() * (1 + shape.raggedness()) + 6 * Math.max(0, -shape.crescentMm());
  }

  double reachDown() {
    return 5.5 * shape.alongMm() * (1 + shape.raggedness())
        + 6 * Math.max(0, shape.crescentMm())
        + 8 * shape.tailMm();
  }

  double reachAcross() {
    return 5.5 * shape.acrossMm() * (1 + shape.raggedness());
  }
}
