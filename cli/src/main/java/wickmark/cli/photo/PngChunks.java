package wickmark.cli.photo;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Optional;
import java.util.Set;
import java.util.zip.CRC32;
import java.util.zip.InflaterInputStream;
import wickmark.imaging.photo.Resolution;

/**
 * The chunks of a PNG file (W3C PNG specification, 2nd edition, section 5).
 *
 * @param plain the file with only the chunks that make the pixels, so that neither a profile nor a
 *     packed text in it reaches the decoder
 * @param resolution from pHYs, where its unit is the metre
 * @param frames how many pictures an animated one holds (acTL, PNG specification, 3rd edition);
 *     else 1
 */
record PngChunks(
    byte[] plain,
    Optional<byte[]> profile,
    Optional<byte[]> exif,
    Optional<Resolution> resolution,
    int frames) {
  private static final Set<String> PIXEL_CHUNKS = Set.of("IHDR", "PLTE", "tRNS", "IDAT", "IEND");
  private static final double METRES_PER_INCH = 0.0254;

  /** A profile is a few hundred bytes to a few megabytes; more is not unpacked. */
  private static final int LARGEST_PROFILE_BYTES = 8 << 20;

  private static final int SIGNATURE_BYTES = 8;

  /**
   * Returns the chunks.
   *
   * @throws UnreadablePictureException if the file ends early or a checksum is wrong
   */
  static PngChunks of(byte[] file, String shown) throws UnreadablePictureException {
    ByteArrayOutputStream plain = new ByteArrayOutputStream(file.length);
    plain.write(file, 0, SIGNATURE_BYTES);
    Optional<byte[]> profile = Optional.empty();
    Optional<byte[]> exif = Optional.empty();
    Optional<Resolution> resolution = Optional.empty();
    int frames = 1;
    int at = SIGNATURE_BYTES;
    String type = "";
    while (!type.equals("IEND")) {
      long length = at + 12 <= file.length ? ByteBuffer.wrap(file, at, 4).getInt() : -1;
      if (length < 0 || at + 12 + length > file.length) {
        throw new UnreadablePictureException(shown, "the file is cut short.");
      }
      type = new String(file, at + 4, 4, StandardCharsets.ISO_8859_1);
      int content = at + 8;
      int end = content + (int) length;
      if (PIXEL_CHUNKS.contains(type)) {
        checkSum(file, at + 4, end, shown);
        plain.write(file, at, end + 4 - at);
      } else if (type.equals("iCCP")) {
        profile = profileIn(Arrays.copyOfRange(file, content, end));
      } else if (type.equals("eXIf")) {
        exif = Optional.of(Arrays.copyOfRange(file, content, end));
      } else if (type.equals("acTL") && length == 8) {
        frames = Math.max(1, ByteBuffer.wrap(file, content, 4).getInt());
      } else if (type.equals("pHYs") && length == 9 && file[end - 1] == 1) {
        ByteBuffer perMetre = ByteBuffer.wrap(file, content, 8);
        resolution =
            PictureMetadata.resolutionOf(
                perMetre.getInt() * METRES_PER_INCH, perMetre.getInt() * METRES_PER_INCH);
      }
      at = end + 4;
    }
    return new PngChunks(plain.toByteArray(), profile, exif, resolution, frames);
  }

  private static void checkSum(byte[] file, int from, int end, String shown)
      throws UnreadablePictureException {
    CRC32 sum = new CRC32();
    sum.update(file, from, end - from);
    if ((int) sum.getValue() != ByteBuffer.wrap(file, end, 4).getInt()) {
      throw new UnreadablePictureException(shown, "the file is damaged (a checksum is wrong).");
    }
  }

  private static Optional<byte[]> profileIn(byte[] chunk) {
    int name = 0;
    while (name < chunk.length && chunk[name] != 0) {
      name++;
    }
    int packed = name + 2;
    if (packed >= chunk.length) {
      return Optional.of(new byte[0]);
    }
    try (InflaterInputStream in =
        new InflaterInputStream(new ByteArrayInputStream(chunk, packed, chunk.length - packed))) {
      return Optional.of(in.readNBytes(LARGEST_PROFILE_BYTES));
    } catch (IOException e) {
      return Optional.of(new byte[0]);
    }
  }
}
