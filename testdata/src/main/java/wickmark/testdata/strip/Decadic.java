package wickmark.testdata.strip;

/** Ten to the power of minus an absorbance, from a table: what Beer-Lambert leaves of the light. */
final class Decadic {
  private static final int PER_UNIT = 2048;
  private static final double LARGEST = 5;
  private static final float[] TABLE = table();

  private Decadic() {}

  /**
   * Returns the share of light left, for absorbances from -1 to 5; beyond, that of the nearer end.
   */
  static float left(float absorbance) {
    float place = (absorbance + 1) * PER_UNIT;
    if (!(place > 0)) {
      return TABLE[0];
    }
    int index = (int) place;
    if (index >= TABLE.length - 1) {
      return TABLE[TABLE.length - 1];
    }
    return TABLE[index] + (place - index) * (TABLE[index + 1] - TABLE[index]);
  }

  private static float[] table() {
    float[] table = new float[(int) ((LARGEST + 1) * PER_UNIT) + 2];
    for (int i = 0; i < table.length; i++) {
      table[i] = (float) StrictMath.pow(10, 1 - (double) i / PER_UNIT);
    }
    return table;
  }
}
