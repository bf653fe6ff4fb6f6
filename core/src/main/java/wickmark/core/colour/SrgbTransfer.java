package wickmark.core.colour;

/**
 * The transfer function of sRGB between a picture's values and light, per channel, both 0 to 1.
 *
 * <p>Reference: IEC 61966-2-1:1999, Multimedia systems and equipment, part 2-1, default RGB colour
 * space.
 */
public final class SrgbTransfer {
  private static final double LINEAR_SLOPE = 12.92;
  private static final double OFFSET = 0.055;
  private static final double EXPONENT = 2.4;
  private static final double DECODE_BREAK = 0.04045;
  private static final double ENCODE_BREAK = 0.0031308;

  private SrgbTransfer() {}

  /** Returns the linear light, 0 to 1, of a picture value from 0 to 1. */
  public static double decode(double value) {
    return value <= DECODE_BREAK
        ? value / LINEAR_SLOPE
        : StrictMath.pow((value + OFFSET) / (1 + OFFSET), EXPONENT);
  }

  /** Returns the picture value, 0 to 1, of a linear light from 0 to 1. */
  public static double encode(double light) {
    return light <= ENCODE_BREAK
        ? light * LINEAR_SLOPE
        : (1 + OFFSET) * StrictMath.pow(light, 1 / EXPONENT) - OFFSET;
  }
}
