package wickmark.imaging.strip;

import wickmark.imaging.photo.PhotoArea;
import wickmark.imaging.raster.ColourRaster;
import wickmark.imaging.raster.Raster;
import wickmark.imaging.raster.Smoothing;

/**
 * Colour edges of a shrunken photo: where brightness or colour changes fastest, in which direction,
 * and how much that stands out from what is around it.
 *
 * <p>The gradient is that of all three channels together (the leading eigenvector of the summed
 * structure tensor), thinned by non-maximum suppression. The weight divides by the local mean
 * gradient, so that the faint edge of white paper on a white bench counts, and wood grain does not.
 */
final class EdgeMap {
  /** Blur before the gradient, cells. */
  private static final double SIGMA = 1.0;

  /** Half the side of the square over which "what is around it" is taken, cells. */
  private static final int AROUND = 20;

  /** Gradient (sRGB units per cell) at which an edge in flat surroundings weighs a half: noise. */
  private static final double FLOOR = 0.0035;

  final int width;
  final int height;

  /** 0 to 1; 0 where there is no edge. */
  final float[] weight;

  /** Direction of the normal in radians, 0 to π. */
  final float[] normal;

  private EdgeMap(int width, int height) {
    this.width = width;
    this.height = height;
    this.weight = new float[width * height];
    this.normal = new float[width * height];
  }

  static EdgeMap of(ColourRaster picture) {
    ColourRaster smooth = picture.blurred(SIGMA);
    int w = picture.width();
    int h = picture.height();
    EdgeMap map = new EdgeMap(w, h);
    Raster strength = new Raster(w, h);
    float[] nx = new float[w * h];
    float[] ny = new float[w * h];
    for (int y = 1; y < h - 1; y++) {
      for (int x = 1; x < w - 1; x++) {
        gradient(smooth, x, y, strength, nx, ny);
      }
    }
    Raster around = Smoothing.box(strength, AROUND);
    for (int y = 1; y < h - 1; y++) {
      for (int x = 1; x < w - 1; x++) {
        int i = y * w + x;
        float g = strength.cells()[i];
        if (g > 0 && isCrest(strength, nx[i], ny[i], x, y)) {
          map.weight[i] = (float) (g / (g + around.cells()[i] + FLOOR));
          double angle = StrictMath.atan2(ny[i], nx[i]);
          map.normal[i] = (float) (angle < 0 ? angle + Math.PI : angle);
        }
      }
    }
    return map;
  }

  /** Forgets the edges in a part of the photo. */
  void leaveOut(PhotoArea area, double factor) {
    for (int y = 0; y < height; y++) {
      for (int x = 0; x < width; x++) {
        if (area.contains((x + 0.5) * factor, (y + 0.5) * factor)) {
          weight[y * width + x] = 0;
        }
      }
    }
  }

  private static void gradient(
      ColourRaster in, int x, int y, Raster strength, float[] nx, float[] ny) {
    double xx = 0;
    double xy = 0;
    double yy = 0;
    for (int c = 0; c < 3; c++) {
      Raster r = in.channel(c);
      double dx = (r.at(x + 1, y) - r.at(x - 1, y)) / 2;
      double dy = (r.at(x, y + 1) - r.at(x, y - 1)) / 2;
      xx += dx * dx;
      xy += dx * dy;
      yy += dy * dy;
    }
    double half = Math.sqrt((xx - yy) * (xx - yy) / 4 + xy * xy);
    double largest = (xx + yy) / 2 + half;
    int i = y * in.width() + x;
    strength.cells()[i] = (float) Math.sqrt(largest);
    // The eigenvector of the largest eigenvalue, by the half-angle formulas.
    double cos2 = half > 0 ? (xx - yy) / (2 * half) : 1;
    nx[i] = (float) Math.sqrt(Math.max(0, (1 + cos2) / 2));
    ny[i] = (float) Math.copySign(Math.sqrt(Math.max(0, (1 - cos2) / 2)), xy);
  }

  private static boolean isCrest(Raster strength, double nx, double ny, int x, int y) {
    double here = strength.at(x, y);
    return here >= strength.sample(x + 0.5 + nx, y + 0.5 + ny)
        && here > strength.sample(x + 0.5 - nx, y + 0.5 - ny);
  }
}
