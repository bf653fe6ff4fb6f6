package wickmark.core.colour;

/**
 * How strongly a spot absorbs red, green and blue light, in decadic absorbance against the paper.
 *
 * <p>By the law of Beer and Lambert the three grow in step with the amount of dye: their ratio
 * belongs to the dye, their size to the amount. That is what makes a pale and a strong spot of one
 * dye comparable, whereas their colours on the paper differ. It holds nearly, not strictly, for the
 * broad channels of a camera.
 *
 * <p>A channel in which less than a thousandth of the light is left counts as a thousandth: eight
 * bits hold no less.
 */
public record DyeAbsorbance(double red, double green, double blue) {
  private static final double LEAST_LIGHT = 1e-3;

  /** Strength below which a spot cannot be told from real paper: 2 % of the light. */
  private static final double BLANK = 0.01;

  /** Returns the absorbance of a spot whose colour was taken with the paper as white. */
  public static DyeAbsorbance of(LabColour spot) {
    LinearRgb light = spot.toLinearRgb();
    return new DyeAbsorbance(
        absorbance(light.red()), absorbance(light.green()), absorbance(light.blue()));
  }

  /** Returns the absorbance of the channel that absorbs most; not above 0 for blank paper. */
  public double strength() {
    return StrictMath.max(red, StrictMath.max(green, blue));
  }

  /** Says whether so little is absorbed that there is no colour to speak of. */
  public boolean isBlank() {
    return strength() < BLANK;
  }

  /**
   * Returns the part of the absorbance that is common to all channels over that of the strongest: 0
   * for a pure colour, 1 for a neutral grey.
   */
  public double greyness() {
    double least = StrictMath.min(red, StrictMath.min(green, blue));
    return strength() > 0 ? StrictMath.max(0, least / strength()) : 0;
  }

  /**
   * Returns the same dye in the amount that gives {@code strength}.
   *
   * @throws IllegalArgumentException if this is blank paper, which has no dye to scale
   */
  public DyeAbsorbance atStrength(double strength) {
    if (!(strength() > 0)) {
      throw new IllegalArgumentException("blank paper has no dye to scale, was " + this);
    }
    double factor = strength / strength();
    return new DyeAbsorbance(red * factor, green * factor, blue * factor);
  }

  /** Returns the colour that this absorbance has on white paper. */
  public LabColour toLab() {
    return LabColour.of(
        new LinearRgb(
            StrictMath.pow(10, -red), StrictMath.pow(10, -green), StrictMath.pow(10, -blue)));
  }

  /**
   * Returns how far two spots are apart in colour if the stronger is thinned to the strength of the
   * paler. The paler one is not strengthened, because that would strengthen its noise too. Of two
   * spots one of which is blank, the plain difference.
   */
  public static ColourDifference differenceAtLikeStrength(LabColour first, LabColour second) {
    DyeAbsorbance p = of(first);
    DyeAbsorbance q = of(second);
    double strength = StrictMath.min(p.strength(), q.strength());
    if (p.isBlank() || q.isBlank()) {
      return ColourDifference.between(first, second);
    }
    return ColourDifference.between(p.atStrength(strength).toLab(), q.atStrength(strength).toLab());
  }

  private static double absorbance(double light) {
    return -StrictMath.log10(StrictMath.max(LEAST_LIGHT, light));
  }
}
