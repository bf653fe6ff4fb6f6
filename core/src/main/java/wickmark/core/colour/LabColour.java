package wickmark.core.colour;

/**
 * A colour in CIE L*a*b* with the white of D65 (0.95047, 1, 1.08883).
 *
 * <p>Of a spot, the paper is taken as the white, so that blank paper is (100, 0, 0) whatever its
 * tint and the light on it.
 *
 * <p>References: CIE 15:2004, Colorimetry; IEC 61966-2-1:1999 for the primaries.
 *
 * @param lightness L*, 0 for black to 100 for the white
 * @param a a*, towards red where positive, towards green where negative
 * @param b b*, towards yellow where positive, towards blue where negative
 */
public record LabColour(double lightness, double a, double b) {
  private static final double WHITE_X = 0.95047;
  private static final double WHITE_Z = 1.08883;
  private static final double BREAK = 6.0 / 29;

  /** A colour whose numbers are not finite is refused. */
  public LabColour {
    if (!Double.isFinite(lightness) || !Double.isFinite(a) || !Double.isFinite(b)) {
      throw new IllegalArgumentException(
          "a colour has three numbers, was " + lightness + ", " + a + ", " + b);
    }
  }

  /** Returns the colour of a light whose white is (1, 1, 1). */
  public static LabColour of(LinearRgb light) {
    double r = light.red();
    double g = light.green();
    double b = light.blue();
    double x = (0.4124564 * r + 0.3575761 * g + 0.1804375 * b) / WHITE_X;
    double y = 0.2126729 * r + 0.7151522 * g + 0.0721750 * b;
    double z = (0.0193339 * r + 0.1191920 * g + 0.9503041 * b) / WHITE_Z;
    double fy = cubeRootWithFoot(y);
    return new LabColour(
        116 * fy - 16, 500 * (cubeRootWithFoot(x) - fy), 200 * (fy - cubeRootWithFoot(z)));
  }

  /** Returns the colour of a light as seen with {@code white}, usually the paper, as the white. */
  public static LabColour of(LinearRgb light, LinearRgb white) {
    return of(light.relativeTo(white));
  }

  /** Returns the light of this colour with (1, 1, 1) as the white. */
  public LinearRgb toLinearRgb() {
    double fy = (lightness + 16) / 116;
    double x = WHITE_X * cubeWithFoot(fy + a / 500);
    double y = cubeWithFoot(fy);
    double z = WHITE_Z * cubeWithFoot(fy - b / 200);
    return new LinearRgb(
        3.2404542 * x - 1.5371385 * y - 0.4985314 * z,
        -0.9692660 * x + 1.8760108 * y + 0.0415560 * z,
        0.0556434 * x - 0.2040259 * y + 1.0572252 * z);
  }

  /** Returns the light of this colour, where {@code white} is the white it was taken with. */
  public LinearRgb toLinearRgb(LinearRgb white) {
    LinearRgb light = toLinearRgb();
    return new LinearRgb(
        light.red() * white.red(), light.green() * white.green(), light.blue() * white.blue());
  }

  /** Returns C*, the distance from grey. */
  public double chroma() {
    return StrictMath.hypot(a, b);
  }

  /** Returns the hue angle in degrees, 0 (inclusive) to 360; 0 for a pure grey. */
  public double hueDegrees() {
    double degrees = StrictMath.toDegrees(StrictMath.atan2(b, a));
    return degrees < 0 ? degrees + 360 : degrees;
  }

  private static double cubeRootWithFoot(double t) {
    return t > BREAK * BREAK * BREAK ? StrictMath.cbrt(t) : t / (3 * BREAK * BREAK) + 4.0 / 29;
  }

  private static double cubeWithFoot(double t) {
    return t > BREAK ? t * t * t : 3 * BREAK * BREAK * (t - 4.0 / 29);
  }
}
