package wickmark.imaging.straight;

import wickmark.imaging.photo.Photo;
import wickmark.imaging.photo.PhotoPoint;
import wickmark.imaging.raster.ColourRaster;
import wickmark.imaging.raster.Raster;

/**
 * The strip upright and in true proportions: linear light from 0 to 1 in sRGB primaries.
 *
 * @param frame how raster cells map to the photo
 * @param light the picture
 * @param paper 1 where the cell lies on the paper, 0 beside it
 */
public record StraightStrip(StripFrame frame, ColourRaster light, Raster paper) {
  /** Cells between two places that are mapped exactly; between them the mapping is linear. */
  private static final int GRID = 8;

  /** Steps of linear light that are told apart when encoding: fine enough near black, too. */
  private static final int STEPS = 1 << 14;

  private static final byte[] ENCODED = new byte[STEPS + 1];

  static {
    for (int i = 0; i <= STEPS; i++) {
      double v = i / (double) STEPS;
      // IEC 61966-2-1:1999, encoding of sRGB.
      double e = v <= 0.0031308 ? 12.92 * v : 1.055 * StrictMath.pow(v, 1 / 2.4) - 0.055;
      ENCODED[i] = (byte) Math.round(255 * e);
    }
  }

  /** Resamples the photo, each of its pixels having its share. */
  public static StraightStrip of(Photo photo, StripFrame frame, PaperShape shape) {
    return of(photo, frame, shape, 1);
  }

  /**
   * Resamples the photo more quickly: at every second of its pixels, between which the light is
   * taken linearly, so that none is left out.
   */
  public static StraightStrip quickly(Photo photo, StripFrame frame, PaperShape shape) {
    return of(photo, frame, shape, 2);
  }

  private static StraightStrip of(
      Photo photo, StripFrame frame, PaperShape shape, double pixelsPerTap) {
    int w = frame.width();
    int h = frame.height();
    float[][] out = new float[3][w * h];
    double step = photoStep(frame) / pixelsPerTap;
    int taps = (int) Math.max(1, Math.min(4, Math.round(step)));
    int rows = h * taps;
    int grid = GRID * taps;
    int gw = w / GRID + 2;
    double[][] above = gridRow(frame, 0, gw, grid, taps);
    double[][] below = above;
    float share = 1f / (taps * taps);
    double[] part = new double[grid];
    for (int i = 0; i < grid; i++) {
      part[i] = (i + 0.5) / grid;
    }
    LightSum sum = new LightSum(photo, share);
    for (int row = 0; row < rows; row++) {
      int inside = row % grid;
      if (inside == 0) {
        above = row == 0 ? above : below;
        below = gridRow(frame, row + grid, gw, grid, taps);
      }
      double[] xs = between(above[0], below[0], part[inside]);
      double[] ys = between(above[1], below[1], part[inside]);
      for (int cell = 0; cell < w; cell++) {
        int at = row / taps * w + cell;
        int g = cell / GRID;
        int first = cell % GRID * taps;
        sum.startFrom(out[0][at], out[1][at], out[2][at]);
        for (int i = first; i < first + taps; i++) {
          double fx = part[i];
          sum.add(xs[g] + fx * (xs[g + 1] - xs[g]), ys[g] + fx * (ys[g + 1] - ys[g]));
        }
        out[0][at] = sum.red;
        out[1][at] = sum.green;
        out[2][at] = sum.blue;
      }
    }
    ColourRaster light =
        new ColourRaster(
            new Raster(w, h, out[0]), new Raster(w, h, out[1]), new Raster(w, h, out[2]));
    return new StraightStrip(frame, light, shape.mask(frame));
  }

  /** The picture in 8-bit sRGB, for people to look at. */
  public Photo toPhoto() {
    int n = light.width() * light.height();
    byte[] rgb = new byte[3 * n];
    for (int c = 0; c < 3; c++) {
      float[] cells = light.channel(c).cells();
      for (int i = 0; i < n; i++) {
        rgb[3 * i + c] = ENCODED[Math.round(Math.max(0, Math.min(1, cells[i])) * STEPS)];
      }
    }
    return new Photo(
        light.width(),
        light.height(),
        rgb,
        java.util.Optional.empty(),
        java.util.OptionalDouble.empty(),
        false);
  }

  /** Photo pixels per cell at the middle of the strip. */
  private static double photoStep(StripFrame frame) {
    double x = frame.width() / 2.0;
    double y = frame.height() / 2.0;
    PhotoPoint a = frame.toPhoto(x, y);
    PhotoPoint b = frame.toPhoto(x + 1, y);
    PhotoPoint c = frame.toPhoto(x, y + 1);
    return Math.max(
        Math.hypot(b.x() - a.x(), b.y() - a.y()), Math.hypot(c.x() - a.x(), c.y() - a.y()));
  }

  private static double[][] gridRow(StripFrame frame, int row, int count, int grid, int taps) {
    double[][] places = new double[2][count];
    for (int g = 0; g < count; g++) {
      PhotoPoint p = frame.toPhoto(g * grid / (double) taps, row / (double) taps);
      places[0][g] = p.x();
      places[1][g] = p.y();
    }
    return places;
  }

  private static double[] between(double[] above, double[] below, double share) {
    double[] out = new double[above.length];
    for (int i = 0; i < out.length; i++) {
      out[i] = above[i] + share * (below[i] - above[i]);
    }
    return out;
  }
}
