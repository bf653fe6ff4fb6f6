package wickmark.imaging.spot;

/**
 * The peaks of a lane.
 *
 * @param profile that they were fitted to
 * @param run from the baseline to the front, mm
 */
record LanePeaks(LaneProfile profile, PeakFit fit, double run) {
  /** The highest peak between baseline and front: beyond it there may be writing. */
  double highest() {
    double highest = 0;
    for (int i = 0; i < fit.shapes().size(); i++) {
      double centre = fit.shapes().get(i).centre();
      highest = centre > 0 && centre < run ? Math.max(highest, fit.height(i)) : highest;
    }
    return highest;
  }
}
