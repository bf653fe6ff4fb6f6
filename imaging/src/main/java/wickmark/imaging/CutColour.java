package wickmark.imaging;

import java.util.Comparator;
import java.util.List;
import wickmark.core.colour.SrgbTransfer;
import wickmark.imaging.photo.Photo;
import wickmark.imaging.photo.PhotoPoint;
import wickmark.imaging.raster.Selection;
import wickmark.imaging.strip.StripOutline;

/**
 * Whether what a sheet has beyond a smaller one, which is the same cut short at one side, has the
 * smaller one's colour. Then the side is a fold or a line across the sheet; otherwise the sheet
 * ends there, and what lies beyond is the desk up to an edge of its own.
 */
final class CutColour {
  /**
   * Difference in chroma (density) that makes another material: light falls off across a sheet and
   * has a shadow's hue, wood has more colour than that.
   */
  private static final double OTHER = 0.08;

  /** Places looked at, along the cut side and away from it. */
  private static final int ALONG = 24;

  private static final int DEEP = 8;

  /** Part of the smaller sheet, from the cut side on, that is compared. */
  private static final double BAND = 0.15;

  /** Next to its sides a sheet is blurred with what lies beside it. */
  private static final double RIM = 0.1;

  private CutColour() {}

  /**
   * Whether it has another colour.
   *
   * @param side of the part at which it is cut short
   */
  static boolean isOther(Photo photo, StripOutline part, int side, StripOutline whole) {
    List<PhotoPoint> corners = part.corners();
    PhotoPoint left = corners.get(side);
    PhotoPoint right = corners.get((side + 1) % 4);
    PhotoPoint rightInside = corners.get((side + 2) % 4);
    PhotoPoint leftInside = corners.get((side + 3) % 4);
    double[] inside =
        density(
            photo, left, right, between(right, rightInside, BAND), between(left, leftInside, BAND));
    double[] beyond = density(photo, left, right, nearest(whole, right), nearest(whole, left));
    double least = Double.POSITIVE_INFINITY;
    double most = Double.NEGATIVE_INFINITY;
    for (int c = 0; c < 3; c++) {
      double difference = beyond[c] - inside[c];
      least = Math.min(least, difference);
      most = Math.max(most, difference);
    }
    return most - least > OTHER;
  }

  private static PhotoPoint between(PhotoPoint from, PhotoPoint to, double part) {
    return new PhotoPoint(
        from.x() + part * (to.x() - from.x()), from.y() + part * (to.y() - from.y()));
  }

  private static PhotoPoint nearest(StripOutline whole, PhotoPoint to) {
    return whole.corners().stream()
        .min(Comparator.comparingDouble(c -> Math.hypot(c.x() - to.x(), c.y() - to.y())))
        .orElseThrow();
  }

  /** The middle density of each channel between four places, one after another. */
  private static double[] density(
      Photo photo, PhotoPoint a, PhotoPoint b, PhotoPoint c, PhotoPoint d) {
    double[][] values = new double[3][ALONG * DEEP];
    int n = 0;
    for (int i = 0; i < ALONG; i++) {
      for (int j = 0; j < DEEP; j++) {
        double along = RIM + (1 - 2 * RIM) * (i + 0.5) / ALONG;
        double deep = RIM + (1 - 2 * RIM) * (j + 0.5) / DEEP;
        PhotoPoint at = between(between(a, b, along), between(d, c, along), deep);
        int x = (int) Math.max(0, Math.min(photo.widthPx() - 1.0, at.x()));
        int y = (int) Math.max(0, Math.min(photo.heightPx() - 1.0, at.y()));
        values[0][n] = density(photo.red(x, y));
        values[1][n] = density(photo.green(x, y));
        values[2][n] = density(photo.blue(x, y));
        n++;
      }
    }
    double[] middle = new double[3];
    for (int channel = 0; channel < 3; channel++) {
      middle[channel] = Selection.median(values[channel], n);
    }
    return middle;
  }

  private static double density(int value) {
    return -Math.log10(SrgbTransfer.decode(Math.max(1, value) / 255.0));
  }
}
