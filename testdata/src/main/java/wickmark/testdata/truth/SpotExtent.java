package wickmark.testdata.truth;

/**
 * What the eye sees of a spot: where its own absorbance is at least a tenth of its peak and its
 * colour on blank paper at least 3 CIELAB units from the paper's.
 *
 * @param topDistanceMm height of its upper end above the baseline
 * @param bottomDistanceMm height of its lower end above the baseline
 * @param leftMm x of its left end on the strip
 * @param rightMm x of its right end on the strip
 */
public record SpotExtent(
    double topDistanceMm, double bottomDistanceMm, double leftMm, double rightMm) {

  /** Returns the height of the middle between both ends: what a person with a ruler measures. */
  public double middleDistanceMm() {
    return (topDistanceMm + bottomDistanceMm) / 2;
  }

  public double widthMm() {
    return rightMm - leftMm;
  }

  public double lengthMm() {
    return topDistanceMm - bottomDistanceMm;
  }
}
