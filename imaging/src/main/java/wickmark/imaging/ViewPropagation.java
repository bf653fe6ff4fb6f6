package wickmark.imaging;

import java.util.List;
import java.util.function.Function;
import wickmark.imaging.measure.ViewUncertainty;
import wickmark.imaging.photo.PhotoPoint;
import wickmark.imaging.pose.PlanePoint;
import wickmark.imaging.pose.PlaneView;

/**
 * Carries the uncertainty of the camera's view (focal length, distortion, tilt) to lengths along
 * the strip, by the derivatives of two figures: where the middle of the way from baseline to front
 * comes to lie, and how long that way is (JCGM 100:2008, 5.2, with the fit's full covariance).
 */
final class ViewPropagation {
  /** The principal point's coordinates, in pixels, come after the others. */
  private static final int FIRST_IN_PIXELS = 4;

  private ViewPropagation() {}

  static ViewUncertainty of(PlaneScale plane, PhotoPoint low, PhotoPoint middle, PhotoPoint high) {
    if (plane.covariance().length == 0) {
      return new ViewUncertainty(0, 0);
    }
    double bend =
        propagated(
            plane, view -> ratio(view.toPlane(low), view.toPlane(middle), view.toPlane(high)));
    double length =
        propagated(
            plane,
            view -> {
              double run = view.toPlane(low).distanceTo(view.toPlane(high));
              double perUnit =
                  plane.scaleOfView().map(scale -> scale.millimetresPerUnit(view)).orElse(1.0);
              return StrictMath.log(run * perUnit);
            });
    // Half-way, q · d · (1 − d/L) is q · L/4.
    return new ViewUncertainty(4 * bend, plane.scaleOfView().isPresent() ? length : 0);
  }

  /** Standard uncertainty of the strip's width over its height, relative. */
  static double proportion(PlaneScale plane, List<PhotoPoint> corners) {
    if (plane.covariance().length == 0) {
      return 0;
    }
    return propagated(
        plane,
        view -> {
          PlanePoint corner = view.toPlane(corners.get(0));
          double width = corner.distanceTo(view.toPlane(corners.get(1)));
          double height = corner.distanceTo(view.toPlane(corners.get(3)));
          return StrictMath.log(width / height);
        });
  }

  private static double ratio(PlanePoint low, PlanePoint middle, PlanePoint high) {
    double dx = high.x() - low.x();
    double dy = high.y() - low.y();
    return ((middle.x() - low.x()) * dx + (middle.y() - low.y()) * dy) / (dx * dx + dy * dy);
  }

  private static double propagated(PlaneScale plane, Function<PlaneView, Double> figure) {
    double[] p = plane.view().parameters();
    double[] slope = new double[p.length];
    for (int i = 0; i < p.length; i++) {
      double h = i < FIRST_IN_PIXELS ? 1e-4 : 1e-1;
      double[] up = p.clone();
      up[i] += h;
      double[] down = p.clone();
      down[i] -= h;
      slope[i] =
          (figure.apply(plane.view().with(up)) - figure.apply(plane.view().with(down))) / (2 * h);
    }
    double variance = 0;
    for (int i = 0; i < p.length; i++) {
      for (int j = 0; j < p.length; j++) {
        variance += slope[i] * slope[j] * plane.covariance()[i][j];
      }
    }
    return Math.sqrt(Math.max(0, variance));
  }
}
