package wickmark.imaging.straight;

import java.util.List;
import java.util.Optional;
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
  private final Optional<PaperSurface> surface;

  /** Arc length from the upper edge to each row of the sheet seen from above; cells. */
  private final double[] arc;

  private StripFrame(
      PlaneView view,
      PlanePoint topLeft,
      double ux,
      double uy,
      double cell,
      int width,
      int height,
      Optional<PaperSurface> surface) {
    this.view = view;
    this.topLeft = topLeft;
    this.ux = ux;
    this.uy = uy;
    this.cell = cell;
    this.width = width;
    this.arc = arcLengths(height, surface);
    this.height = surface.isPresent() ? (int) Math.round(arc[height]) : height;
    this.surface = surface;
  }

  private static double[] arcLengths(int rows, Optional<PaperSurface> surface) {
    double[] arc = new double[rows + 1];
    for (int y = 1; y <= rows; y++) {
      double rise =
          surface.isPresent() ? surface.get().heightAt(y) - surface.get().heightAt(y - 1.0) : 0;
      arc[y] = arc[y - 1] + Math.sqrt(1 + rise * rise);
    }
    return arc;
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
    return new StripFrame(view, topLeft, ux, uy, cell, width, height, Optional.empty());
  }

  /**
   * The same frame laid over a sheet that does not lie flat.
   *
   * @param sides the sheet's top, right, bottom and left edge, clockwise, as points in the photo
   * @param cellsPerMm cells per (nominal) millimetre
   */
  public StripFrame bentLike(List<List<PhotoPoint>> sides, double cellsPerMm) {
    PaperSurface bent = SurfaceFit.fit(this, sides, cellsPerMm);
    return new StripFrame(view, topLeft, ux, uy, cell, width, height, Optional.of(bent));
  }

  /**
   * How much larger the sheet looks than one that lies on the plane, because its rim is raised; 1
   * where it is not.
   */
  public double raisedMagnification() {
    return surface.map(PaperSurface::cornerMagnification).orElse(1.0);
  }

  /** Standard uncertainty of lengths on the sheet by how it is bent, relative; 0 for a flat one. */
  public double bendDoubt() {
    return surface.map(PaperSurface::doubt).orElse(0.0);
  }

  /** Greatest height of the sheet off the plane along its length, cells; 0 for a flat one. */
  public double bendHeight() {
    if (surface.isEmpty()) {
      return 0;
    }
    double most = 0;
    for (int y = 0; y < arc.length; y++) {
      most = Math.max(most, Math.abs(surface.get().heightAt(y)));
    }
    return most;
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
    double[] at = {x, y};
    if (surface.isPresent()) {
      at = surface.get().seen(x, rowAtArc(y));
    }
    double px = at[0] * cell;
    double py = at[1] * cell;
    return view.toPhoto(
        new PlanePoint(topLeft.x() + px * ux - py * uy, topLeft.y() + px * uy + py * ux));
  }

  /** The place in the frame, {x, y} in cells, of a place in the photo. */
  public double[] fromPhoto(PhotoPoint photo) {
    double[] at = fromPlane(view.toPlane(photo));
    if (surface.isEmpty()) {
      return at;
    }
    double[] flat = surface.get().flat(at[0], at[1]);
    return new double[] {flat[0], arcAtRow(flat[1])};
  }

  /** The place on the plane in cells of the frame, as if the sheet lay flat. */
  double[] fromPlane(PlanePoint p) {
    double dx = p.x() - topLeft.x();
    double dy = p.y() - topLeft.y();
    return new double[] {(dx * ux + dy * uy) / cell, (-dx * uy + dy * ux) / cell};
  }

  private double arcAtRow(double y) {
    int last = arc.length - 1;
    if (y <= 0) {
      return y;
    }
    if (y >= last) {
      return arc[last] + y - last;
    }
    int i = (int) y;
    return arc[i] + (y - i) * (arc[i + 1] - arc[i]);
  }

  private double rowAtArc(double length) {
    int last = arc.length - 1;
    if (length <= 0) {
      return length;
    }
    if (length >= arc[last]) {
      return last + length - arc[last];
    }
    int low = 0;
    int high = last;
    while (high - low > 1) {
      int middle = (low + high) >>> 1;
      if (arc[middle] <= length) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return low + (length - arc[low]) / (arc[high] - arc[low]);
  }
}
