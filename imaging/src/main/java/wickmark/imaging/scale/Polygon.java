package wickmark.imaging.scale;

import java.util.List;
import wickmark.imaging.photo.PhotoPoint;

/** The even-odd rule. */
final class Polygon {
  private Polygon() {}

  static boolean holds(List<PhotoPoint> corners, PhotoPoint p) {
    boolean inside = false;
    for (int i = 0, j = corners.size() - 1; i < corners.size(); j = i++) {
      PhotoPoint a = corners.get(i);
      PhotoPoint b = corners.get(j);
      if (a.y() > p.y() != b.y() > p.y()
          && p.x() < (b.x() - a.x()) * (p.y() - a.y()) / (b.y() - a.y()) + a.x()) {
        inside = !inside;
      }
    }
    return inside;
  }
}
