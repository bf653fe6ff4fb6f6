package wickmark.imaging.strip;

import wickmark.imaging.raster.ColourRaster;
import wickmark.imaging.raster.Selection;

/**
 * Looks just inside and just outside a quadrilateral: the edge of a sheet of paper is a step in
 * brightness or colour that goes the same way along the whole side, and just inside all four sides
 * lies the same paper.
 */
final class PaperLikelihood {
  private static final int SAMPLES = 40;

  /** Distance from the side of the places compared, cells. */
  private static final double NEAR = 4.5;

  /** Step (sRGB units) that counts as half certain: about three times the noise of a soft scan. */
  private static final double HALF_STEP = 0.006;

  private static final int GRID = 24;

  /** sRGB value over the paper's below which it is neither shadow nor usual dye. */
  private static final double DARK = 0.5;

  /** Share of a strip that very dark spots and writing may take. */
  private static final double SPOTS_SHARE = 0.05;

  private final ColourRaster picture;

  PaperLikelihood(ColourRaster smoothed) {
    this.picture = smoothed;
  }

  /** Returns 0 to 1, larger for a sheet that is seen on all sides. */
  double of(Quad quad) {
    double product = 1;
    double[][] inside = new double[4 * SAMPLES][];
    for (int side = 0; side < 4; side++) {
      product *= 0.01 + 0.99 * stepAlong(quad, side, inside);
    }
    return Math.sqrt(Math.sqrt(product)) * homogeneity(inside) * lightInside(quad);
  }

  /** How clearly and consistently one side alone is a step, 0 to 1. */
  double ofSide(Quad quad, int side) {
    return stepAlong(quad, side, new double[4 * SAMPLES][]);
  }

  private double stepAlong(Quad quad, int side, double[][] inside) {
    int j = (side + 1) % 4;
    double length = quad.side(side);
    double dx = (quad.x()[j] - quad.x()[side]) / length;
    double dy = (quad.y()[j] - quad.y()[side]) / length;
    double[][] step = new double[SAMPLES][3];
    boolean[] seen = new boolean[SAMPLES];
    for (int k = 0; k < SAMPLES; k++) {
      double t = length * (0.05 + 0.9 * (k + 0.5) / SAMPLES);
      double x = quad.x()[side] + dx * t;
      double y = quad.y()[side] + dy * t;
      // Clockwise on the screen: the inside lies to the right of the direction of travel.
      double ix = x - dy * NEAR;
      double iy = y + dx * NEAR;
      double ox = x + dy * NEAR;
      double oy = y - dx * NEAR;
      inside[side * SAMPLES + k] = colour(ix, iy);
      seen[k] = picture.red().contains(ox, oy) && picture.red().contains(ix, iy);
      double[] out = colour(ox, oy);
      for (int c = 0; c < 3; c++) {
        step[k][c] = inside[side * SAMPLES + k][c] - out[c];
      }
    }
    return consistency(step, seen);
  }

  private double[] colour(double x, double y) {
    double[] colour = new double[3];
    picture.sample(x, y, colour);
    return colour;
  }

  private static double consistency(double[][] step, boolean[] seen) {
    int visible = 0;
    for (boolean s : seen) {
      visible += s ? 1 : 0;
    }
    if (visible < step.length / 3) {
      return 0.3; // the picture's border cuts the strip off here: neither for nor against
    }
    double[] typical = new double[3];
    for (int c = 0; c < 3; c++) {
      double[] values = new double[visible];
      int n = 0;
      for (int k = 0; k < step.length; k++) {
        if (seen[k]) {
          values[n++] = step[k][c];
        }
      }
      typical[c] = Selection.median(values, n);
    }
    double size = norm(typical);
    double agree = 0;
    for (int k = 0; k < step.length; k++) {
      if (seen[k]) {
        double dot = dot(step[k], typical) / Math.max(size, 1e-9);
        if (dot > 0.35 * size && dot > 0.7 * norm(step[k])) {
          agree++;
        }
      }
    }
    double share = agree / visible;
    // A side that runs on past the paper's corner is a wrong one, though most of it is an edge.
    return share * share * size / (size + HALF_STEP);
  }

  private static double dot(double[] a, double[] b) {
    return a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
  }

  private static double norm(double[] a) {
    return Math.sqrt(dot(a, a));
  }

  /** Share of the places inside whose hue is the paper's; brightness may vary with the light. */
  private static double homogeneity(double[][] inside) {
    double[] redness = new double[inside.length];
    double[] blueness = new double[inside.length];
    for (int k = 0; k < inside.length; k++) {
      double[] c = inside[k];
      redness[k] = StrictMath.log((c[0] + 0.02) / (c[1] + 0.02));
      blueness[k] = StrictMath.log((c[2] + 0.02) / (c[1] + 0.02));
    }
    double middleRed = median(redness);
    double middleBlue = median(blueness);
    int same = 0;
    for (int k = 0; k < inside.length; k++) {
      if (Math.hypot(redness[k] - middleRed, blueness[k] - middleBlue) < 0.07) {
        same++;
      }
    }
    return same / (double) inside.length;
  }

  /**
   * Falls below 1 where more of the inside than spots and writing take is far darker than the
   * paper: a sheet does not enclose the desk.
   */
  private double lightInside(Quad quad) {
    double[] light = new double[GRID * GRID];
    for (int i = 0; i < GRID; i++) {
      for (int j = 0; j < GRID; j++) {
        double[] p = quad.at((i + 0.5) / GRID, (j + 0.5) / GRID);
        double[] c = colour(p[0], p[1]);
        light[i * GRID + j] = Math.max(c[0], Math.max(c[1], c[2]));
      }
    }
    double paper = Selection.nth(light.clone(), light.length, light.length * 3 / 4);
    int dark = 0;
    for (double l : light) {
      dark += l < DARK * paper ? 1 : 0;
    }
    double share = dark / (double) light.length;
    return Math.max(0.05, 1 - 4 * Math.max(0, share - SPOTS_SHARE));
  }

  private static double median(double[] values) {
    return Selection.median(values.clone(), values.length);
  }
}
