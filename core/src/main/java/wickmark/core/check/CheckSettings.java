package wickmark.core.check;

/**
 * Settings of {@link HandCheck}.
 *
 * @param lengthUncertainty standard uncertainty (k = 1) of a length that a person reads, in mm,
 *     above 0. Default 1/√3 = 0.58: both ends of a length are read to half a division of the
 *     ruler's millimetres, so that the length is uncertain by a whole division, taken as a
 *     rectangular distribution (common teaching of measurement; JCGM 100:2008, 4.3.7)
 */
public record CheckSettings(double lengthUncertainty) {

  /** An uncertainty that is not above 0 is refused. */
  public CheckSettings {
    if (!(lengthUncertainty > 0)) {
      throw new IllegalArgumentException(
          "the uncertainty of a reading is above 0, was " + lengthUncertainty);
    }
  }

  /** Returns the settings for a ruler with millimetres. */
  public static CheckSettings defaults() {
    return new CheckSettings(1 / StrictMath.sqrt(3));
  }

  /** Returns the expanded uncertainty (k = 2) of a length that a person reads, mm. */
  double expandedLengthUncertainty() {
    return 2 * lengthUncertainty;
  }
}
