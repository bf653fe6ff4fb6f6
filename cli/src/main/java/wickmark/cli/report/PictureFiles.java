package wickmark.cli.report;

import java.awt.image.BufferedImage;
import java.awt.image.DataBufferInt;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Arrays;
import java.util.Iterator;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.stream.MemoryCacheImageOutputStream;
import wickmark.imaging.photo.Photo;

/** Pictures as bytes of files. They hold pixels alone: no place, no date, no device. */
final class PictureFiles {
  private static final int LONGEST_SIDE_IN_REPORT = 1600;
  private static final float JPEG_QUALITY = 0.82f;

  private PictureFiles() {}

  /** Returns a picture as a PNG file. */
  static byte[] png(Photo picture) {
    BufferedImage image =
        new BufferedImage(picture.widthPx(), picture.heightPx(), BufferedImage.TYPE_INT_RGB);
    int[] pixels = pixels(image);
    int at = 0;
    for (int y = 0; y < picture.heightPx(); y++) {
      for (int x = 0; x < picture.widthPx(); x++) {
        pixels[at++] = picture.rgb(x, y);
      }
    }
    return written(image, "png");
  }

  /** Returns the photo as a JPEG file of moderate size: each pixel the mean of a square of it. */
  static byte[] smallJpeg(Photo photo) {
    int longest = Math.max(photo.widthPx(), photo.heightPx());
    int factor = (longest + LONGEST_SIDE_IN_REPORT - 1) / LONGEST_SIDE_IN_REPORT;
    int width = Math.max(1, photo.widthPx() / factor);
    int height = Math.max(1, photo.heightPx() / factor);
    BufferedImage small = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
    int[] pixels = pixels(small);
    int fx = Math.min(factor, photo.widthPx());
    int fy = Math.min(factor, photo.heightPx());
    int[][] sum = new int[3][width];
    for (int y = 0; y < height; y++) {
      for (int[] channel : sum) {
        Arrays.fill(channel, 0);
      }
      for (int row = y * factor; row < y * factor + fy; row++) {
        photo.addRow(0, row, fx, sum[0], sum[1], sum[2]);
      }
      for (int x = 0; x < width; x++) {
        int count = fx * fy;
        pixels[y * width + x] =
            (sum[0][x] / count) << 16 | (sum[1][x] / count) << 8 | (sum[2][x] / count);
      }
    }
    return written(small, "jpeg");
  }

  /** The picture's own pixels, to be set without a colour model's help. */
  private static int[] pixels(BufferedImage image) {
    return ((DataBufferInt) image.getRaster().getDataBuffer()).getData();
  }

  private static byte[] written(BufferedImage image, String format) {
    ImageWriter writer = writer(format);
    ImageWriteParam settings = writer.getDefaultWriteParam();
    if (format.equals("jpeg")) {
      settings.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
      settings.setCompressionQuality(JPEG_QUALITY);
    }
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (MemoryCacheImageOutputStream out = new MemoryCacheImageOutputStream(bytes)) {
      writer.setOutput(out);
      writer.write(null, new IIOImage(image, null, null), settings);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } finally {
      writer.dispose();
    }
    return bytes.toByteArray();
  }

  /** The JDK's own writer, so that no other plug-in changes the bytes. */
  private static ImageWriter writer(String format) {
    Iterator<ImageWriter> writers = ImageIO.getImageWritersByFormatName(format);
    while (writers.hasNext()) {
      ImageWriter writer = writers.next();
      if (writer.getClass().getName().startsWith("com.sun.")) {
        return writer;
      }
    }
    throw new IllegalStateException("the " + format + " writer is not installed");
  }
}
