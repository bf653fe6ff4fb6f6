package wickmark.cli.report;

import java.util.List;

/** A plane mapping from photo pixels to another picture. */
final class PlaneMapping {
  private final double[] h;

  /**
   * Takes the nine numbers of a homography, row by row.
   *
   * @throws IllegalArgumentException if there are not nine
   */
  PlaneMapping(List<Double> rowByRow) {
    if (rowByRow.size() != 9) {
      throw new IllegalArgumentException("a mapping has nine numbers, not " + rowByRow.size());
    }
    h = rowByRow.stream().mapToDouble(Double::doubleValue).toArray();
  }

  /** Returns where a point of the photo lies, x and y. */
  double[] of(List<Double> photoPoint) {
    double x = photoPoint.get(0);
    double y = photoPoint.get(1);
    double w = h[6] * x + h[7] * y + h[8];
    return new double[] {(h[0] * x + h[1] * y + h[2]) / w, (h[3] * x + h[4] * y + h[5]) / w};
  }
}
