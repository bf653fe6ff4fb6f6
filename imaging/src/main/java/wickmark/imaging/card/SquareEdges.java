package wickmark.imaging.card;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import wickmark.core.card.Fiducial;
import wickmark.core.colour.SrgbTransfer;
import wickmark.imaging.photo.Photo;
import wickmark.imaging.photo.PhotoPoint;
import wickmark.imaging.raster.Selection;

/**
 * Measures a square's corners at the photo's full resolution: each side as a straight line through
 * the places where the light, on the way out, passes half of what it is beyond; corners are where
 * the lines meet. In linear light, because there a blurred edge is symmetrical about its place.
 */
final class SquareEdges {
  /** Places along a side, and the part at each end that the other sides blur into. */
  private static final int PLACES = 48;

  private static final double ENDS = 0.09;

  /** Steps of a profile across the edge, photo pixels. */
  private static final double STEP_PX = 0.5;

  /** How far a profile reaches, in cells of the square: within the black ring. */
  private static final double REACH_CELLS = 0.55;

  private static final double LEAST_REACH_PX = 2;

  /** Beyond the search's cells an edge is not looked for. */
  private static final double REACH_SEARCH_CELLS = 4;

  /** Light beyond the edge over that within it, at least: toner on paper has ten and more. */
  private static final double LEAST_CONTRAST = 1.8;

  /** A side of which less is seen is covered. */
  private static final double LEAST_SHARE = 0.6;

  /** Median distance of the places from the line in a side that is straight and clear, pixels. */
  private static final double MOST_SCATTER_PX = 0.6;

  private static final double[] LINEAR = new double[256];

  static {
    for (int i = 0; i < LINEAR.length; i++) {
      LINEAR[i] = SrgbTransfer.decode(i / 255.0);
    }
  }

  private final Photo photo;
  private final double reach;

  private SquareEdges(Photo photo, double reach) {
    this.photo = photo;
    this.reach = reach;
  }

  /** Returns the four corners in the order found; empty where a side is not seen clearly. */
  static Optional<List<PhotoPoint>> corners(Photo photo, SquareFinder.Found found) {
    double shortest = Double.POSITIVE_INFINITY;
    for (int i = 0; i < 4; i++) {
      shortest =
          Math.min(shortest, distance(found.corners().get(i), found.corners().get((i + 1) & 3)));
    }
    double cell = shortest / Fiducial.CELLS;
    double reach =
        Math.max(
            LEAST_REACH_PX,
            Math.min(REACH_CELLS * cell, REACH_SEARCH_CELLS * found.cellPx() + LEAST_REACH_PX));
    SquareEdges edges = new SquareEdges(photo, reach);
    List<double[]> lines = new ArrayList<>();
    for (int i = 0; i < 4; i++) {
      Optional<double[]> line =
          edges.line(found.corners().get(i), found.corners().get((i + 1) & 3));
      if (line.isEmpty()) {
        return Optional.empty();
      }
      lines.add(line.get());
    }
    List<PhotoPoint> corners = new ArrayList<>();
    for (int i = 0; i < 4; i++) {
      corners.add(crossing(lines.get((i + 3) & 3), lines.get(i)));
    }
    return Optional.of(corners);
  }

  private static double distance(PhotoPoint a, PhotoPoint b) {
    return Math.hypot(b.x() - a.x(), b.y() - a.y());
  }

  /** The side's line as {nx, ny, c} with nx · x + ny · y = c; the square lies below c. */
  private Optional<double[]> line(PhotoPoint from, PhotoPoint to) {
    double length = distance(from, to);
    double ux = (to.x() - from.x()) / length;
    double uy = (to.y() - from.y()) / length;
    // Corners run clockwise on the screen, so that outside lies to the left of the way.
    double nx = uy;
    double ny = -ux;
    double[] along = new double[PLACES];
    double[] off = new double[PLACES];
    int n = 0;
    for (int i = 0; i < PLACES; i++) {
      double t = length * (ENDS + (1 - 2 * ENDS) * (i + 0.5) / PLACES);
      double edge = edge(from.x() + t * ux, from.y() + t * uy, nx, ny);
      if (!Double.isNaN(edge)) {
        along[n] = t;
        off[n] = edge;
        n++;
      }
    }
    if (n < LEAST_SHARE * PLACES) {
      return Optional.empty();
    }
    double[] fit = straight(along, off, n);
    if (fit[2] > MOST_SCATTER_PX) {
      return Optional.empty();
    }
    double x0 = from.x() + fit[0] * nx;
    double y0 = from.y() + fit[0] * ny;
    double norm = Math.hypot(1, fit[1]);
    double lx = (nx - fit[1] * ux) / norm;
    double ly = (ny - fit[1] * uy) / norm;
    return Optional.of(new double[] {lx, ly, lx * x0 + ly * y0});
  }

