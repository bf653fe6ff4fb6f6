package wickmark.cli.measuring;

import java.util.List;
import java.util.Optional;
import wickmark.imaging.photo.PhotoPoint;

/**
 * What the person says about places in the picture, in pixels of the upright picture.
 *
 * @param corners the strip's four corners in order round the strip, or none
 * @param ignored areas by two opposite corners each
 */
public record SaidPlaces(
    Optional<BottomEnd> bottom,
    List<PhotoPoint> corners,
    Optional<PhotoLine> baseline,
    Optional<PhotoLine> front,
    List<PhotoLine> ignored) {
  public SaidPlaces {
    corners = List.copyOf(corners);
    ignored = List.copyOf(ignored);
    if (!corners.isEmpty() && corners.size() != 4) {
      throw new IllegalArgumentException("a strip has four corners, not " + corners.size());
    }
  }

  /** Returns whether anything is said that holds for one picture only. */
  public boolean isEmpty() {
    return bottom.isEmpty()
        && corners.isEmpty()
        && baseline.isEmpty()
        && front.isEmpty()
        && ignored.isEmpty();
  }
}
