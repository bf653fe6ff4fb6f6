package wickmark.cli.photo;

import java.nio.charset.StandardCharsets;
import java.util.Set;

/** The kind of a file by its first bytes; the name's ending plays no part. */
enum PictureKind {
  JPEG,
  PNG,
  TIFF,
  WEBP,
  BMP,
  HEIC,
  GIF,
  PDF,
  TEXT,
  OTHER;

  private static final Set<String> HEIC_BRANDS =
      Set.of("heic", "heix", "hevc", "heim", "heis", "mif1", "msf1", "avif");

  static PictureKind of(byte[] bytes) {
    if (startsWith(bytes, 0, 0xff, 0xd8, 0xff)) {
      return JPEG;
    }
    if (startsWith(bytes, 0, 0x89, 'P', 'N', 'G', 0x0d, 0x0a, 0x1a, 0x0a)) {
      return PNG;
    }
    if (startsWith(bytes, 0, 'I', 'I', 42, 0)
        || startsWith(bytes, 0, 'M', 'M', 0, 42)
        || startsWith(bytes, 0, 'I', 'I', 43, 0)
        || startsWith(bytes, 0, 'M', 'M', 0, 43)) {
      return TIFF;
    }
    if (startsWith(bytes, 0, 'R', 'I', 'F', 'F') && startsWith(bytes, 8, 'W', 'E', 'B', 'P')) {
      return WEBP;
    }
    if (startsWith(bytes, 0, 'B', 'M') && bytes.length >= 26) {
      return BMP;
    }
    if (startsWith(bytes, 4, 'f', 't', 'y', 'p') && bytes.length >= 12) {
      String brand = new String(bytes, 8, 4, StandardCharsets.ISO_8859_1);
      return HEIC_BRANDS.contains(brand) ? HEIC : OTHER;
    }
    if (startsWith(bytes, 0, 'G', 'I', 'F', '8')) {
      return GIF;
    }
    if (startsWith(bytes, 0, '%', 'P', 'D', 'F')) {
      return PDF;
    }
    return looksLikeText(bytes) ? TEXT : OTHER;
  }

  private static boolean startsWith(byte[] bytes, int from, int... signature) {
    if (bytes.length < from + signature.length) {
      return false;
    }
    for (int i = 0; i < signature.length; i++) {
      if ((bytes[from + i] & 0xff) != signature[i]) {
        return false;
      }
    }
    return true;
  }

  private static boolean looksLikeText(byte[] bytes) {
    int looked = Math.min(bytes.length, 512);
    for (int i = 0; i < looked; i++) {
      int b = bytes[i] & 0xff;
      if (b < 0x20 && b != '\n' && b != '\r' && b != '\t' && b != '\f') {
        return false;
      }
    }
    return looked > 0;
  }
}
