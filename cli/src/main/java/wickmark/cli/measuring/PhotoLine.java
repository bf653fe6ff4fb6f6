package wickmark.cli.measuring;

import wickmark.imaging.photo.PhotoPoint;

/** A straight line in the picture, by two points of it. */
public record PhotoLine(PhotoPoint from, PhotoPoint to) {
  public PhotoLine {
    if (from.equals(to)) {
      throw new IllegalArgumentException("a line needs two different points");
    }
  }
}
