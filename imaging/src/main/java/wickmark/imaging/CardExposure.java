package wickmark.imaging;

import java.util.ArrayList;
import java.util.List;
import wickmark.core.card.Box;
import wickmark.core.card.CardLayout;
import wickmark.core.colour.SrgbTransfer;
import wickmark.imaging.card.CardView;
import wickmark.imaging.finding.Doubt;
import wickmark.imaging.photo.Photo;
import wickmark.imaging.photo.PhotoPoint;
import wickmark.imaging.raster.Selection;

/**
 * Whether the picture is well exposed, by the card's white and black patch. Their shares of light
 * are not known well enough to set the spots' colours by (toner and paper differ), and the strip's
 * own paper beside each spot is the better white: it lies in the same light.
 */
final class CardExposure {
  /** Values from which a sensor's channel may be at its end. */
  private static final int CLIPPED = 253;

  /** Share of white pixels at their end from which the picture is too bright. */
  private static final double TOO_BRIGHT = 0.3;

  /** White paper with less light than this leaves dark spots to the noise. */
  private static final double TOO_DARK = 0.10;

  /** White sends back this much more light than black, at least; else the patch is covered. */
  private static final double LEAST_CONTRAST = 2.5;

  /** Places looked at along each side of a patch. */
  private static final int PLACES = 15;

  private CardExposure() {}

  static List<Doubt> doubts(Photo photo, CardView card) {
    List<CardLayout.Patch> patches = card.layout().patches();
    List<int[]> white = values(photo, card, patches.get(0).box());
    List<int[]> black = values(photo, card, patches.get(patches.size() - 1).box());
    if (white.isEmpty() || black.isEmpty()) {
      return List.of();
    }
    double light = light(white);
    if (light < LEAST_CONTRAST * light(black)) {
      return List.of();
    }
    long ended =
        white.stream().filter(v -> Math.max(v[0], Math.max(v[1], v[2])) >= CLIPPED).count();
    if (ended > TOO_BRIGHT * white.size()) {
      return List.of(
          new Doubt(
              "over-exposed",
              "The card's white is at the end of what the camera can show: faint spots and colours"
                  + " may be lost. Take the picture again, a little darker."));
    }
    if (light < TOO_DARK) {
      return List.of(
          new Doubt(
              "under-exposed",
              "The picture is dark: the card's white has "
                  + Math.round(100 * light)
                  + " % of full light. Faint spots may be lost. Take the picture in more light."));
    }
    return List.of();
  }

  private static double light(List<int[]> values) {
    double[] green = values.stream().mapToDouble(v -> SrgbTransfer.decode(v[1] / 255.0)).toArray();
    return Selection.median(green, green.length);
  }

  /** Red, green and blue in the middle of a patch; places beyond the picture are left out. */
  private static List<int[]> values(Photo photo, CardView card, Box patch) {
    List<int[]> values = new ArrayList<>();
    for (int i = 0; i < PLACES; i++) {
      for (int j = 0; j < PLACES; j++) {
        double u = 0.25 + 0.5 * i / (PLACES - 1);
        double v = 0.25 + 0.5 * j / (PLACES - 1);
        PhotoPoint at =
            card.toPhoto(patch.left() + u * patch.width(), patch.top() + v * patch.height());
        int x = (int) Math.floor(at.x());
        int y = (int) Math.floor(at.y());
        if (x >= 0 && y >= 0 && x < photo.widthPx() && y < photo.heightPx()) {
          values.add(new int[] {photo.red(x, y), photo.green(x, y), photo.blue(x, y)});
        }
      }
    }
    return values;
  }
}
