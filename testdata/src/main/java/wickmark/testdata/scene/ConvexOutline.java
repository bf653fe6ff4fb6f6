package wickmark.testdata.scene;

import java.util.List;
import wickmark.testdata.truth.PointMm;

/** A figure without dents, by its corners, anticlockwise. */
final class ConvexOutline {
  private final List<PointMm> corners;

  ConvexOutline(List<PointMm> corners) {
    this.corners = List.copyOf(corners);
  }

  /** Returns the distance of a place from the outline, below 0 inside. */
  double distance(double x, double y) {
    double nearest = Double.POSITIVE_INFINITY;
    double farthestOut = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < corners.size(); i++) {
      PointMm from = corners.get(i);
      PointMm to = corners.get((i + 1) % corners.size());
      double dx = to.x() - from.x();
      double dy = to.y() - from.y();
      double length = Math.sqrt(dx * dx + dy * dy);
      double along = ((x - from.x()) * dx + (y - from.y()) * dy) / length;
      double out = ((x - from.x()) * dy - (y - from.y()) * dx) / length;
      double past = along - Math.max(0, Math.min(length, along));
      nearest = Math.min(nearest, Math.sqrt(out * out + past * past));
      farthestOut = Math.max(farthestOut, out);
    }
    return farthestOut <= 0 ? farthestOut : nearest;
  }
}
