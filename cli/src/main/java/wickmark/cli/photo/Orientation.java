package wickmark.cli.photo;

/**
 * How the stored picture has to be turned to be seen upright: the eight values of the EXIF tag
 * 0x0112 (CIPA DC-008 / JEITA CP-3451, section 4.6.4, "Orientation").
 */
enum Orientation {
  NORMAL(false, false, false),
  MIRRORED(true, false, false),
  TURNED_180(true, true, false),
  UPSIDE_DOWN_MIRRORED(false, true, false),
  TRANSPOSED(false, false, true),
  TURNED_90(true, false, true),
  TRANSVERSED(true, true, true),
  TURNED_270(false, true, true);

  private final boolean flipX;
  private final boolean flipY;
  private final boolean swapped;

  /**
   * Describes the way from stored to upright: first exchange x and y where swapped, then mirror.
   */
  Orientation(boolean flipX, boolean flipY, boolean swapped) {
    this.flipX = flipX;
    this.flipY = flipY;
    this.swapped = swapped;
  }

  /** Returns the orientation of a tag value; anything outside 1 to 8 counts as upright. */
  static Orientation ofTag(int value) {
    return value >= 1 && value <= 8 ? values()[value - 1] : NORMAL;
  }

  boolean swapsAxes() {
    return swapped;
  }

  /** Returns the pixel number, in the upright picture, of the stored picture's first pixel. */
  long start(int storedWidth, int storedHeight) {
    int width = swapped ? storedHeight : storedWidth;
    int height = swapped ? storedWidth : storedHeight;
    return (long) (flipY ? height - 1 : 0) * width + (flipX ? width - 1 : 0);
  }

  /** Returns by how many pixels one moves in the upright picture per stored column. */
  int columnStep(int storedWidth, int storedHeight) {
    if (swapped) {
      return flipY ? -storedHeight : storedHeight;
    }
    return flipX ? -1 : 1;
  }

  /** Returns by how many pixels one moves in the upright picture per stored row. */
  int rowStep(int storedWidth, int storedHeight) {
    if (swapped) {
      return flipX ? -1 : 1;
    }
    return flipY ? -storedWidth : storedWidth;
  }
}
