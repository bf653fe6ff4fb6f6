package wickmark.cli.photo;

/** Puts rows of a stored picture, three bytes a pixel, where they belong in the upright one. */
final class UprightRows {
  /** Rows that are best put at a time: a line of the processor's cache holds 21 pixels. */
  static final int AT_A_TIME = 32;

  private final byte[] upright;
  private final int width;
  private final long start;
  private final int columnStep;
  private final int rowStep;

  UprightRows(int width, int height, Orientation orientation, byte[] upright) {
    this.upright = upright;
    this.width = width;
    this.start = orientation.start(width, height);
    this.columnStep = 3 * orientation.columnStep(width, height);
    this.rowStep = 3 * orientation.rowStep(width, height);
  }

  /** Puts so many rows from a first one on. */
  void put(int top, byte[][] rows, int count) {
    int first = (int) (3 * start + (long) top * rowStep);
    if (columnStep == 3) {
      for (int j = 0; j < count; j++, first += rowStep) {
        System.arraycopy(rows[j], 0, upright, first, 3 * width);
      }
      return;
    }
    byte[] out = upright;
    // All rows of a column together: where they become columns, these pixels are neighbours.
    for (int i = 0; i < 3 * width; i += 3, first += columnStep) {
      int to = first;
      for (int j = 0; j < count; j++, to += rowStep) {
        byte[] row = rows[j];
        out[to] = row[i];
        out[to + 1] = row[i + 1];
        out[to + 2] = row[i + 2];
      }
    }
  }
}
