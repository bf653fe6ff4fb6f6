package wickmark.cli.photo;

import java.awt.Transparency;
import java.awt.color.ColorSpace;
import java.awt.image.BufferedImage;
import java.awt.image.ColorModel;
import java.awt.image.ComponentColorModel;
import java.awt.image.DataBuffer;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javax.imageio.ImageIO;
import javax.imageio.ImageReadParam;
import javax.imageio.ImageReader;
import javax.imageio.ImageTypeSpecifier;
import javax.imageio.stream.ImageInputStream;

/** Decodes the bytes of one picture and refuses what is damaged or beyond all measure. */
final class PictureDecoder {
  /** The largest photo that is met is about 50 megapixels, a large scan about 100. */
  static final long LARGEST_PIXELS = 120_000_000L;

  private final String shown;

  PictureDecoder(String shown) {
    this.shown = shown;
  }

  /**
   * A decoded picture.
   *
   * @param pictures how many the file holds; the first is the one decoded
   */
  record Decoded(BufferedImage image, int pictures) {}

  /** Decodes with the JDK's own reader where it has one for the format. */
  Decoded withPlainReader(byte[] bytes, String format) throws UnreadablePictureException {
    return decode(bytes, reader(format, true), false, Optional.empty());
  }

  /** The same for a picture of three colours, which is turned while it is decoded. */
  Decoded upright(byte[] bytes, String format, Orientation orientation)
      throws UnreadablePictureException {
    return decode(bytes, reader(format, true), false, Optional.of(orientation));
  }

  /** Decodes with the reader that knows the rarer kinds. */
  Decoded withWideReader(byte[] bytes, String format) throws UnreadablePictureException {
    return decode(bytes, reader(format, false), format.equals("tiff"), Optional.empty());
  }

  private static ImageReader reader(String format, boolean plain) {
    Iterator<ImageReader> readers = ImageIO.getImageReadersByFormatName(format);
    List<ImageReader> all = new ArrayList<>();
    readers.forEachRemaining(all::add);
    return all.stream()
        .filter(r -> r.getClass().getName().startsWith("com.sun.") == plain)
        .findFirst()
        .orElseThrow(() -> new IllegalStateException("the " + format + " reader is not installed"));
  }

  private Decoded decode(
      byte[] bytes, ImageReader reader, boolean countPictures, Optional<Orientation> turned)
      throws UnreadablePictureException {
    List<String> complaints = new ArrayList<>();
    try (ImageInputStream in = new PictureStream(bytes)) {
      reader.setInput(in, false, true);
      reader.addIIOReadWarningListener((source, warning) -> complaints.add(warning));
      checkSize(reader.getWidth(0), reader.getHeight(0));
      int pictures = countPictures ? reader.getNumImages(true) : 1;
      ImageReadParam how = reader.getDefaultReadParam();
      if (turned.isPresent() && isOfThreeBytes(reader.getImageTypes(0).next())) {
        how.setDestination(upright(reader.getWidth(0), reader.getHeight(0), turned.get()));
      }
      BufferedImage image = reader.read(0, how);
      for (String complaint : complaints) {
        if (tellsOfDamage(complaint)) {
          throw new UnreadablePictureException(shown, "the picture is cut short or damaged.");
        }
      }
      if (image.getRaster().getDataBuffer().getDataType() >= DataBuffer.TYPE_FLOAT) {
        throw new UnreadablePictureException(
            shown, "its samples are floating-point numbers; save it with 8 or 16 bits.");
      }
      return new Decoded(image, pictures);
    } catch (IOException | RuntimeException e) {
      // The readers answer damage with exceptions of any kind, IndexOutOfBounds among them.
      throw new UnreadablePictureException(
          shown, "the picture is cut short, damaged or of an unknown kind.");
    } catch (OutOfMemoryError e) {
      throw new UnreadablePictureException(
          shown, "the picture needs more memory than the program may take.");
    } finally {
      reader.dispose();
    }
  }

  private static boolean isOfThreeBytes(ImageTypeSpecifier type) {
    return type.getBufferedImageType() == BufferedImage.TYPE_3BYTE_BGR;
  }

  private static BufferedImage upright(int width, int height, Orientation orientation) {
    ColorModel colours =
        new ComponentColorModel(
            ColorSpace.getInstance(ColorSpace.CS_sRGB),
            false,
            false,
            Transparency.OPAQUE,
            DataBuffer.TYPE_BYTE);
    UprightRaster raster = UprightRaster.of(width, height, orientation);
    return new BufferedImage(colours, raster, false, null);
  }

  void checkSize(int width, int height) throws UnreadablePictureException {
    if ((long) width * height > LARGEST_PIXELS) {
      throw new UnreadablePictureException(
          shown,
          String.format(
              Locale.ROOT,
              "%d x %d pixels are more than the %d megapixels that are allowed.",
              width,
              height,
              LARGEST_PIXELS / 1_000_000));
    }
  }

  /** The wording is that of the JPEG library and of the readers, in English on every system. */
  private static boolean tellsOfDamage(String complaint) {
    String words = complaint.toLowerCase(Locale.ROOT);
    return words.contains("truncated") || words.contains("premature") || words.contains("corrupt");
  }
}
