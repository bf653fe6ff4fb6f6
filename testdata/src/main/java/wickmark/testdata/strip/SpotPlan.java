package wickmark.testdata.strip;

/**
 * A spot to paint. The place is where its core is meant to be; what it is in truth, tail and
 * unevenness included, is worked out from what was painted.
 *
 * @param rf place of its core on the lane, 0 on the baseline to 1 on the front
 * @param absorbance decadic absorbance at its peak in the channel of strongest absorption, above 0
 * @param residue whether it is dye left at the origin
 */
public record SpotPlan(Dye dye, double rf, double absorbance, SpotShape shape, boolean residue) {
  public SpotPlan {
    if (!(rf >= 0 && rf <= 1) || !(absorbance > 0)) {
      throw new IllegalArgumentException(
          "a spot needs an Rf of 0 to 1 and an absorbance above 0, were "
              + rf
              + " and "
              + absorbance);
    }
  }

  public static SpotPlan of(Dye dye, double rf, double absorbance, SpotShape shape) {
    return new SpotPlan(dye, rf, absorbance, shape, false);
  }

  /** Returns dye that stayed where the sample was put. */
  public static SpotPlan residue(Dye dye, double absorbance, double sizeMm) {
    return new SpotPlan(
        dye, 0, absorbance, new SpotShape(sizeMm, sizeMm * 0.7, 0, 0, 1, 0.2), true);
  }
}
