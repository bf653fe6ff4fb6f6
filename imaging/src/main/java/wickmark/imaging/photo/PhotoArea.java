package wickmark.imaging.photo;

import java.util.List;

/** An upright rectangle of the photo, in pixels. */
public record PhotoArea(double left, double top, double right, double bottom) {
  public PhotoArea {
    if (!(left <= right && top <= bottom)) {
      throw new IllegalArgumentException(
          "an area runs from its left to its right and from its top to its bottom");
    }
  }

  /** The area between two opposite corners, whichever they are. */
  public static PhotoArea between(PhotoPoint one, PhotoPoint other) {
    return new PhotoArea(
        Math.min(one.x(), other.x()),
        Math.min(one.y(), other.y()),
        Math.max(one.x(), other.x()),
        Math.max(one.y(), other.y()));
  }

  public boolean contains(double x, double y) {
    return x >= left && x <= right && y >= top && y <= bottom;
  }

  /** Its four corners, clockwise on the screen from the top-left one. */
  public List<PhotoPoint> corners() {
    return List.of(
        new PhotoPoint(left, top),
        new PhotoPoint(right, top),
        new PhotoPoint(right, bottom),
        new PhotoPoint(left, bottom));
  }
}
