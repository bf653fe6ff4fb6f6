package wickmark.imaging.straight;

import java.util.List;
import wickmark.imaging.photo.PhotoPoint;
import wickmark.imaging.pose.PlanePoint;
import wickmark.imaging.pose.PlaneView;

/**
 * The upright rectangle around the strip, laid into the paper's plane: x right, y down from its
 * top-left corner, in cells of the straightened raster.
 */
public final class StripFrame {
  private final PlaneView view;
  private final PlanePoint topLeft;
  private final double ux;
  private final double uy;
  private final double cell;
  private final int width;
  private final int height;

  private StripFrame(
      PlaneView view,
      PlanePoint topLeft,
      double ux,
      double uy,
      double cell,
      int width,
      int height) {
    this.view = view;
    this.topLeft = topLeft;
    this.ux = ux;
    this.uy = uy;
    this.cell = cell;
    this.width = width;
    this.height = height;
  }

  /**
   * Lays the frame around a strip.
   *
   * @param corners top-left, top-right, bottom-right, bottom-left
   * @param cell side of a raster cell in plane units
   */
  public static StripFrame around(PlaneView view, List<PhotoPoint> corners, double cell) {
    PlanePoint[] c = new PlanePoint[4];
    for (int i = 0; i < 4; i++) {
      c[i] = view.toPlane(corners.get(i));
    }
    // The direction across is the mean of the upper and lower side and of the square to the others.
    double dx =
        c[1].x() - c[0].x() + c[2].x() - c[3].x() + (c[3].y() - c[0].y() + c[2].y() - c[1].y());
    double dy =
        c[1].y() - c[0].y() + c[2].y() - c[3].y() - (c[3].x() - c[0].x() + c[2].x() - c[1].x());
    double norm = Math.hypot(dx, dy);
    double ux = dx / norm;
    double uy = dy / norm;
    double minX = Double.POSITIVE_INFINITY;
    double maxX = Double.NEGATIVE_INFINITY;
    double minY = Double.POSITIVE_INFINITY;
    double maxY = Double.NEGATIVE_INFINITY;
    for (PlanePoint p : c) {
      double x = p.x() * ux + p.y() * uy;
      double y = -p.x() * uy + p.y() * ux;
      minX = Math.min(minX, x);
      maxX = Math.max(maxX, x);
      minY = Math.min(minY, y);
      maxY = Math.max(maxY, y);
    }
    PlanePoint topLeft = new PlanePoint(minX * ux - minY * uy, minX * uy + minY * ux);
    int width = Math.max(8, (int) Math.round((maxX - minX) / cell));
    int height = Math.max(8, (int) Math.round((maxY - minY) / cell));
    return new StripFrame(view, topLeft, ux, uy, cell, width, height);
  }

  public int width() {
    return width;
  }

  public int height() {
    return height;
  }

  /** Side of a cell in plane units. */
  public double cell() {
    return cell;
  }

  public PlaneView view() {
    return view;
  }

  /** The place in the photo of a place in the frame. */
  public PhotoPoint toPhoto(double x, double y) {
    double px = x * cell;
    double py = y * cell;
    return view.toPhoto(
        new PlanePoint(topLeft.x() + px * ux - py * uy, topLeft.y() + px * uy + py * ux));
  }

  /** The place in the frame, {x, y} in cells, of a place in the photo. */
  public double[] fromPhoto(PhotoPoint photo) {
    PlanePoint p = view.toPlane(photo);
    double dx = p.x() - topLeft.x();
    double dy = p.y() - topLeft.y();
    return new double[] {(dx * ux + dy * uy) / cell, (-dx * uy + dy * ux) / cell};
  }
}
