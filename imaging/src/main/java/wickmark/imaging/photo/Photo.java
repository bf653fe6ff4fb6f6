package wickmark.imaging.photo;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * An upright picture in memory: 8-bit sRGB (IEC 61966-2-1), rows from the top, three bytes a pixel
 * in the order red, green, blue. It is never changed after it is made.
 */
public final class Photo {
  private final int widthPx;
  private final int heightPx;
  private final byte[] rgb;
  private final Optional<Resolution> resolution;
  private final OptionalDouble focalLength35mm;
  private final boolean fromCamera;

  /**
   * Takes the pixels without copying them; the caller gives them away.
   *
   * @param rgb 3 · width · height bytes
   * @param resolution what the file says of its resolution
   * @param focalLength35mm the 35-mm-equivalent focal length in millimetres, where the file says it
   * @param fromCamera whether the metadata are those of a camera (exposure, lens, orientation by a
   *     sensor) and not of a scanner
   */
  public Photo(
      int widthPx,
      int heightPx,
      byte[] rgb,
      Optional<Resolution> resolution,
      OptionalDouble focalLength35mm,
      boolean fromCamera) {
    if (widthPx < 1 || heightPx < 1 || rgb.length != 3L * widthPx * heightPx) {
      throw new IllegalArgumentException(
          "a photo of "
              + widthPx
              + " x "
              + heightPx
              + " px needs 3 bytes a pixel, got "
              + rgb.length);
    }
    this.widthPx = widthPx;
    this.heightPx = heightPx;
    this.rgb = rgb;
    this.resolution = resolution;
    this.focalLength35mm = focalLength35mm;
    this.fromCamera = fromCamera;
  }

  public int widthPx() {
    return widthPx;
  }

  public int heightPx() {
    return heightPx;
  }

  public Optional<Resolution> resolution() {
    return resolution;
  }

  /** Returns the 35-mm-equivalent focal length in millimetres (diagonal 43.27 mm), if known. */
  public OptionalDouble focalLength35mm() {
    return focalLength35mm;
  }

  public boolean fromCamera() {
    return fromCamera;
  }

  /**
   * Returns the pixel in column x and row y as red · 65536 + green · 256 + blue: for loops over
   * many pixels.
   */
  public int rgb(int x, int y) {
    int i = 3 * (y * widthPx + x);
    return (rgb[i] & 0xff) << 16 | (rgb[i + 1] & 0xff) << 8 | (rgb[i + 2] & 0xff);
  }

  /** Returns where, among all samples, those of the pixel in column x and row y begin. */
  public int firstSample(int x, int y) {
    return 3 * (y * widthPx + x);
  }

  /**
   * Returns a sample, 0 to 255: for loops over places between pixels.
   *
   * @param index {@link #firstSample} for red, one more for green, two more for blue
   */
  public int sample(int index) {
    return rgb[index] & 0xff;
  }

  /**
   * Adds a row's pixels to sums over so many neighbours each.
   *
   * @param x the column of the first pixel
   * @param y the row
   * @param factor how many pixels go into a sum
   * @param red sums of red, at most (width − x) / factor of them
   * @param green as many sums of green
   * @param blue as many sums of blue
   */
  public void addRow(int x, int y, int factor, int[] red, int[] green, int[] blue) {
    if (factor == 2) {
      addPairs(x, y, red, green, blue);
      return;
    }
    int i = 3 * (y * widthPx + x);
    for (int k = 0; k < red.length; k++) {
      int r = 0;
      int g = 0;
      int b = 0;
      for (int to = i + 3 * factor; i < to; i += 3) {
        r += rgb[i] & 0xff;
        g += rgb[i + 1] & 0xff;
        b += rgb[i + 2] & 0xff;
      }
      red[k] += r;
      green[k] += g;
      blue[k] += b;
    }
  }

  /** The same for green alone. */
  public void addGreenOfRow(int x, int y, int factor, int[] green) {
    int i = firstSample(x, y) + 1;
    for (int k = 0; k < green.length; k++) {
      int g = 0;
      for (int to = i + 3 * factor; i < to; i += 3) {
        g += rgb[i] & 0xff;
      }
      green[k] += g;
    }
  }

  /** Rows of two pixels a sum: so short a loop costs more than what is done in it. */
  private void addPairs(int x, int y, int[] red, int[] green, int[] blue) {
    int from = 3 * (y * widthPx + x);
    for (int k = 0; k < red.length; k++) {
      int i = from + 6 * k;
      red[k] += (rgb[i] & 0xff) + (rgb[i + 3] & 0xff);
      green[k] += (rgb[i + 1] & 0xff) + (rgb[i + 4] & 0xff);
      blue[k] += (rgb[i + 2] & 0xff) + (rgb[i + 5] & 0xff);
    }
  }

  /** Returns red, 0 to 255, of the pixel in column x and row y, both counted from 0. */
  public int red(int x, int y) {
    return rgb[3 * (y * widthPx + x)] & 0xff;
  }

  /** Returns green, 0 to 255, of the pixel in column x and row y, both counted from 0. */
  public int green(int x, int y) {
    return rgb[3 * (y * widthPx + x) + 1] & 0xff;
  }

  /** Returns blue, 0 to 255, of the pixel in column x and row y, both counted from 0. */
  public int blue(int x, int y) {
    return rgb[3 * (y * widthPx + x) + 2] & 0xff;
  }
}
