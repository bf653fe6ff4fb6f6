package wickmark.imaging.straight;

import wickmark.imaging.photo.Photo;
import wickmark.imaging.raster.Raster;

/**
 * Linear light gathered from places of the photo, between its pixels linearly, each with one share.
 */
final class LightSum {
  private static final float[] LINEAR = new float[256];

  static {
    for (int i = 0; i < 256; i++) {
      double v = i / 255.0;
      // IEC 61966-2-1:1999, decoding of sRGB.
      LINEAR[i] = (float) (v <= 0.04045 ? v / 12.92 : StrictMath.pow((v + 0.055) / 1.055, 2.4));
    }
  }

  private final Photo photo;
  private final float share;
  private final double right;
  private final double bottom;
  private final int rowSamples;
  float red;
  float green;
  float blue;

  LightSum(Photo photo, float share) {
    this.photo = photo;
    this.share = share;
    this.right = photo.widthPx() - 1.0;
    this.bottom = photo.heightPx() - 1.0;
    this.rowSamples = 3 * photo.widthPx();
  }

  void startFrom(float r, float g, float b) {
    red = r;
    green = g;
    blue = b;
  }

  /**
   * Adds the light of so many places along a straight piece.
   *
   * @param part how far along it the places are, from 0 to 1
   * @param first index of the first place
   * @param taps how many places
   */
  void add(
      double[] part,
      int first,
      int taps,
      double fromX,
      double alongX,
      double fromY,
      double alongY) {
    float r = red;
    float g = green;
    float b = blue;
    for (int i = first; i < first + taps; i++) {
      double cx = Raster.within(fromX + part[i] * alongX - 0.5, right);
      double cy = Raster.within(fromY + part[i] * alongY - 0.5, bottom);
      int x0 = (int) cx;
      int y0 = (int) cy;
      float fx = (float) (cx - x0);
      float fy = (float) (cy - y0);
      float w00 = share * (1 - fx) * (1 - fy);
      float w10 = share * fx * (1 - fy);
      float w01 = share * (1 - fx) * fy;
      float w11 = share * fx * fy;
      int p00 = photo.firstSample(x0, y0);
      int p10 = x0 < right ? p00 + 3 : p00;
      int p01 = y0 < bottom ? p00 + rowSamples : p00;
      int p11 = p01 + (p10 - p00);
      r +=
          w00 * LINEAR[photo.sample(p00)]
              + w10 * LINEAR[photo.sample(p10)]
              + w01 * LINEAR[photo.sample(p01)]
              + w11 * LINEAR[photo.sample(p11)];
      g +=
          w00 * LINEAR[photo.sample(p00 + 1)]
              + w10 * LINEAR[photo.sample(p10 + 1)]
              + w01 * LINEAR[photo.sample(p01 + 1)]
              + w11 * LINEAR[photo.sample(p11 + 1)];
      b +=
          w00 * LINEAR[photo.sample(p00 + 2)]
              + w10 * LINEAR[photo.sample(p10 + 2)]
              + w01 * LINEAR[photo.sample(p01 + 2)]
              + w11 * LINEAR[photo.sample(p11 + 2)];
    }
    red = r;
    green = g;
    blue = b;
  }
}
