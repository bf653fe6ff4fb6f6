package wickmark.cli.photo;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * The marker segments of a JPEG file up to its first scan (ITU-T T.81, annex B).
 *
 * @param components number of colour components, 0 where no frame header was met
 * @param scans how many times the decoder goes over the picture
 * @param plain the file without application segments other than JFIF's and Adobe's: the decoder
 *     then leaves the samples as they are, and thumbnails and profiles cannot mislead it
 * @param profile the embedded ICC profile (ICC.1:2022, annex B.4), put together from its parts
 */
record JpegSegments(int components, int scans, byte[] plain, Optional<byte[]> profile) {
  private static final byte[] PROFILE_TAG = "ICC_PROFILE\0".getBytes(StandardCharsets.US_ASCII);
  private static final int APP0 = 0xe0;
  private static final int APP2 = 0xe2;
  private static final int APP14 = 0xee;
  private static final int APP15 = 0xef;
  private static final int COMMENT = 0xfe;
  private static final int START_OF_SCAN = 0xda;
  private static final int END_OF_IMAGE = 0xd9;

  /** Returns the segments; a file whose segments do not follow on each other is kept whole. */
  static JpegSegments of(byte[] file) {
    ByteArrayOutputStream plain = new ByteArrayOutputStream(file.length);
    Map<Integer, byte[]> profileParts = new TreeMap<>();
    int components = 0;
    int at = 2;
    plain.write(file, 0, 2);
    while (at + 4 <= file.length && (file[at] & 0xff) == 0xff) {
      int marker = file[at + 1] & 0xff;
      if (marker == 0xff) {
        at++;
        continue;
      }
      int length = ((file[at + 2] & 0xff) << 8) | (file[at + 3] & 0xff);
      int end = at + 2 + length;
      if (marker == START_OF_SCAN || length < 2 || end > file.length) {
        break;
      }
      if (isFrameHeader(marker) && length >= 8) {
        components = file[at + 9] & 0xff;
      }
      if (marker == APP2) {
        keepProfilePart(file, at + 4, end, profileParts);
      }
      if (marker < APP0
          || marker == APP0
          || marker == APP14
          || (marker > APP15 && marker != COMMENT)) {
        plain.write(file, at, end - at);
      }
      at = end;
    }
    plain.write(file, at, file.length - at);
    return new JpegSegments(
        components, scansFrom(at, file), plain.toByteArray(), joined(profileParts));
  }

  /** Within a scan 0xff is followed by 0 or a restart marker; phones put films after the end. */
  private static int scansFrom(int start, byte[] file) {
    int scans = 0;
    for (int i = start; i + 1 < file.length; i++) {
      if ((file[i] & 0xff) == 0xff) {
        int marker = file[i + 1] & 0xff;
        if (marker == END_OF_IMAGE) {
          break;
        }
        scans += marker == START_OF_SCAN ? 1 : 0;
      }
    }
    return scans;
  }

  private static boolean isFrameHeader(int marker) {
    // 0xc4, 0xc8 and 0xcc lie in the same range and are tables or reserved.
    return marker >= 0xc0 && marker <= 0xcf && marker != 0xc4 && marker != 0xc8 && marker != 0xcc;
  }

  private static void keepProfilePart(byte[] file, int from, int end, Map<Integer, byte[]> parts) {
    int header = PROFILE_TAG.length + 2;
    if (end - from <= header) {
      return;
    }
    for (int i = 0; i < PROFILE_TAG.length; i++) {
      if (file[from + i] != PROFILE_TAG[i]) {
        return;
      }
    }
    int number = file[from + PROFILE_TAG.length] & 0xff;
    parts.put(number, Arrays.copyOfRange(file, from + header, end));
  }

  private static Optional<byte[]> joined(Map<Integer, byte[]> parts) {
    if (parts.isEmpty()) {
      return Optional.empty();
    }
    ByteArrayOutputStream whole = new ByteArrayOutputStream();
    parts.values().forEach(whole::writeBytes);
    return Optional.of(whole.toByteArray());
  }
}