  /** How far outwards the edge lies from a place, pixels; not a number where there is none. */
  private double edge(double x, double y, double nx, double ny) {
    int steps = (int) Math.ceil(reach / STEP_PX);
    double[] light = new double[2 * steps + 1];
    for (int k = -steps; k <= steps; k++) {
      light[k + steps] = light(x + k * STEP_PX * nx, y + k * STEP_PX * ny);
    }
    int level = Math.max(1, steps / 3);
    double[] inner = Arrays.copyOf(light, level);
    double[] outer = Arrays.copyOfRange(light, light.length - level, light.length);
    double dark = Selection.median(inner, level);
    double bright = Selection.median(outer, level);
    if (bright < LEAST_CONTRAST * dark) {
      return Double.NaN;
    }
    double half = (dark + bright) / 2;
    for (int k = 1; k < light.length; k++) {
      if (light[k - 1] < half && light[k] >= half) {
        double part = (half - light[k - 1]) / (light[k] - light[k - 1]);
        return (k - 1 + part - steps) * STEP_PX;
      }
    }
    return Double.NaN;
  }

  /** Linear light of the green channel, bilinear. */
  private double light(double x, double y) {
    double cx = Math.min(Math.max(x - 0.5, 0), photo.widthPx() - 1.0);
    double cy = Math.min(Math.max(y - 0.5, 0), photo.heightPx() - 1.0);
    int x0 = (int) cx;
    int y0 = (int) cy;
    int x1 = Math.min(x0 + 1, photo.widthPx() - 1);
    int y1 = Math.min(y0 + 1, photo.heightPx() - 1);
    double fx = cx - x0;
    double fy = cy - y0;
    double upper = (1 - fx) * linear(x0, y0) + fx * linear(x1, y0);
    double lower = (1 - fx) * linear(x0, y1) + fx * linear(x1, y1);
    return (1 - fy) * upper + fy * lower;
  }

  private double linear(int x, int y) {
    return LINEAR[photo.green(x, y)];
  }

  /** Offset, slope and median distance of a line through the places, by reweighting (Tukey). */
  private static double[] straight(double[] along, double[] off, int n) {
    double[] weight = new double[n];
    Arrays.fill(weight, 1);
    double offset = 0;
    double slope = 0;
    double scatter = 0;
    for (int round = 0; round < 8; round++) {
      double sw = 0;
      double st = 0;
      double so = 0;
      for (int i = 0; i < n; i++) {
        sw += weight[i];
        st += weight[i] * along[i];
        so += weight[i] * off[i];
      }
      double stt = 0;
      double sto = 0;
      for (int i = 0; i < n; i++) {
        double t = along[i] - st / sw;
        stt += weight[i] * t * t;
        sto += weight[i] * t * (off[i] - so / sw);
      }
      slope = sto / stt;
      offset = so / sw - slope * st / sw;
      double[] apart = new double[n];
      for (int i = 0; i < n; i++) {
        apart[i] = Math.abs(off[i] - offset - slope * along[i]);
      }
      scatter = Selection.median(apart.clone(), n);
      double reach = Math.max(0.1, 6 * scatter);
      for (int i = 0; i < n; i++) {
        double u = apart[i] / reach;
        weight[i] = u < 1 ? (1 - u * u) * (1 - u * u) : 0;
      }
    }
    return new double[] {offset, slope, scatter};
  }

  private static PhotoPoint crossing(double[] a, double[] b) {
    double d = a[0] * b[1] - a[1] * b[0];
    return new PhotoPoint((a[2] * b[1] - a[1] * b[2]) / d, (a[0] * b[2] - a[2] * b[0]) / d);
  }
}
