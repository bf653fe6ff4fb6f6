package wickmark.imaging;

import java.util.List;
import java.util.Optional;
import wickmark.core.colour.LinearRgb;
import wickmark.core.colour.SrgbTransfer;
import wickmark.imaging.photo.Photo;
import wickmark.imaging.photo.PhotoPoint;
import wickmark.imaging.raster.Selection;

/** The light that most of some places of a photo have: what is written on them does not count. */
final class MedianLight {
  private MedianLight() {}

  /** Channel by channel, of the places within the picture; empty if there is none. */
  static Optional<LinearRgb> of(Photo photo, List<PhotoPoint> places) {
    List<PhotoPoint> seen = places.stream().filter(p -> isWithin(photo, p)).toList();
    return seen.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new LinearRgb(median(photo, seen, 0), median(photo, seen, 1), median(photo, seen, 2)));
  }

  /** Whether a place lies within the picture. */
  static boolean isWithin(Photo photo, PhotoPoint place) {
    return place.x() >= 0
        && place.y() >= 0
        && place.x() < photo.widthPx()
        && place.y() < photo.heightPx();
  }

  private static double median(Photo photo, List<PhotoPoint> places, int channel) {
    double[] light =
        places.stream()
            .mapToInt(p -> photo.firstSample((int) p.x(), (int) p.y()) + channel)
            .mapToDouble(sample -> SrgbTransfer.decode(photo.sample(sample) / 255.0))
            .toArray();
    return Selection.median(light, light.length);
  }
}
