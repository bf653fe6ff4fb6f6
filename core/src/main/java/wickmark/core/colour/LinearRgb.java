package wickmark.core.colour;

/**
 * A colour in linear light with the primaries of sRGB; 1 in each channel is the white. Values below
 * 0 or above 1 lie outside what a screen can show and are kept as they are.
 */
public record LinearRgb(double red, double green, double blue) {

  /** Returns the light of a picture's sRGB values, each 0 to 1. */
  public static LinearRgb ofSrgb(double red, double green, double blue) {
    return new LinearRgb(
        SrgbTransfer.decode(red), SrgbTransfer.decode(green), SrgbTransfer.decode(blue));
  }

  /** Returns the light of a picture's sRGB values, each 0 to 255. */
  public static LinearRgb ofSrgb8(int red, int green, int blue) {
    return ofSrgb(red / 255.0, green / 255.0, blue / 255.0);
  }

  /**
   * Returns this colour as seen with {@code white} as the white, channel by channel in linear
   * light: for a spot on paper, the part of the light that the dye lets through.
   *
   * @throws IllegalArgumentException if a channel of {@code white} is not above 0
   */
  public LinearRgb relativeTo(LinearRgb white) {
    if (!(white.red > 0 && white.green > 0 && white.blue > 0)) {
      throw new IllegalArgumentException("a white has light in every channel, was " + white);
    }
    return new LinearRgb(red / white.red, green / white.green, blue / white.blue);
  }
}
