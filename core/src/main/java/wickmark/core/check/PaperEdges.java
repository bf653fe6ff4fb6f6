package wickmark.core.check;

import java.util.List;
import wickmark.core.record.RunRecord;

/** The paper's lower and upper edge in strip millimetres, from a record's corners. */
final class PaperEdges {
  private final List<Double> homography;
  private final double[] topLeft;
  private final double[] topRight;
  private final double[] bottomRight;
  private final double[] bottomLeft;

  PaperEdges(RunRecord.Strip strip) {
    homography = strip.pictureToStrip();
    topLeft = onStrip(strip.cornersPx().get(0));
    topRight = onStrip(strip.cornersPx().get(1));
    bottomRight = onStrip(strip.cornersPx().get(2));
    bottomLeft = onStrip(strip.cornersPx().get(3));
  }

  private double[] onStrip(List<Double> px) {
    double x = px.get(0);
    double y = px.get(1);
    double[] h = homography.stream().mapToDouble(Double::doubleValue).toArray();
    double w = h[6] * x + h[7] * y + h[8];
    return new double[] {(h[0] * x + h[1] * y + h[2]) / w, (h[3] * x + h[4] * y + h[5]) / w};
  }

  /** Where a place of the photo lies across the strip. */
  double across(List<Double> px) {
    return onStrip(px)[0];
  }

  /** Height of the lower edge at a place across, below 0 as the baseline is 0. */
  double lower(double across) {
    return between(bottomLeft, bottomRight, across);
  }

  double upper(double across) {
    return between(topLeft, topRight, across);
  }

  private static double between(double[] left, double[] right, double across) {
    double part = (across - left[0]) / (right[0] - left[0]);
    return left[1] + part * (right[1] - left[1]);
  }
}
