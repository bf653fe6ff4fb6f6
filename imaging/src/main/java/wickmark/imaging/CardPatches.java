package wickmark.imaging;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wickmark.core.card.Box;
import wickmark.core.card.CardLayout;
import wickmark.core.colour.LinearRgb;
import wickmark.imaging.card.CardView;
import wickmark.imaging.photo.Photo;
import wickmark.imaging.photo.PhotoPoint;

/** What is seen of the card's white, grey and black patches. */
final class CardPatches {
  /** White sends back this much more light than black, at least; else the patches are covered. */
  private static final double LEAST_CONTRAST = 2.5;

  /** Places looked at along each side of a patch. */
  private static final int PLACES = 15;

  private final Photo photo;
  private final CardView card;

  CardPatches(Photo photo, CardView card) {
    this.photo = photo;
    this.card = card;
  }

  /** The light of the white patch; empty where it, or the black one, is covered or not seen. */
  Optional<LinearRgb> white() {
    List<CardLayout.Patch> patches = card.layout().patches();
    Optional<LinearRgb> white = light(patches.get(0));
    Optional<LinearRgb> black = light(patches.get(patches.size() - 1));
    return white.filter(
        w ->
            black.isPresent()
                && w.red() > 0
                && w.blue() > 0
                && w.green() >= LEAST_CONTRAST * black.get().green());
  }

  /** The median light in the middle of a patch; empty if that is out of the picture. */
  Optional<LinearRgb> light(CardLayout.Patch patch) {
    return MedianLight.of(photo, places(patch));
  }

  /** Red, green and blue in the middle of a patch; places beyond the picture are left out. */
  List<int[]> values(CardLayout.Patch patch) {
    return places(patch).stream()
        .filter(place -> MedianLight.isWithin(photo, place))
        .map(place -> photo.firstSample((int) place.x(), (int) place.y()))
        .map(at -> new int[] {photo.sample(at), photo.sample(at + 1), photo.sample(at + 2)})
        .toList();
  }

  private List<PhotoPoint> places(CardLayout.Patch patch) {
    Box box = patch.box();
    List<PhotoPoint> places = new ArrayList<>();
    for (int i = 0; i < PLACES; i++) {
      for (int j = 0; j < PLACES; j++) {
        double u = 0.25 + 0.5 * i / (PLACES - 1);
        double v = 0.25 + 0.5 * j / (PLACES - 1);
        places.add(card.toPhoto(box.left() + u * box.width(), box.top() + v * box.height()));
      }
    }
    return places;
  }
}
