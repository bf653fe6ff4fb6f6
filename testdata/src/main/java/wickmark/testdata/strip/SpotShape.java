package wickmark.testdata.strip;

/**
 * The form of a spot.
 *
 * @param acrossMm standard deviation across the lane, mm, above 0
 * @param alongMm standard deviation along the lane, mm, above 0
 * @param crescentMm how far its sides hang back (positive) or run ahead (negative) at one standard
 *     deviation from its axis, mm
 * @param tailMm length over which a tail towards the baseline fades to 1/e, mm; 0 for none
 * @param flatness 0 for a gaussian; above, how far an overloaded spot is saturated: 4 is a flat top
 * @param raggedness how uneven the dye lies, 0 to about 0.5
 */
public record SpotShape(
    double acrossMm,
    double alongMm,
    double crescentMm,
    double tailMm,
    double flatness,
    double raggedness) {
  public SpotShape {
    if (!(acrossMm > 0 && alongMm > 0 && tailMm >= 0 && flatness >= 0 && raggedness >= 0)) {
      throw new IllegalArgumentException(
          "a spot's size must be above 0 and tail, flatness and raggedness not below, were "
              + acrossMm
              + ", "
              + alongMm
              + ", "
              + tailMm
              + ", "
              + flatness
              + ", "
              + raggedness);
    }
  }

  /** Returns a smooth gaussian spot of the two standard deviations in mm. */
  public static SpotShape gaussian(double acrossMm, double alongMm) {
    return new SpotShape(acrossMm, alongMm, 0, 0, 0, 0);
  }

  public SpotShape withCrescent(double mm) {
    return new SpotShape(acrossMm, alongMm, mm, tailMm, flatness, raggedness);
  }

  public SpotShape withTail(double mm) {
    return new SpotShape(acrossMm, alongMm, crescentMm, mm, flatness, raggedness);
  }

  public SpotShape withFlatness(double value) {
    return new SpotShape(acrossMm, alongMm, crescentMm, tailMm, value, raggedness);
  }

  public SpotShape withRaggedness(double value) {
    return new SpotShape(acrossMm, alongMm, crescentMm, tailMm, flatness, value);
  }
}
