package wickmark.cli.measuring;

/**
 * The strip upright and true to scale, with its place in strip coordinates (x right along the
 * baseline, y up from it; millimetres, or units of the strip's height where there is no scale).
 */
public final class StraightPicture {
  private final int widthPx;
  private final int heightPx;
  private final byte[] rgb;
  private final double left;
  private final double top;
  private final double pixelsPerUnit;

  /**
   * Takes the pixels without copying them.
   *
   * @param rgb 3 · width · height bytes, sRGB, rows from the top
   * @param left strip coordinate x of the picture's left edge
   * @param top strip coordinate y of the picture's upper edge
   * @param pixelsPerUnit pixels a millimetre, or a strip's height
   */
  public StraightPicture(
      int widthPx, int heightPx, byte[] rgb, double left, double top, double pixelsPerUnit) {
    if (rgb.length != 3L * widthPx * heightPx || !(pixelsPerUnit > 0)) {
      throw new IllegalArgumentException(
          "a picture of " + widthPx + " x " + heightPx + " px got " + rgb.length + " bytes");
    }
    this.widthPx = widthPx;
    this.heightPx = heightPx;
    this.rgb = rgb;
    this.left = left;
    this.top = top;
    this.pixelsPerUnit = pixelsPerUnit;
  }

  public int widthPx() {
    return widthPx;
  }

  public int heightPx() {
    return heightPx;
  }

  /** Returns the colour of a pixel as 0xRRGGBB. */
  public int rgb(int x, int y) {
    int at = 3 * (y * widthPx + x);
    return (rgb[at] & 0xff) << 16 | (rgb[at + 1] & 0xff) << 8 | (rgb[at + 2] & 0xff);
  }

  /** Returns the pixel column, from the outer edge of the first, of a strip coordinate x. */
  public double column(double x) {
    return (x - left) * pixelsPerUnit;
  }

  /** Returns the pixel row, from the outer edge of the first, of a strip coordinate y. */
  public double row(double y) {
    return (top - y) * pixelsPerUnit;
  }

  public double pixelsPerUnit() {
    return pixelsPerUnit;
  }
}
