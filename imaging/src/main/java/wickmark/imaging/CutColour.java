package wickmark.imaging;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import wickmark.core.colour.LinearRgb;
import wickmark.imaging.photo.Photo;
import wickmark.imaging.photo.PhotoPoint;
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

  /** Linear light of the value 1 of 255, below which nothing is told. */
  private static final double DARKEST = 1 / (255 * 12.92);

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
    Optional<LinearRgb> inside =
        MedianLight.of(
            photo,
            places(
                left, right, between(right, rightInside, BAND), between(left, leftInside, BAND)));
    Optional<LinearRgb> beyond =
        MedianLight.of(photo, places(left, right, nearest(whole, right), nearest(whole, left)));
    return inside.isPresent() && beyond.isPresent() && chroma(beyond.get(), inside.get()) > OTHER;
  }

  /** How far the densities of one light over another lie apart, channel by channel. */
  private static double chroma(LinearRgb light, LinearRgb white) {
    double red = density(light.red(), white.red());
    double green = density(light.green(), white.green());
    double blue = density(light.blue(), white.blue());
    return Math.max(red, Math.max(green, blue)) - Math.min(red, Math.min(green, blue));
  }

  private static double density(double light, double white) {
    return Math.log10(Math.max(DARKEST, white) / Math.max(DARKEST, light));
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

  /** Places all over the figure between four corners, one after another. */
  private static List<PhotoPoint> places(PhotoPoint a, PhotoPoint b, PhotoPoint c, PhotoPoint d) {
    List<PhotoPoint> places = new ArrayList<>();
    for (int i = 0; i < ALONG; i++) {
      double along = RIM + (1 - 2 * RIM) * (i + 0.5) / ALONG;
      for (int j = 0; j < DEEP; j++) {
        double deep = RIM + (1 - 2 * RIM) * (j + 0.5) / DEEP;
        places.add(between(between(a, b, along), between(d, c, along), deep));
      }
    }
    return places;
  }
}
