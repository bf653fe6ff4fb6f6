package wickmark.testdata.picture;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Iterator;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageTypeSpecifier;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.metadata.IIOInvalidTreeException;
import javax.imageio.metadata.IIOMetadata;
import javax.imageio.metadata.IIOMetadataNode;
import javax.imageio.stream.ImageOutputStream;
import javax.imageio.stream.MemoryCacheImageOutputStream;

/**
 * Drawn pictures as files. The pixels of a plan are the same everywhere; the bytes of a JPEG depend
 * on the Java runtime's encoder.
 */
public final class PictureFile {
  private static final double MM_PER_INCH = 25.4;

  private PictureFile() {}

  /**
   * Returns a JPEG file.
   *
   * @param quality 1 to 100
   */
  public static byte[] jpeg(Picture upright, int quality, PictureTags tags) {
    ImageWriter writer = writer("jpeg");
    ImageWriteParam how = writer.getDefaultWriteParam();
    how.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
    how.setCompressionQuality(quality / 100f);
    byte[] plain = encoded(writer, how, new IIOImage(tags.stored(upright).toImage(), null, null));
    byte[] exif = ExifSegment.of(tags);
    // The encoder begins with the start marker and an 18-byte JFIF segment, which holds the
    // resolution.
    int jfifEnd = 2 + 18;
    tags.dpi().ifPresent(dpi -> density(plain, (int) Math.round(dpi)));
    ByteArrayOutputStream out = new ByteArrayOutputStream(plain.length + exif.length);
    out.write(plain, 0, jfifEnd);
    out.writeBytes(exif);
    out.write(plain, jfifEnd, plain.length - jfifEnd);
    return out.toByteArray();
  }

  private static void density(byte[] jpeg, int dpi) {
    jpeg[13] = 1;
    jpeg[14] = (byte) (dpi >> 8);
    jpeg[15] = (byte) dpi;
    jpeg[16] = (byte) (dpi >> 8);
    jpeg[17] = (byte) dpi;
  }

  /** Returns a PNG file with its resolution, if there is one; a PNG has no orientation. */
  public static byte[] png(Picture upright, PictureTags tags) {
    ImageWriter writer = writer("png");
    ImageWriteParam how = writer.getDefaultWriteParam();
    ImageTypeSpecifier type = ImageTypeSpecifier.createFromRenderedImage(upright.toImage());
    IIOMetadata metadata = writer.getDefaultImageMetadata(type, how);
    tags.dpi().ifPresent(dpi -> physicalSize(metadata, (int) Math.round(dpi * 1000 / MM_PER_INCH)));
    return encoded(writer, how, new IIOImage(upright.toImage(), null, metadata));
  }

  private static void physicalSize(IIOMetadata metadata, int perMetre) {
    String format = "javax_imageio_png_1.0";
    IIOMetadataNode root = new IIOMetadataNode(format);
    IIOMetadataNode size = new IIOMetadataNode("pHYs");
    size.setAttribute("pixelsPerUnitXAxis", Integer.toString(perMetre));
    size.setAttribute("pixelsPerUnitYAxis", Integer.toString(perMetre));
    size.setAttribute("unitSpecifier", "meter");
    root.appendChild(size);
    try {
      metadata.mergeTree(format, root);
    } catch (IIOInvalidTreeException broken) {
      throw new IllegalStateException("the PNG writer does not know its own metadata", broken);
    }
  }

  /** Returns the upright pixels of a JPEG or PNG file without looking at its orientation. */
  public static Picture decoded(byte[] file) {
    try {
      return Picture.of(ImageIO.read(new ByteArrayInputStream(file)));
    } catch (IOException broken) {
      throw new UncheckedIOException(broken);
    }
  }

  private static ImageWriter writer(String format) {
    Iterator<ImageWriter> writers = ImageIO.getImageWritersByFormatName(format);
    if (!writers.hasNext()) {
      throw new IllegalStateException("this Java runtime writes no " + format);
    }
    return writers.next();
  }

  private static byte[] encoded(ImageWriter writer, ImageWriteParam how, IIOImage image) {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ImageOutputStream out = new MemoryCacheImageOutputStream(bytes)) {
      writer.setOutput(out);
      writer.write(null, image, how);
    } catch (IOException broken) {
      throw new UncheckedIOException(broken);
    } finally {
      writer.dispose();
    }
    return bytes.toByteArray();
  }
}
