package wickmark.cli.photo;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;

/** The resolution in a BMP file's BITMAPINFOHEADER: pixels per metre at offsets 38 and 42. */
final class BmpHeader {
  private static final double METRES_PER_INCH = 0.0254;
  private static final int INFO_HEADER_BYTES = 40;

  private BmpHeader() {}

  static PictureMetadata metadata(byte[] file) {
    ByteBuffer in = ByteBuffer.wrap(file).order(ByteOrder.LITTLE_ENDIAN);
    if (file.length < 46 || in.getInt(14) < INFO_HEADER_BYTES) {
      return PictureMetadata.NONE;
    }
    return PictureMetadata.NONE.withResolution(
        PictureMetadata.resolutionOf(
            in.getInt(38) * METRES_PER_INCH, in.getInt(42) * METRES_PER_INCH));
  }
}
