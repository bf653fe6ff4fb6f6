package wickmark.testdata.colour;

/** The colour of the light of glowing bodies. */
public final class ColourTemperature {
  private ColourTemperature() {}

  /**
   * Returns the light of a black body, its green channel being 1: chromaticity by the usual cubic
   * approximation of the Planckian locus (from memory; good to about 0.001 in x and y).
   *
   * @param kelvin 1700 to 25000
   */
  public static LinearRgb light(double kelvin) {
    double t = 1000 / kelvin;
    double x =
        kelvin < 4000
            ? ((-0.2661239 * t - 0.2343589) * t + 0.8776956) * t + 0.179910
            : ((-3.0258469 * t + 2.1070379) * t + 0.2226347) * t + 0.240390;
    double y =
        kelvin < 2222
            ? ((-1.1063814 * x - 1.34811020) * x + 2.18555832) * x - 0.20219683
            : kelvin < 4000
                ? ((-0.9549476 * x - 1.37418593) * x + 2.09137015) * x - 0.16748867
                : ((3.0817580 * x - 5.87338670) * x + 3.75112997) * x - 0.37001483;
    double bigX = x / y;
    double bigZ = (1 - x - y) / y;
    double red = 3.2404542 * bigX - 1.5371385 - 0.4985314 * bigZ;
    double green = -0.9692660 * bigX + 1.8760108 + 0.0415560 * bigZ;
    double blue = 0.0556434 * bigX - 0.2040259 + 1.0572252 * bigZ;
    return new LinearRgb(red / green, 1, Math.max(0.02, blue / green));
  }

  /**
   * Returns the cast that is left when a camera balances for daylight of 6500 K only in part.
   *
   * @param left share of the cast that is left, 0 to 1
   */
  public static LinearRgb cast(double kelvin, double left) {
    LinearRgb light = light(kelvin);
    LinearRgb day = light(6500);
    return new LinearRgb(
        StrictMath.pow(light.red() / day.red(), left),
        1,
        StrictMath.pow(light.blue() / day.blue(), left));
  }
}
