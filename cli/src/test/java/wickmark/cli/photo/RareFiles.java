package wickmark.cli.photo;

import java.awt.image.BufferedImage;
import java.awt.image.WritableRaster;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Base64;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.stream.ImageOutputStream;

/** Kinds of files that are met now and then, and some that are met only when made on purpose. */
final class RareFiles {
  private RareFiles() {}

  /** The gradient of 40 by 30 px, lossless, as the reference encoder writes it. */
  static byte[] losslessWebp() {
    return Base64.getDecoder()
        .decode(
            "UklGRk4AAABXRUJQVlA4TEEAAAAvJ0AHAAGAIAb8VwuI6H/qBgBB+G8XENH/1MFo2zaG3f8nD614QEiQ"
                + "QpIOSqht24Zxz5Q/KGJ72flBQItDDW8jAAA=");
  }

  /** The same, lossy. */
  static byte[] lossyWebp() {
    return Base64.getDecoder()
        .decode(
            "UklGRpAAAABXRUJQVlA4IIQAAACwBACdASooAB4APqVGmkm5qyKhOrZoAzAUiWoAnTLCOWhkPQlauNJ9"
                + "87/A/9cAAP77ebD0Z6cTZWWlg2urFUqPQ6cBSZw9C4O8vxiPrZaH2QsktpJgHi+qkRkpNNMX4MJzle0e"
                + "X+YICw4Z/eFkTbJBiVYFieAjBv8jiD2RSIpYV4+8YAA=");
  }

  static byte[] progressiveJpeg(BufferedImage image) {
    return written("jpeg", ImageWriteParam.MODE_DEFAULT, "", new IIOImage(image, null, null));
  }

  static byte[] packedTiff(BufferedImage image) {
    return written("tiff", ImageWriteParam.MODE_EXPLICIT, "LZW", new IIOImage(image, null, null));
  }

  /** A JPEG of four components, as printing houses make them, all of one colour. */
  static byte[] cmykJpeg(int width, int height, int... components) {
    WritableRaster raster =
        java.awt.image.Raster.createInterleavedRaster(
            java.awt.image.DataBuffer.TYPE_BYTE, width, height, 4, null);
    for (int y = 0; y < height; y++) {
      for (int x = 0; x < width; x++) {
        raster.setPixel(x, y, components);
      }
    }
    byte[] plain =
        written(
            "jpeg", ImageWriteParam.MODE_COPY_FROM_METADATA, "", new IIOImage(raster, null, null));
    byte[] adobe = "Adobe\0\144\0\0\0\0\0".getBytes(StandardCharsets.ISO_8859_1);
    return PictureBytes.withSegment(plain, 0xee, adobe);
  }

  private static byte[] written(String format, int progressive, String packing, IIOImage image) {
    ImageWriter writer =
        java.util.stream.Stream.generate(ImageIO.getImageWritersByFormatName(format)::next)
            .filter(w -> w.getClass().getName().startsWith("com.sun."))
            .findFirst()
            .orElseThrow();
    ImageWriteParam how = writer.getDefaultWriteParam();
    if (format.equals("jpeg")) {
      how.setProgressiveMode(progressive);
    }
    if (!packing.isEmpty()) {
      how.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
      how.setCompressionType(packing);
    }
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ImageOutputStream out = ImageIO.createImageOutputStream(bytes)) {
      writer.setOutput(out);
      writer.write(null, image, how);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } finally {
      writer.dispose();
    }
    return bytes.toByteArray();
  }

  /**
   * A WebP with an extended header (WebP Container Specification, "Extended File Format"): canvas
   * and flags as given, with the lossless picture in it.
   *
   * @param flags 2 is animation, 4 is XMP, 8 is EXIF
   */
  static byte[] extendedWebp(int width, int height, int flags, byte[]... furtherChunks) {
    byte[] picture = Arrays.copyOfRange(losslessWebp(), 12, losslessWebp().length);
    ByteBuffer extended = ByteBuffer.allocate(18).order(ByteOrder.LITTLE_ENDIAN);
    extended.put("VP8X".getBytes(StandardCharsets.US_ASCII)).putInt(10).putInt(flags);
    extended.putShort((short) ((width - 1) & 0xffff)).put((byte) ((width - 1) >> 16));
    extended.putShort((short) ((height - 1) & 0xffff)).put((byte) ((height - 1) >> 16));
    ByteArrayOutputStream body = new ByteArrayOutputStream();
    body.writeBytes("WEBP".getBytes(StandardCharsets.US_ASCII));
    body.writeBytes(extended.array());
    body.writeBytes(picture);
    for (byte[] chunk : furtherChunks) {
      body.writeBytes(chunk);
    }
    ByteBuffer file = ByteBuffer.allocate(8 + body.size()).order(ByteOrder.LITTLE_ENDIAN);
    file.put("RIFF".getBytes(StandardCharsets.US_ASCII)).putInt(body.size());
    return file.put(body.toByteArray()).array();
  }

  static byte[] webpWithXmp(String xmp) {
    byte[] text = xmp.getBytes(StandardCharsets.UTF_8);
    ByteBuffer chunk = ByteBuffer.allocate(8 + text.length + text.length % 2);
    chunk.order(ByteOrder.LITTLE_ENDIAN).put("XMP ".getBytes(StandardCharsets.US_ASCII));
    chunk.putInt(text.length).put(text);
    return extendedWebp(40, 30, 4, chunk.array());
  }

  /** A TIFF of 8 by 8 px with a packet in its tag 700 (Adobe, XMP Specification part 3). */
  static byte[] tiffWithXmp(String xmp) {
    byte[] text = xmp.getBytes(StandardCharsets.UTF_8);
    byte[] tiff = PictureBytes.deepTiff(8, 8, 1, 2, 3);
    byte[] with = Arrays.copyOf(tiff, tiff.length + text.length);
    System.arraycopy(text, 0, with, tiff.length, text.length);
    // The number of samples is given up for it; the packet comes last among the sorted tags.
    ByteBuffer.wrap(with)
        .putShort(8, (short) 10)
        .putShort(10 + 9 * 12, (short) 700)
        .putShort(12 + 9 * 12, (short) 1)
        .putInt(14 + 9 * 12, text.length)
        .putInt(18 + 9 * 12, tiff.length)
        .putInt(22 + 9 * 12, 0);
    return with;
  }

  /** Repeats the last scan before the end marker. */
  static byte[] withLastScanRepeated(byte[] jpeg, int times) {
    int scan = jpeg.length - 2;
    while ((jpeg[scan] & 0xff) != 0xff || (jpeg[scan + 1] & 0xff) != 0xda) {
      scan--;
    }
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    out.write(jpeg, 0, jpeg.length - 2);
    for (int i = 0; i < times; i++) {
      out.write(jpeg, scan, jpeg.length - 2 - scan);
    }
    out.write(jpeg, jpeg.length - 2, 2);
    return out.toByteArray();
  }

  static int indexOf(byte[] bytes, int first, int second) {
    for (int i = 0; i + 1 < bytes.length; i++) {
      if ((bytes[i] & 0xff) == first && (bytes[i + 1] & 0xff) == second) {
        return i;
      }
    }
    throw new IllegalArgumentException("not there");
  }
}
