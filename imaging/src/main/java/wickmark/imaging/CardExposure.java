package wickmark.imaging;

import java.util.List;
import java.util.Optional;
import wickmark.core.colour.LinearRgb;
import wickmark.imaging.card.CardView;
import wickmark.imaging.finding.Doubt;
import wickmark.imaging.photo.Photo;

/** Whether the picture is well exposed, and in white enough light, by the card's white patch. */
final class CardExposure {
  /** Values from which a sensor's channel may be at its end. */
  private static final int CLIPPED = 253;

  /** Share of white pixels at their end from which the picture is too bright. */
  private static final double TOO_BRIGHT = 0.3;

  /** White paper with less light than this leaves dark spots to the noise. */
  private static final double TOO_DARK = 0.10;

  private CardExposure() {}

  static List<Doubt> doubts(Photo photo, CardView card) {
    CardPatches patches = new CardPatches(photo, card);
    Optional<LinearRgb> white = patches.white();
    if (white.isEmpty()) {
      return List.of();
    }
    List<int[]> values = patches.values(card.layout().patches().get(0));
    long ended =
        values.stream().filter(v -> Math.max(v[0], Math.max(v[1], v[2])) >= CLIPPED).count();
    if (ended > TOO_BRIGHT * values.size()) {
      return List.of(
          new Doubt(
              "over-exposed",
              "The card's white is at the end of what the camera can show: faint spots and colours"
                  + " may be lost. Take the picture again, a little darker."));
    }
    LinearRgb light = white.get();
    if (light.green() < TOO_DARK) {
      return List.of(
          new Doubt(
              "under-exposed",
              "The picture is dark: the card's white has "
                  + percent(light.green())
                  + " of full light. Faint spots may be lost. Take the picture in more light."));
    }
    if (Math.min(light.red(), light.blue()) < TOO_DARK) {
      boolean blue = light.blue() < light.red();
      return List.of(
          new Doubt(
              "coloured-light",
              "The light is strongly coloured: of full "
                  + (blue ? "blue" : "red")
                  + " light the card's white has "
                  + percent(blue ? light.blue() : light.red())
                  + ". Faint "
                  + (blue ? "yellow" : "blue")
                  + " spots may be lost. Take the picture in daylight or under a white lamp."));
    }
    return List.of();
  }

  private static String percent(double share) {
    return Math.round(100 * share) + " %";
  }
}
