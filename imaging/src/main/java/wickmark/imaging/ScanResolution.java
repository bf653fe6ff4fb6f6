package wickmark.imaging;

import java.util.Optional;
import wickmark.imaging.photo.Photo;
import wickmark.imaging.photo.Resolution;

/** Tells a scanner's resolution from what programs write when they do not know. */
final class ScanResolution {
  private static final double LEAST_DPI = 99;
  private static final double MOST_DPI = 4900;

  /** The longest side of a school's scanner, A3, with a margin. */
  private static final double LONGEST_MM = 460;

  private ScanResolution() {}

  /** Returns the resolution if it can be a scan's; 72 and 96 dpi are fillers, cameras have none. */
  static Optional<Resolution> of(Photo photo) {
    return photo
        .resolution()
        .filter(r -> !photo.fromCamera())
        .filter(r -> r.dpiX() >= LEAST_DPI && r.dpiX() <= MOST_DPI)
        .filter(r -> Math.abs(r.dpiX() / r.dpiY() - 1) < 0.01)
        .filter(r -> 25.4 * Math.max(photo.widthPx(), photo.heightPx()) / r.dpiX() < LONGEST_MM);
  }
}
