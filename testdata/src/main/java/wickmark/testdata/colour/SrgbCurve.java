package wickmark.testdata.colour;

/** The transfer curve of sRGB (IEC 61966-2-1:1999). */
public final class SrgbCurve {
  private static final int STEPS = 1 << 14;
  private static final float[] ENCODED = table();
  private static final double[] DECODED = decoded();

  private SrgbCurve() {}

  /** Returns linear light, 0 to 1, of a coded value, 0 to 1. */
  public static double decode(double coded) {
    return coded <= 0.04045 ? coded / 12.92 : StrictMath.pow((coded + 0.055) / 1.055, 2.4);
  }

  /** Returns the coded value, 0 to 1, of linear light, 0 to 1. */
  public static double encode(double linear) {
    return linear <= 0.0031308 ? 12.92 * linear : 1.055 * StrictMath.pow(linear, 1 / 2.4) - 0.055;
  }

  /**
   * Returns the same from a table, for whole pictures; light outside 0 to 1 is clipped as a sensor
   * clips it.
   */
  public static float encodeClipped(float linear) {
    if (!(linear > 0)) {
      return 0;
    }
    if (linear >= 1) {
      return 1;
    }
    // The table runs over the square root of the light, where the curve is nearly straight.
    float place = (float) Math.sqrt(linear) * STEPS;
    int index = (int) place;
    float rest = place - index;
    return ENCODED[index] + rest * (ENCODED[index + 1] - ENCODED[index]);
  }

  /** Returns linear light, 0 to 1, of an 8-bit value, 0 to 255. */
  public static double decode8(int coded) {
    return DECODED[coded];
  }

  private static double[] decoded() {
    double[] table = new double[256];
    for (int i = 0; i < table.length; i++) {
      table[i] = decode(i / 255.0);
    }
    return table;
  }

  private static float[] table() {
    float[] table = new float[STEPS + 2];
    for (int i = 0; i < table.length; i++) {
      double root = (double) i / STEPS;
      table[i] = (float) encode(root * root);
    }
    return table;
  }
}
