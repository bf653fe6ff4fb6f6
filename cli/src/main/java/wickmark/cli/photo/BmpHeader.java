package wickmark.cli.photo;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;

/**
 * What a BMP file's BITMAPINFOHEADER says: the size in pixels at offsets 18 and 22, the resolution
 * in pixels per metre at 38 and 42.
 *
 * @param widthPx 0 where the header is of another kind
 * @param heightPx 0 where the header is of another kind
 */
record BmpHeader(int widthPx, int heightPx, PictureMetadata metadata) {
  private static final double METRES_PER_INCH = 0.0254;
  private static final int INFO_HEADER_BYTES = 40;

  static BmpHeader of(byte[] file) {
    ByteBuffer in = ByteBuffer.wrap(file).order(ByteOrder.LITTLE_ENDIAN);
    if (file.length < 46 || in.getInt(14) < INFO_HEADER_BYTES) {
      return new BmpHeader(0, 0, PictureMetadata.NONE);
    }
    // A negative height means that the rows come from the top.
    return new BmpHeader(
        in.getInt(18),
        Math.abs(in.getInt(22)),
        PictureMetadata.NONE.withResolution(
            PictureMetadata.resolutionOf(
                in.getInt(38) * METRES_PER_INCH, in.getInt(42) * METRES_PER_INCH)));
  }
}
