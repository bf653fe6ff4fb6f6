package wickmark.testdata.colour;

/** A colour in CIE 1976 L*a*b* under D65 (CIE 15, ISO 11664-4). */
public record Cielab(double lightness, double a, double b) {
  private static final double BREAK = 216.0 / 24389.0;

  public static Cielab of(LinearRgb light) {
    double r = light.red();
    double g = light.green();
    double b = light.blue();
    double x = curve((0.4124564 * r + 0.3575761 * g + 0.1804375 * b) / 0.95047);
    double y = curve(0.2126729 * r + 0.7151522 * g + 0.0721750 * b);
    double z = curve((0.0193339 * r + 0.1191920 * g + 0.9503041 * b) / 1.08883);
    return new Cielab(116 * y - 16, 500 * (x - y), 200 * (y - z));
  }

  private static double curve(double t) {
    return t > BREAK ? StrictMath.cbrt(t) : (24389.0 / 27.0 * t + 16) / 116;
  }

  /** Returns the CIE 1976 colour difference, the straight distance in this space. */
  public double differenceFrom(Cielab other) {
    double dl = lightness - other.lightness;
    double da = a - other.a;
    double db = b - other.b;
    return Math.sqrt(dl * dl + da * da + db * db);
  }

  public double chroma() {
    return Math.sqrt(a * a + b * b);
  }

  /** Returns the hue angle in degrees, 0 to 360. */
  public double hueDeg() {
    double h = StrictMath.toDegrees(StrictMath.atan2(b, a));
    return h < 0 ? h + 360 : h;
  }
}
