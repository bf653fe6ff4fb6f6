package wickmark.testdata.colour;

/**
 * Light or reflectance in the three channels of linear sRGB (IEC 61966-2-1 primaries, D65), each 0
 * for none and 1 for a perfect white.
 */
public record LinearRgb(double red, double green, double blue) {

  /** Returns the linear light of an 8-bit sRGB colour; each part 0 to 255. */
  public static LinearRgb ofSrgb(int red, int green, int blue) {
    return new LinearRgb(SrgbCurve.decode8(red), SrgbCurve.decode8(green), SrgbCurve.decode8(blue));
  }

  public LinearRgb times(double factor) {
    return new LinearRgb(red * factor, green * factor, blue * factor);
  }

  public LinearRgb times(LinearRgb other) {
    return new LinearRgb(red * other.red, green * other.green, blue * other.blue);
  }

  /** Returns the mixture with {@code share} (0 to 1) of the other colour. */
  public LinearRgb mixedWith(LinearRgb other, double share) {
    return new LinearRgb(
        red + share * (other.red - red),
        green + share * (other.green - green),
        blue + share * (other.blue - blue));
  }

  /**
   * Returns what is left of this reflectance behind a dye (Beer-Lambert).
   *
   * @param absorbance decadic absorbance in the channel where the dye absorbs most
   * @param share absorption in each channel, 1 where the dye absorbs most
   */
  public LinearRgb behind(double absorbance, LinearRgb share) {
    return new LinearRgb(
        red * StrictMath.pow(10, -absorbance * share.red),
        green * StrictMath.pow(10, -absorbance * share.green),
        blue * StrictMath.pow(10, -absorbance * share.blue));
  }

  /** Returns one channel: 0 red, 1 green, 2 blue. */
  public double channel(int index) {
    return index == 0 ? red : index == 1 ? green : blue;
  }
}
