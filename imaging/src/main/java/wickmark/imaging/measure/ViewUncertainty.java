package wickmark.imaging.measure;

/**
 * What the camera's view leaves uncertain, along the lanes.
 *
 * @param straightening standard uncertainty of q, where a distance d of a front distance L is wrong
 *     by q · d · (1 − d/L)
 * @param relativeScale standard uncertainty of lengths along the lanes, from the view alone, over
 *     the length
 */
public record ViewUncertainty(double straightening, double relativeScale) {}
