package wickmark.cli.photo;

import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import wickmark.imaging.photo.Photo;

/**
 * A picture read from a file.
 *
 * @param name the file's name without a path
 * @param sha256 of the bytes that were decoded, in lower-case hexadecimal
 * @param remarks what the reader should know of how the file was read, in sentences; mostly empty
 */
public record PhotoFile(String name, String sha256, Photo photo, List<String> remarks) {
  public PhotoFile {
    remarks = List.copyOf(remarks);
  }

  /**
   * Reads JPEG, PNG, TIFF, WebP, BMP and, with a converter installed, HEIC. The file is read once;
   * its kind follows from its content, not from its name.
   *
   * @throws UnreadablePictureException if it is no whole picture of one of these kinds
   */
  public static PhotoFile read(Path file) throws UnreadablePictureException {
    @Nullable Path last = file.getFileName();
    String name = last == null ? file.toString() : last.toString();
    return of(name, BoundedFile.read(file, name));
  }

  /** Reads the bytes of a file that is in memory already. */
  static PhotoFile of(String name, byte[] bytes) throws UnreadablePictureException {
    if (bytes.length == 0) {
      throw new UnreadablePictureException(name, "the file is empty.");
    }
    return new Reading(name).of(bytes, sha256(bytes));
  }

  private static String sha256(byte[] bytes) {
    try {
      return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java has SHA-256", e);
    }
  }

  /** One reading: gathers the remarks on its way. */
  private static final class Reading {
    /** Encoders write about ten; more than this only keeps the decoder going. */
    private static final int MOST_SCANS = 100;

    private final String name;
    private final PictureDecoder decoder;
    private final List<String> remarks = new ArrayList<>();

    Reading(String name) {
      this.name = name;
      this.decoder = new PictureDecoder(name);
    }

    PhotoFile of(byte[] bytes, String sha256) throws UnreadablePictureException {
      Photo photo =
          switch (PictureKind.of(bytes)) {
            case JPEG -> jpeg(bytes);
            case PNG -> png(bytes);
            case TIFF -> photo(decoder.withWideReader(bytes, "tiff"), ExifReading.ofTiff(bytes));
            case WEBP -> webp(bytes);
            case BMP -> bmp(bytes);
            case HEIC -> jpeg(HeicConversion.toJpeg(bytes, name));
            case GIF -> throw refusal("it is a GIF picture; save it as PNG or JPEG.");
            case PDF -> throw refusal("it is a PDF; save the scan as PNG, TIFF or JPEG.");
            case TEXT -> throw refusal("it is a text file, not a picture.");
            case OTHER -> throw refusal("it is not a JPEG, PNG, TIFF, WebP or BMP picture.");
          };
      return new PhotoFile(name, sha256, photo, remarks);
    }

    private Photo jpeg(byte[] bytes) throws UnreadablePictureException {
      JpegSegments segments = JpegSegments.of(bytes);
      if (segments.scans() > MOST_SCANS) {
        throw refusal("its pixels come in " + segments.scans() + " scans, which no camera writes.");
      }
      PictureMetadata metadata = ExifReading.ofJpeg(bytes);
      if (segments.components() == 4) {
        return photo(decoder.withWideReader(bytes, "jpeg"), metadata);
      }
      PictureDecoder.Decoded decoded =
          decoder.upright(segments.plain(), "jpeg", metadata.orientation());
      return photo(decoded, metadata, segments.profile());
    }

    private Photo png(byte[] bytes) throws UnreadablePictureException {
      PngChunks chunks = PngChunks.of(bytes, name);
      PictureMetadata exif =
          chunks.exif().map(ExifReading::ofExifBlock).orElse(PictureMetadata.NONE);
      PictureMetadata metadata =
          chunks.resolution().isPresent() ? exif.withResolution(chunks.resolution()) : exif;
      PictureDecoder.Decoded still = decoder.withPlainReader(chunks.plain(), "png");
      return photo(
          new PictureDecoder.Decoded(still.image(), chunks.frames()), metadata, chunks.profile());
    }

    private Photo webp(byte[] bytes) throws UnreadablePictureException {
      WebpHeader header = WebpHeader.of(bytes);
      if (header.isCutShort()) {
        throw refusal("the file is cut short.");
      }
      if (header.isAnimated()) {
        throw refusal("it is an animated picture; save one picture of it as PNG or JPEG.");
      }
      return photo(decoder.withWideReader(bytes, "webp"), ExifReading.ofWebp(bytes));
    }

    private Photo bmp(byte[] bytes) throws UnreadablePictureException {
      BmpHeader header = BmpHeader.of(bytes);
      decoder.checkSize(header.widthPx(), header.heightPx());
      return photo(decoder.withPlainReader(bytes, "bmp"), header.metadata());
    }

    private Photo photo(PictureDecoder.Decoded decoded, PictureMetadata metadata) {
      return photo(decoded, metadata, EmbeddedProfile.in(decoded.image()));
    }

    private Photo photo(
        PictureDecoder.Decoded decoded, PictureMetadata metadata, Optional<byte[]> profile) {
      if (decoded.pictures() > 1) {
        remarks.add(
            name + " holds " + decoded.pictures() + " pictures; only the first is measured.");
      }
      Orientation orientation = metadata.orientation();
      int storedWidth = decoded.image().getWidth();
      int storedHeight = decoded.image().getHeight();
      int width = orientation.swapsAxes() ? storedHeight : storedWidth;
      int height = orientation.swapsAxes() ? storedWidth : storedHeight;
      byte[] rgb = SrgbSamples.of(decoded.image(), orientation);
      if (profile.isPresent() && decoded.image().getColorModel().getNumColorComponents() == 3) {
        Optional<ColourProfile> usable = ColourProfile.of(profile.get());
        usable.ifPresentOrElse(
            p -> p.convert(rgb, width),
            () ->
                remarks.add(
                    "The colour profile in "
                        + name
                        + " cannot be used; its colours are taken for sRGB."));
      }
      return new Photo(
          width,
          height,
          rgb,
          metadata.uprightResolution(),
          metadata.focalLength35mm(),
          metadata.fromCamera());
    }

    private UnreadablePictureException refusal(String reason) {
      return new UnreadablePictureException(name, reason);
    }
  }
}
