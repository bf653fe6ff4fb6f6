package wickmark.imaging.scale;

/**
 * A small patch of parallel, evenly spaced strokes.
 *
 * @param column number of the patch's column in the grid of patches
 * @param row number of its row
 * @param x its middle in level pixels
 * @param y its middle in level pixels
 * @param angle direction across the strokes in radians, 0 to pi
 * @param pitchPx distance from stroke to stroke in level pixels
 * @param score correlation of the patch with itself one pitch on, 0 to 1
 */
record PeriodicCell(
    int column, int row, double x, double y, double angle, double pitchPx, double score) {

  /** Returns the angle between the two patches' directions, 0 to pi/2. */
  double turnTo(double otherAngle) {
    double d = Math.abs(angle - otherAngle) % Math.PI;
    return Math.min(d, Math.PI - d);
  }
}
