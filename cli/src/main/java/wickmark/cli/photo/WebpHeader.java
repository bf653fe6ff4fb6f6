package wickmark.cli.photo;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;

/**
 * The beginning of a WebP file (WebP Container Specification, "RIFF File Format" and "Extended File
 * Format").
 *
 * @param isCutShort whether the file holds fewer bytes than it says
 */
record WebpHeader(boolean isCutShort, boolean isAnimated) {
  private static final int RIFF_BYTES = 8;
  private static final int FLAGS = 20;
  private static final int ANIMATION = 2;

  /** Returns the header; the first twelve bytes are known to be those of a WebP file. */
  static WebpHeader of(byte[] file) {
    long declared = ByteBuffer.wrap(file).order(ByteOrder.LITTLE_ENDIAN).getInt(4) & 0xffff_ffffL;
    boolean extended =
        file.length > FLAGS && new String(file, 12, 4, StandardCharsets.ISO_8859_1).equals("VP8X");
    return new WebpHeader(
        file.length < RIFF_BYTES + declared, extended && (file[FLAGS] & ANIMATION) != 0);
  }
}
