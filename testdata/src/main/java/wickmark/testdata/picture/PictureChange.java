package wickmark.testdata.picture;

/** What happens to a picture between the camera and the program, and must not matter. */
public enum PictureChange {
  TURNED_RIGHT,
  UPSIDE_DOWN,
  TURNED_LEFT,
  /** 70 % of its size. */
  SMALLER,
  /** 130 % of its size. */
  LARGER,
  /** Half a stop less light. */
  DARKER,
  /** Half a stop more light; what was bright is cut off. */
  BRIGHTER,
  /** Saved again as a JPEG of quality 80. */
  SAVED_AGAIN;

  /** Returns the changed picture. */
  public Picture of(Picture picture) {
    return switch (this) {
      case TURNED_RIGHT -> picture.turned(1);
      case UPSIDE_DOWN -> picture.turned(2);
      case TURNED_LEFT -> picture.turned(3);
      case SMALLER, LARGER -> PictureChanges.scaled(picture, size());
      case DARKER -> PictureChanges.brighter(picture, -0.5);
      case BRIGHTER -> PictureChanges.brighter(picture, 0.5);
      case SAVED_AGAIN -> PictureChanges.savedAgain(picture, 80);
    };
  }

  /** The new size over the old. */
  public double size() {
    return this == SMALLER ? 0.7 : this == LARGER ? 1.3 : 1;
  }
}
