package wickmark.testdata.picture;

import java.awt.image.BufferedImage;

/** A picture in memory: 8-bit sRGB, rows from the top, never changed after it is made. */
public final class Picture {
  private final int widthPx;
  private final int heightPx;
  private final byte[] rgb;

  /**
   * Takes the pixels without copying them; the caller gives them away.
   *
   * @param rgb 3 · width · height bytes: red, green, blue of pixel after pixel
   */
  public Picture(int widthPx, int heightPx, byte[] rgb) {
    if (rgb.length != 3 * widthPx * heightPx) {
      throw new IllegalArgumentException(
          "a picture of "
              + widthPx
              + " x "
              + heightPx
              + " px needs 3 bytes a pixel, got "
              + rgb.length);
    }
    this.widthPx = widthPx;
    this.heightPx = heightPx;
    this.rgb = rgb;
  }

  public int widthPx() {
    return widthPx;
  }

  public int heightPx() {
    return heightPx;
  }

  /** Returns a copy of the pixels: red, green, blue of pixel after pixel. */
  public byte[] rgb() {
    return rgb.clone();
  }

  /** Returns one channel (0 red, 1 green, 2 blue) of a pixel, 0 to 255. */
  public int value(int x, int y, int channel) {
    return rgb[3 * (y * widthPx + x) + channel] & 0xff;
  }

  /** Returns the same as a {@link BufferedImage} of type {@code TYPE_3BYTE_BGR}. */
  public BufferedImage toImage() {
    BufferedImage image = new BufferedImage(widthPx, heightPx, BufferedImage.TYPE_3BYTE_BGR);
    // A raster takes its samples in the order of its bands, red first, whatever the storage.
    image.getRaster().setDataElements(0, 0, widthPx, heightPx, rgb);
    return image;
  }

  /** Returns the picture of a {@link BufferedImage}. */
  public static Picture of(BufferedImage image) {
    int width = image.getWidth();
    int height = image.getHeight();
    int[] argb = image.getRGB(0, 0, width, height, null, 0, width);
    byte[] rgb = new byte[3 * argb.length];
    for (int i = 0; i < argb.length; i++) {
      rgb[3 * i] = (byte) (argb[i] >> 16);
      rgb[3 * i + 1] = (byte) (argb[i] >> 8);
      rgb[3 * i + 2] = (byte) argb[i];
    }
    return new Picture(width, height, rgb);
  }

  /** Returns the picture turned clockwise by so many quarters. */
  public Picture turned(int quarters) {
    Picture turned = this;
    for (int i = 0; i < Math.floorMod(quarters, 4); i++) {
      turned = turned.turnedOnce();
    }
    return turned;
  }

  private Picture turnedOnce() {
    byte[] to = new byte[rgb.length];
    for (int y = 0; y < heightPx; y++) {
      for (int x = 0; x < widthPx; x++) {
        int target = 3 * (x * heightPx + heightPx - 1 - y);
        System.arraycopy(rgb, 3 * (y * widthPx + x), to, target, 3);
      }
    }
    return new Picture(/* widthPx= */ heightPx, /* heightPx= */ widthPx, to);
  }

  /** Returns the picture mirrored left to right. */
  public Picture mirrored() {
    byte[] to = new byte[rgb.length];
    for (int y = 0; y < heightPx; y++) {
      for (int x = 0; x < widthPx; x++) {
        System.arraycopy(rgb, 3 * (y * widthPx + x), to, 3 * (y * widthPx + widthPx - 1 - x), 3);
      }
    }
    return new Picture(widthPx, heightPx, to);
  }
}
