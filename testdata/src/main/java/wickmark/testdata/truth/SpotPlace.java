package wickmark.testdata.truth;

/**
 * Where a spot is.
 *
 * @param peak where its own absorbance is highest
 * @param centroid its absorbance-weighted centre, of this spot's own dye alone
 * @param distanceMm the centroid's height above the baseline, square to it
 * @param rf that distance over the front's distance in the same lane
 */
public record SpotPlace(PointMm peak, PointMm centroid, double distanceMm, double rf) {}
