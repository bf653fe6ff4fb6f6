package wickmark.cli.photo;

import java.awt.Point;
import java.awt.image.DataBuffer;
import java.awt.image.DataBufferByte;
import java.awt.image.PixelInterleavedSampleModel;
import java.awt.image.Raster;
import java.awt.image.WritableRaster;

/**
 * What a decoder writes the rows of a picture of three colours into: each pixel goes straight to
 * its place in the upright picture, so that a turned photo is never in memory twice. It can be
 * written to only.
 */
final class UprightRaster extends WritableRaster {
  private final byte[] upright;
  private final UprightRows rows;

  /** Rows that are not in the upright picture yet, and the first one's number. */
  private final byte[][] waiting;

  private int first;
  private int count;

  private UprightRaster(int width, int height, byte[] upright, Orientation orientation) {
    super(
        new PixelInterleavedSampleModel(
            DataBuffer.TYPE_BYTE, width, height, 3, 3 * width, new int[] {0, 1, 2}),
        new DataBufferByte(upright, upright.length),
        new Point());
    this.upright = upright;
    this.rows = new UprightRows(width, height, orientation, upright);
    this.waiting = new byte[UprightRows.AT_A_TIME][3 * width];
  }

  /** A raster of a stored size, for a picture that is to be turned. */
  static UprightRaster of(int width, int height, Orientation orientation) {
    byte[] upright = new byte[Math.multiplyExact(3, Math.multiplyExact(width, height))];
    return new UprightRaster(width, height, upright, orientation);
  }

  /** Takes whole rows: so decoders write. */
  @Override
  public void setRect(int dx, int dy, Raster from) {
    if (from.getMinX() + dx != 0 || from.getWidth() != getWidth()) {
      throw new IllegalArgumentException("only whole rows are taken");
    }
    for (int j = 0; j < from.getHeight(); j++) {
      int row = from.getMinY() + dy + j;
      if (count == waiting.length || row != first + count) {
        put();
        first = row;
      }
      from.getDataElements(from.getMinX(), from.getMinY() + j, getWidth(), 1, waiting[count]);
      count++;
    }
  }

  private void put() {
    rows.put(first, waiting, count);
    count = 0;
  }

  /** Returns the upright picture: red, green and blue of each pixel, rows from the top. */
  byte[] samples() {
    put();
    return upright;
  }
}
