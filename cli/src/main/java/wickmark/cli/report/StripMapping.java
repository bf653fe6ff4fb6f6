package wickmark.cli.report;

import java.util.List;

/** The record's mapping from photo pixels to strip coordinates. */
final class StripMapping {
  private final double[] h;

  /**
   * Takes the nine numbers of {@code pictureToStrip}, row by row.
   *
   * @throws IllegalArgumentException if there are not nine
   */
  StripMapping(List<Double> rowByRow) {
    if (rowByRow.size() != 9) {
      throw new IllegalArgumentException("a mapping has nine numbers, not " + rowByRow.size());
    }
    h = rowByRow.stream().mapToDouble(Double::doubleValue).toArray();
  }

  /** Returns the strip coordinates x and y of a point of the photo. */
  double[] toStrip(List<Double> photoPoint) {
    double x = photoPoint.get(0);
    double y = photoPoint.get(1);
    double w = h[6] * x + h[7] * y + h[8];
    return new double[] {(h[0] * x + h[1] * y + h[2]) / w, (h[3] * x + h[4] * y + h[5]) / w};
  }
}
