package wickmark.testdata.picture;

import java.io.ByteArrayOutputStream;
import java.util.ArrayList;
import java.util.List;

/** The EXIF part of a JPEG file (APP1), as much of it as a drawn picture has to say. */
final class ExifSegment {
  private static final int SHORT = 3;
  private static final int LONG = 4;

  private record Entry(int tag, int type, int value) {}

  private ExifSegment() {}

  /** Returns the segment with its marker and length, for the given tags. */
  static byte[] of(PictureTags tags) {
    List<Entry> root = new ArrayList<>();
    List<Entry> exif = new ArrayList<>();
    if (tags.orientation() != 1) {
      root.add(new Entry(0x0112, SHORT, tags.orientation()));
    }
    tags.focalLength35mm()
        .ifPresent(mm -> exif.add(new Entry(0xA405, SHORT, (int) Math.round(mm))));
    if (!exif.isEmpty()) {
      root.add(new Entry(0x8769, LONG, 8 + 2 + 12 * (root.size() + 1) + 4));
    }
    if (root.isEmpty()) {
      return new byte[0];
    }
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    int tiff = 8 + directorySize(root) + (exif.isEmpty() ? 0 : directorySize(exif));
    put(out, 0xFFE1, 2);
    put(out, 2 + 6 + tiff, 2);
    out.writeBytes(new byte[] {'E', 'x', 'i', 'f', 0, 0, 'M', 'M', 0, 42, 0, 0, 0, 8});
    directory(out, root);
    if (!exif.isEmpty()) {
      directory(out, exif);
    }
    return out.toByteArray();
  }

  private static int directorySize(List<Entry> entries) {
    return 2 + 12 * entries.size() + 4;
  }

  private static void directory(ByteArrayOutputStream out, List<Entry> entries) {
    put(out, entries.size(), 2);
    for (Entry entry : entries) {
      put(out, entry.tag(), 2);
      put(out, entry.type(), 2);
      put(out, 1, 4);
      if (entry.type() == SHORT) {
        put(out, entry.value(), 2);
        put(out, 0, 2);
      } else {
        put(out, entry.value(), 4);
      }
    }
    put(out, 0, 4);
  }

  private static void put(ByteArrayOutputStream out, int value, int bytes) {
    for (int i = bytes - 1; i >= 0; i--) {
      out.write(value >> (8 * i));
    }
  }
}
