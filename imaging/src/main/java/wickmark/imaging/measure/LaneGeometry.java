package wickmark.imaging.measure;

import wickmark.imaging.line.FittedLine;

/**
 * The way of one sample: from its origin on the baseline, square to the baseline, to the front.
 * Places are cells of the straight strip, x right and y down; distances are cells.
 */
final class LaneGeometry {
  private final double originX;
  private final double originY;
  private final double nx;
  private final double ny;

  LaneGeometry(FittedLine baseline, double originX) {
    this.originX = originX;
    this.originY = baseline.at(originX);
    double slope = baseline.slope();
    double norm = Math.sqrt(1 + slope * slope);
    this.nx = slope / norm;
    this.ny = -1 / norm;
  }

  double originY() {
    return originY;
  }

  /** Distance of a place from the baseline, square to it. */
  double along(double x, double y) {
    return (x - originX) * nx + (y - originY) * ny;
  }

  /** Distance of the front from the baseline on this lane's way. */
  double frontDistance(FittedLine front) {
    double distance = (originY - front.at(originX)) / -ny;
    for (int i = 0; i < 30; i++) {
      double x = originX + distance * nx;
      distance = (front.at(x) - originY) / ny;
    }
    return distance;
  }
}
