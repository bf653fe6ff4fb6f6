package wickmark.imaging.paper;

import wickmark.imaging.raster.Raster;

/**
 * Which channels show blank paper as white as a picture can be. Density there is cut short by an
 * amount that the picture does not tell: a channel at its end is silent on what is pale.
 *
 * @param width cells
 * @param height cells
 * @param bits for each cell, row by row: 1 red, 2 green, 4 blue
 */
public record WhiteChannels(int width, int height, byte[] bits) {
  /** Log light of blank paper from which a channel is at its end: 253 of 255 (IEC 61966-2-1). */
  private static final float END = -0.008f;

  private static final int ALL = 7;

  /** For paper of which no channel is at its end. */
  static WhiteChannels none(int width, int height) {
    return new WhiteChannels(width, height, new byte[width * height]);
  }

  /**
   * Finds them.
   *
   * @param paperLight log light of the blank paper: red, green and blue
   */
  static WhiteChannels of(Raster[] paperLight) {
    WhiteChannels white = none(paperLight[0].width(), paperLight[0].height());
    for (int c = 0; c < 3; c++) {
      float[] light = paperLight[c].cells();
      for (int i = 0; i < light.length; i++) {
        white.bits[i] |= light[i] >= END ? (byte) (1 << c) : 0;
      }
    }
    return white;
  }

  /** Whether all channels of the light are at their end in a cell. */
  static boolean isAtEnd(Raster[] light, int i) {
    return light[0].cells()[i] >= END && light[1].cells()[i] >= END && light[2].cells()[i] >= END;
  }

  /** Whether no channel has anything to tell of what is pale in a cell. */
  public boolean all(int x, int y) {
    return bits[y * width + x] == ALL;
  }

  /**
   * The least of the densities of the channels that are not at their end, of all where all are.
   *
   * @param i number of the cell, row by row
   */
  float least(Raster[] density, int i) {
    int silent = bits[i] == ALL ? 0 : bits[i];
    float least = Float.POSITIVE_INFINITY;
    for (int c = 0; c < 3; c++) {
      float here = density[c].cells()[i];
      least = (silent & 1 << c) == 0 && here < least ? here : least;
    }
    return least;
  }

  /** The same turned a quarter clockwise. */
  WhiteChannels turned() {
    WhiteChannels turned = none(/* width= */ height, /* height= */ width);
    for (int y = 0; y < height; y++) {
      for (int x = 0; x < width; x++) {
        turned.bits[x * height + height - 1 - y] = bits[y * width + x];
      }
    }
    return turned;
  }
}
