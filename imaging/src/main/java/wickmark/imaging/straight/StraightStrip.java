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

  private static final float[] LINEAR = new float[256];

  /** Steps of linear light that are told apart when encoding: fine enough near black, too. */
  private static final int STEPS = 1 << 14;

  private static final byte[] ENCODED = new byte[STEPS + 1];

  static {
    for (int i = 0; i < 256; i++) {
      double v = i / 255.0;
      // IEC 61966-2-1:1999, decoding of sRGB.
      LINEAR[i] = (float) (v <= 0.04045 ? v / 12.92 : StrictMath.pow((v + 0.055) / 1.055, 2.4));
    }
    for (int i = 0; i <= STEPS; i++) {
      double v = i / (double) STEPS;
      double e = v <= 0.0031308 ? 12.92 * v : 1.055 * StrictMath.pow(v, 1 / 2.4) - 0.055;
      ENCODED[i] = (byte) Math.round(255 * e);
    }
  }

  /** Resamples the photo. */
  public static StraightStrip of(Photo photo, StripFrame frame, PaperShape shape) {
    int w = frame.width();
    int h = frame.height();
    float[][] out = new float[3][w * h];
    double step = photoStep(frame);
    int taps = (int) Math.max(1, Math.min(4, Math.round(step)));
    int columns = w * taps;
    int rows = h * taps;
    int grid = GRID * taps;
    int gw = columns / grid + 2;
    double[][] above = gridRow(frame, 0, gw, grid, taps);
    double[][] below = above;
    float share = 1f / (taps * taps);
    for (int row = 0; row < rows; row++) {
      int inside = row % grid;
      if (inside == 0) {
        above = row == 0 ? above : below;
        below = gridRow(frame, row + grid, gw, grid, taps);
      }
      double fy = (inside + 0.5) / grid;
      double[] xs = between(above[0], below[0], fy);
      double[] ys = between(above[1], below[1], fy);
      for (int column = 0; column < columns; column++) {
        int g = column / grid;
        double fx = (column % grid + 0.5) / grid;
        double x = xs[g] + fx * (xs[g + 1] - xs[g]);
        double y = ys[g] + fx * (ys[g + 1] - ys[g]);
        add(photo, x, y, share, out, row / taps * w + column / taps);
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

  private static void add(Photo photo, double x, double y, float share, float[][] out, int at) {
    double cx = Math.min(Math.max(x - 0.5, 0), photo.widthPx() - 1.0);
    double cy = Math.min(Math.max(y - 0.5, 0), photo.heightPx() - 1.0);
    int x0 = (int) cx;
    int y0 = (int) cy;
    int x1 = Math.min(x0 + 1, photo.widthPx() - 1);
    int y1 = Math.min(y0 + 1, photo.heightPx() - 1);
    float fx = (float) (cx - x0);
    float fy = (float) (cy - y0);
    float w00 = share * (1 - fx) * (1 - fy);
    float w10 = share * fx * (1 - fy);
    float w01 = share * (1 - fx) * fy;
    float w11 = share * fx * fy;
    out[0][at] +=
        w00 * LINEAR[photo.red(x0, y0)]
            + w10 * LINEAR[photo.red(x1, y0)]
            + w01 * LINEAR[photo.red(x0, y1)]
            + w11 * LINEAR[photo.red(x1, y1)];
    out[1][at] +=
        w00 * LINEAR[photo.green(x0, y0)]
            + w10 * LINEAR[photo.green(x1, y0)]
            + w01 * LINEAR[photo.green(x0, y1)]
            + w11 * LINEAR[photo.green(x1, y1)];
    out[2][at] +=
        w00 * LINEAR[photo.blue(x0, y0)]
            + w10 * LINEAR[photo.blue(x1, y0)]
            + w01 * LINEAR[photo.blue(x0, y1)]
            + w11 * LINEAR[photo.blue(x1, y1)];
  }
}
