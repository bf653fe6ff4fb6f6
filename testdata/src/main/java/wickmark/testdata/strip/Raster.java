package wickmark.testdata.strip;

/**
 * The grid on which a strip is painted. It reaches a little beyond the true rectangle, because a
 * hand-cut edge does. Rows run from the strip's lower edge up.
 *
 * @param widthPx columns
 * @param heightPx rows
 * @param pxPerMm fineness
 */
public record Raster(int widthPx, int heightPx, double pxPerMm) {
  /** How far the raster reaches beyond the strip's rectangle on every side, mm. */
  public static final double MARGIN_MM = 6;

  static Raster of(Sheet sheet, double pxPerMm) {
    return new Raster(
        (int) Math.ceil((sheet.widthMm() + 2 * MARGIN_MM) * pxPerMm),
        (int) Math.ceil((sheet.heightMm() + 2 * MARGIN_MM) * pxPerMm),
        pxPerMm);
  }

  int size() {
    return widthPx * heightPx;
  }

  /** Returns the strip's x in mm of a column's middle. */
  double x(int column) {
    return (column + 0.5) / pxPerMm - MARGIN_MM;
  }

  /** Returns the strip's y in mm of a row's middle. */
  double y(int row) {
    return (row + 0.5) / pxPerMm - MARGIN_MM;
  }

  /** Returns the first column whose middle is not left of the place, not below 0. */
  int firstColumn(double xMm) {
    return Math.max(0, (int) Math.ceil((xMm + MARGIN_MM) * pxPerMm - 0.5));
  }

  int lastColumn(double xMm) {
    return Math.min(widthPx - 1, (int) Math.floor((xMm + MARGIN_MM) * pxPerMm - 0.5));
  }

  int firstRow(double yMm) {
    return Math.max(0, (int) Math.ceil((yMm + MARGIN_MM) * pxPerMm - 0.5));
  }

  int lastRow(double yMm) {
    return Math.min(heightPx - 1, (int) Math.floor((yMm + MARGIN_MM) * pxPerMm - 0.5));
  }
}
