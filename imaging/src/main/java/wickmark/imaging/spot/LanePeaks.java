package wickmark.imaging.spot;

/**
 * The peaks of a lane.
 *
 * @param profile that they were fitted to
 * @param run from the baseline to the front, mm
 */
record LanePeaks(LaneProfile profile, PeakFit fit, double run) {}
