package wickmark.imaging.lane;

/**
 * One sample's place on the baseline.
 *
 * @param originX column on the baseline, cells
 * @param left column from which on stain belongs to this lane
 * @param right column up to which it does
 * @param support how well writing, marks and stain agree on it, 0 to 1
 */
public record LaneTrack(double originX, double left, double right, double support) {}
