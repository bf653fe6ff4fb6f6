package wickmark.core.chromatogram;

/**
 * A place along a lane.
 *
 * @param along in the strip's unit of length, growing towards the front; its zero is arbitrary
 * @param standardUncertainty of finding it (k = 1), same unit; without what all places share, such
 *     as the scale
 */
public record Place(double along, double standardUncertainty) {

  /** A place that is not finite, or an uncertainty below 0, is refused. */
  public Place {
    if (!Double.isFinite(along)
        || !(standardUncertainty >= 0)
        || Double.isInfinite(standardUncertainty)) {
      throw new IllegalArgumentException(
          "a place and its uncertainty are finite, the latter not below 0, was "
              + along
              + " with "
              + standardUncertainty);
    }
  }
}
