package wickmark.imaging.straight;

import java.util.List;
import java.util.stream.IntStream;
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
    int taps = (int) Math.max(1, Math.min(4, Math.round(photoStep(frame) / pixelsPerTap)));
    int bands = (h + GRID - 1) / GRID;
    List<double[][]> grid =
        IntStream.rangeClosed(0, bands)
            .parallel()
            .mapToObj(band -> gridRow(frame, band * GRID, w / GRID + 2))
            .toList();
    ColourRaster light = new ColourRaster(new Raster(w, h), new Raster(w, h), new Raster(w, h));
    IntStream.range(0, bands)
        .parallel()
        .forEach(band -> fill(light, band * GRID, grid.get(band), grid.get(band + 1), photo, taps));
    return new StraightStrip(frame, light, shape.mask(frame));
  }

  /**
   * Fills in the rows between two rows of exactly mapped places.
   *
   * @param top the first of them
   * @param taps places of the photo in a cell, across and down
   */
  private static void fill(
      ColourRaster light, int top, double[][] above, double[][] below, Photo photo, int taps) {
    int w = light.width();
    int places = GRID * taps;
    double[] part = new double[places];
    for (int i = 0; i < places; i++) {
      part[i] = (i + 0.5) / places;
    }
    LightSum sum = new LightSum(photo, 1f / (taps * taps));
    for (int row = 0; row < Math.min(GRID, light.height() - top) * taps; row++) {
      double[] xs = between(above[0], below[0], part[row]);
      double[] ys = between(above[1], below[1], part[row]);
      for (int cell = 0; cell < w; cell++) {
        int at = (top + row / taps) * w + cell;
        int g = cell / GRID;
        int first = cell % GRID * taps;
        sum.startFrom(light.red().cells()[at], light.green().cells()[at], light.blue().cells()[at]);
        sum.add(part, first, taps, xs[g], xs[g + 1] - xs[g], ys[g], ys[g + 1] - ys[g]);
        light.red().cells()[at] = sum.red;
        light.green().cells()[at] = sum.green;
        light.blue().cells()[at] = sum.blue;
      }
    }
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

  private static double[][] gridRow(StripFrame frame, int row, int count) {
    double[][] places = new double[2][count];
    for (int g = 0; g < count; g++) {
      PhotoPoint p = frame.toPhoto(g * GRID, row);
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
