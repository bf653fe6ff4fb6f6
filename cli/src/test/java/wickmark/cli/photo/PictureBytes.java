package wickmark.cli.photo;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.zip.CRC32;
import java.util.zip.Deflater;
import javax.imageio.ImageIO;

/** Files made for the tests, byte by byte where no writer makes them. */
final class PictureBytes {
  private PictureBytes() {}

  static byte[] written(BufferedImage image, String format) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try {
      if (!ImageIO.write(image, format, out)) {
        throw new IllegalArgumentException("no writer for " + format);
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return out.toByteArray();
  }

  /** Each pixel tells its place: red grows with x, green with y, in steps that survive JPEG. */
  static BufferedImage gradient(int width, int height) {
    BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_3BYTE_BGR);
    for (int y = 0; y < height; y++) {
      for (int x = 0; x < width; x++) {
        image.setRGB(x, y, (255 * x / width) << 16 | (255 * y / height) << 8 | 40);
      }
    }
    return image;
  }

  static BufferedImage filled(int width, int height, int rgb) {
    BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_3BYTE_BGR);
    for (int y = 0; y < height; y++) {
      for (int x = 0; x < width; x++) {
        image.setRGB(x, y, rgb);
      }
    }
    return image;
  }

  /** Puts a segment right after the JPEG's start marker. */
  static byte[] withSegment(byte[] jpeg, int marker, byte[] content) {
    ByteBuffer out = ByteBuffer.allocate(jpeg.length + content.length + 4);
    out.put(jpeg, 0, 2);
    out.putShort((short) (0xff00 | marker)).putShort((short) (content.length + 2)).put(content);
    out.put(jpeg, 2, jpeg.length - 2);
    return out.array();
  }

  /** An EXIF segment's content with an orientation and, in the sub-directory, a focal length. */
  static byte[] exif(int orientation, int dpi, int focalLength35mm) {
    ByteBuffer tiff = ByteBuffer.allocate(200);
    tiff.put("Exif\0\0MM\0*".getBytes(StandardCharsets.US_ASCII)).putInt(8);
    tiff.putShort((short) 5);
    entry(tiff, 0x0112, 3, 1, orientation << 16);
    entry(tiff, 0x011a, 5, 1, 100);
    entry(tiff, 0x011b, 5, 1, 100);
    entry(tiff, 0x0128, 3, 1, 2 << 16);
    entry(tiff, 0x8769, 4, 1, 120);
    tiff.putInt(0);
    tiff.position(6 + 100);
    tiff.putInt(dpi).putInt(1);
    tiff.position(6 + 120);
    tiff.putShort((short) 1);
    entry(tiff, 0xa405, 3, 1, focalLength35mm << 16);
    tiff.putInt(0);
    return Arrays.copyOf(tiff.array(), tiff.position());
  }

  /** An uncompressed TIFF (6.0, "RGB full-color images") with 16 bits a sample, one colour. */
  static byte[] deepTiff(int width, int height, int red, int green, int blue) {
    ByteBuffer tiff = ByteBuffer.allocate(200 + 6 * width * height);
    tiff.put("MM\0*".getBytes(StandardCharsets.US_ASCII)).putInt(8).putShort((short) 9);
    entry(tiff, 256, 3, 1, width << 16);
    entry(tiff, 257, 3, 1, height << 16);
    entry(tiff, 258, 3, 3, 180);
    entry(tiff, 259, 3, 1, 1 << 16);
    entry(tiff, 262, 3, 1, 2 << 16);
    entry(tiff, 273, 4, 1, 200);
    entry(tiff, 277, 3, 1, 3 << 16);
    entry(tiff, 278, 3, 1, height << 16);
    entry(tiff, 279, 4, 1, 6 * width * height);
    tiff.putInt(0).position(180);
    tiff.putShort((short) 16).putShort((short) 16).putShort((short) 16).position(200);
    while (tiff.hasRemaining()) {
      tiff.putShort((short) red).putShort((short) green).putShort((short) blue);
    }
    return tiff.array();
  }

  private static void entry(ByteBuffer tiff, int tag, int type, int count, int value) {
    tiff.putShort((short) tag).putShort((short) type).putInt(count).putInt(value);
  }

  /** Puts a chunk right after the PNG's header chunk. */
  static byte[] withChunk(byte[] png, String type, byte[] content) {
    int header = 8 + 25;
    ByteBuffer out = ByteBuffer.allocate(png.length + content.length + 12);
    out.put(png, 0, header);
    out.putInt(content.length);
    byte[] body = new byte[content.length + 4];
    System.arraycopy(type.getBytes(StandardCharsets.US_ASCII), 0, body, 0, 4);
    System.arraycopy(content, 0, body, 4, content.length);
    CRC32 sum = new CRC32();
    sum.update(body);
    out.put(body).putInt((int) sum.getValue());
    out.put(png, header, png.length - header);
    return out.array();
  }

  static byte[] packed(byte[] content) {
    Deflater deflater = new Deflater();
    deflater.setInput(content);
    deflater.finish();
    byte[] out = new byte[content.length + 100];
    int length = deflater.deflate(out);
    deflater.end();
    return Arrays.copyOf(out, length);
  }

  /** A profile of three colorants (XYZ, D50) and the curve of IEC 61966-2-1. */
  static byte[] profile(double[][] colorants) {
    ByteBuffer icc = ByteBuffer.allocate(128 + 4 + 6 * 12 + 3 * 20 + 32);
    icc.putInt(0, icc.capacity());
    put(icc, 8, 0x04000000);
    put(icc, 12, "mntr");
    put(icc, 16, "RGB ");
    put(icc, 20, "XYZ ");
    put(icc, 36, "acsp");
    int data = 128 + 4 + 72;
    icc.putInt(128, 6);
    String[] names = {"r", "g", "b"};
    for (int c = 0; c < 3; c++) {
      tag(icc, 132 + 12 * c, names[c] + "XYZ", data + 20 * c, 20);
      put(icc, data + 20 * c, "XYZ ");
      for (int row = 0; row < 3; row++) {
        put(icc, data + 20 * c + 8 + 4 * row, fixed(colorants[c][row]));
      }
      tag(icc, 168 + 12 * c, names[c] + "TRC", data + 60, 32);
    }
    put(icc, data + 60, "para");
    icc.putShort(data + 68, (short) 3);
    double[] curve = {2.4, 1 / 1.055, 0.055 / 1.055, 1 / 12.92, 0.04045};
    for (int i = 0; i < curve.length; i++) {
      put(icc, data + 72 + 4 * i, fixed(curve[i]));
    }
    return icc.array();
  }

  private static int fixed(double value) {
    return (int) Math.round(value * 65536);
  }

  private static void tag(ByteBuffer icc, int at, String name, int offset, int size) {
    put(icc, at, name);
    put(icc, at + 4, offset);
    put(icc, at + 8, size);
  }

  private static void put(ByteBuffer icc, int at, String four) {
    icc.put(at, four.getBytes(StandardCharsets.US_ASCII));
  }

  private static void put(ByteBuffer icc, int at, int value) {
    icc.putInt(at, value);
  }
}
