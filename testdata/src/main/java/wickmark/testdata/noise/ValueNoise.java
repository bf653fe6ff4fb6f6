package wickmark.testdata.noise;

/**
 * Smooth noise over a plane: values at whole coordinates drawn from a hash of place and seed,
 * smoothly joined. Between -1 and 1, mean 0, feature size about one unit; the same everywhere for
 * the same seed.
 */
public final class ValueNoise {
  private final long seed;

  public ValueNoise(long seed) {
    this.seed = mix(seed ^ 0x9E3779B97F4A7C15L);
  }

  /** Returns the noise at a place; both coordinates must stay below 2^31 in size. */
  public double at(double x, double y) {
    int ix = (int) Math.floor(x);
    int iy = (int) Math.floor(y);
    double fx = smooth(x - ix);
    double fy = smooth(y - iy);
    double low = lattice(ix, iy) * (1 - fx) + lattice(ix + 1, iy) * fx;
    double high = lattice(ix, iy + 1) * (1 - fx) + lattice(ix + 1, iy + 1) * fx;
    return low * (1 - fy) + high * fy;
  }

  /** Returns several octaves added, each half as large and twice as fine as the one before. */
  public double octaves(double x, double y, int count) {
    double sum = 0;
    double size = 1;
    double whole = 0;
    for (int i = 0; i < count; i++) {
      sum += size * at(x + 17.3 * i, y - 9.1 * i);
      whole += size;
      size /= 2;
      x *= 2;
      y *= 2;
    }
    return sum / whole;
  }

  /** Returns the raw value of one cell, between -1 and 1, unrelated to its neighbours'. */
  public double lattice(int ix, int iy) {
    long bits = mix(seed + ix * 0xD1B54A32D192ED03L + iy * 0x8CB92BA72F3D8DD7L);
    return (bits >> 11) * 0x1.0p-52;
  }

  private static double smooth(double t) {
    return t * t * (3 - 2 * t);
  }

  private static long mix(long z) {
    z = (z ^ (z >>> 30)) * 0xBF58476D1CE4E5B9L;
    z = (z ^ (z >>> 27)) * 0x94D049BB133111EBL;
    return z ^ (z >>> 31);
  }
}
