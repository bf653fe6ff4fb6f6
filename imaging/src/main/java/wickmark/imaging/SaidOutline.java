package wickmark.imaging;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import wickmark.imaging.photo.Photo;
import wickmark.imaging.photo.PhotoArea;
import wickmark.imaging.photo.PhotoPoint;
import wickmark.imaging.strip.StripOutline;

/** The strip's outline by the corners that the person says: its sides are straight. */
final class SaidOutline {
  private static final int PLACES = 24;

  /** A corner is set within this part of the side (about 0.3 mm of 15 cm), and never under 1 px. */
  private static final double CORNER_PART = 0.002;

  /** Score of an outline that is taken for want of any. */
  private static final double UNSEEN = 0.25;

  private SaidOutline() {}

  /**
   * Makes the outline.
   *
   * @param corners four, in any order
   */
  static StripOutline of(List<PhotoPoint> corners) {
    List<PhotoPoint> around = clockwise(corners);
    List<List<PhotoPoint>> sides = new ArrayList<>();
    double longest = 0;
    for (int i = 0; i < 4; i++) {
      PhotoPoint from = around.get(i);
      PhotoPoint to = around.get((i + 1) % 4);
      longest = Math.max(longest, Math.hypot(to.x() - from.x(), to.y() - from.y()));
      List<PhotoPoint> side = new ArrayList<>();
      for (int k = 0; k < PLACES; k++) {
        double t = (k + 0.5) / PLACES;
        side.add(
            new PhotoPoint(from.x() + t * (to.x() - from.x()), from.y() + t * (to.y() - from.y())));
      }
      sides.add(side);
    }
    return new StripOutline(around, sides, Math.max(1, CORNER_PART * longest), 1);
  }

  /** The whole picture: of a strip that fills it no edge is seen. */
  static StripOutline wholePicture(Photo photo) {
    StripOutline all =
        of(
            PhotoArea.between(
                    new PhotoPoint(0, 0), new PhotoPoint(photo.widthPx(), photo.heightPx()))
                .corners());
    return new StripOutline(all.corners(), all.sides(), all.sidesSigmaPx(), UNSEEN);
  }

  private static List<PhotoPoint> clockwise(List<PhotoPoint> corners) {
    double x = corners.stream().mapToDouble(PhotoPoint::x).average().orElse(0);
    double y = corners.stream().mapToDouble(PhotoPoint::y).average().orElse(0);
    return corners.stream()
        .sorted(Comparator.comparingDouble(c -> StrictMath.atan2(c.y() - y, c.x() - x)))
        .toList();
  }
}
