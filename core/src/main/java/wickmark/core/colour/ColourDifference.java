package wickmark.core.colour;

/**
 * How far two colours are apart, as the eye sees it: CIEDE2000 with all parametric factors 1. About
 * 1 is just noticeable; above 5, people speak of two colours.
 *
 * <p>Reference: The CIEDE2000 Color-Difference Formula: Implementation Notes, Supplementary Test
 * Data, and Mathematical Observations, Color Research and Application 30(1), 2005, 21-30.
 */
public record ColourDifference(double value) {
  private static final double POWER_25_7 = 6103515625.0;

  /** A difference below 0 or not a number is refused. */
  public ColourDifference {
    if (!(value >= 0)) {
      throw new IllegalArgumentException("a colour difference is not below 0, was " + value);
    }
  }

  /** Returns the difference of two colours; the same in either order. */
  public static ColourDifference between(LabColour first, LabColour second) {
    double meanPower = StrictMath.pow((first.chroma() + second.chroma()) / 2, 7);
    double stretch = 1 + 0.5 * (1 - StrictMath.sqrt(meanPower / (meanPower + POWER_25_7)));
    LabColour p = new LabColour(first.lightness(), first.a() * stretch, first.b());
    LabColour q = new LabColour(second.lightness(), second.a() * stretch, second.b());

    double chromaProduct = p.chroma() * q.chroma();
    double hueGap = hueGap(p, q, chromaProduct);
    double dHue = 2 * StrictMath.sqrt(chromaProduct) * sin(hueGap / 2);
    double dLightness = q.lightness() - p.lightness();
    double dChroma = q.chroma() - p.chroma();

    double meanLightness = (p.lightness() + q.lightness()) / 2;
    double meanChroma = (p.chroma() + q.chroma()) / 2;
    double meanHue = meanHue(p, q, chromaProduct);
    double fromMiddle = (meanLightness - 50) * (meanLightness - 50);
    double sLightness = 1 + 0.015 * fromMiddle / StrictMath.sqrt(20 + fromMiddle);
    double sChroma = 1 + 0.045 * meanChroma;
    double sHue = 1 + 0.015 * meanChroma * hueWeight(meanHue);

    double l = dLightness / sLightness;
    double c = dChroma / sChroma;
    double h = dHue / sHue;
    double square = l * l + c * c + h * h + rotation(meanHue, meanChroma) * c * h;
    return new ColourDifference(StrictMath.sqrt(StrictMath.max(0, square)));
  }

  /** The hue difference in degrees, -180 to 180; 0 where one of the two is a grey. */
  private static double hueGap(LabColour p, LabColour q, double chromaProduct) {
    if (chromaProduct == 0) {
      return 0;
    }
    double gap = q.hueDegrees() - p.hueDegrees();
    if (gap > 180) {
      return gap - 360;
    }
    return gap < -180 ? gap + 360 : gap;
  }

  private static double meanHue(LabColour p, LabColour q, double chromaProduct) {
    double sum = p.hueDegrees() + q.hueDegrees();
    if (chromaProduct == 0) {
      return sum;
    }
    if (StrictMath.abs(p.hueDegrees() - q.hueDegrees()) <= 180) {
      return sum / 2;
    }
    return sum < 360 ? (sum + 360) / 2 : (sum - 360) / 2;
  }

  private static double hueWeight(double hue) {
    return 1
        - 0.17 * cos(hue - 30)
        + 0.24 * cos(2 * hue)
        + 0.32 * cos(3 * hue + 6)
        - 0.20 * cos(4 * hue - 63);
  }

  /** The term that turns the ellipses of the blues. */
  private static double rotation(double meanHue, double meanChroma) {
    double offBlue = (meanHue - 275) / 25;
    double angle = 30 * StrictMath.exp(-offBlue * offBlue);
    double power = StrictMath.pow(meanChroma, 7);
    return -sin(2 * angle) * 2 * StrictMath.sqrt(power / (power + POWER_25_7));
  }

  private static double cos(double degrees) {
    return StrictMath.cos(StrictMath.toRadians(degrees));
  }

  private static double sin(double degrees) {
    return StrictMath.sin(StrictMath.toRadians(degrees));
  }
}
