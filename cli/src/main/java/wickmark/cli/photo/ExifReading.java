package wickmark.cli.photo;

import com.drew.imaging.jpeg.JpegMetadataReader;
import com.drew.imaging.tiff.TiffMetadataReader;
import com.drew.imaging.webp.WebpMetadataReader;
import com.drew.lang.ByteArrayReader;
import com.drew.metadata.Directory;
import com.drew.metadata.Metadata;
import com.drew.metadata.exif.ExifDirectoryBase;
import com.drew.metadata.exif.ExifIFD0Directory;
import com.drew.metadata.exif.ExifReader;
import com.drew.metadata.exif.ExifSubIFDDirectory;
import com.drew.metadata.jfif.JfifDirectory;
import com.drew.metadata.jfif.JfifReader;
import java.io.ByteArrayInputStream;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import wickmark.imaging.photo.Resolution;

/** Reads EXIF, JFIF and TIFF tags. A block that cannot be read says nothing: it is no error. */
final class ExifReading {
  private static final double CENTIMETRES_PER_INCH = 2.54;
  private static final int[] CAMERA_TAGS = {
    ExifDirectoryBase.TAG_EXPOSURE_TIME,
    ExifDirectoryBase.TAG_FNUMBER,
    ExifDirectoryBase.TAG_ISO_EQUIVALENT,
    ExifDirectoryBase.TAG_FOCAL_LENGTH,
    ExifDirectoryBase.TAG_35MM_FILM_EQUIV_FOCAL_LENGTH
  };

  private interface Source {
    Metadata read() throws Exception;
  }

  private ExifReading() {}

  static PictureMetadata ofJpeg(byte[] file) {
    // Only these two readers: the others unpack things nobody here asks for.
    return of(
        () ->
            JpegMetadataReader.readMetadata(
                new ByteArrayInputStream(file), List.of(new ExifReader(), new JfifReader())),
        true);
  }

  static PictureMetadata ofTiff(byte[] file) {
    // Every TIFF carries an orientation, a scanner's too, so it does not speak for a camera.
    return of(() -> TiffMetadataReader.readMetadata(new ByteArrayInputStream(file)), false);
  }

  static PictureMetadata ofWebp(byte[] file) {
    return of(() -> WebpMetadataReader.readMetadata(new ByteArrayInputStream(file)), true);
  }

  /** Reads a bare EXIF block, as a PNG carries it in its eXIf chunk. */
  static PictureMetadata ofExifBlock(byte[] block) {
    return of(
        () -> {
          Metadata metadata = new Metadata();
          new ExifReader().extract(new ByteArrayReader(block), metadata);
          return metadata;
        },
        true);
  }

  private static PictureMetadata of(Source source, boolean orientationMeansCamera) {
    Metadata metadata;
    try {
      metadata = source.read();
    } catch (Exception | StackOverflowError e) {
      return PictureMetadata.NONE;
    }
    @Nullable Directory main = metadata.getFirstDirectoryOfType(ExifIFD0Directory.class);
    @Nullable Integer tag = integer(main, ExifDirectoryBase.TAG_ORIENTATION);
    boolean camera = orientationMeansCamera && tag != null;
    OptionalDouble focalLength = OptionalDouble.empty();
    for (ExifSubIFDDirectory exif : metadata.getDirectoriesOfType(ExifSubIFDDirectory.class)) {
      for (int cameraTag : CAMERA_TAGS) {
        camera |= exif.containsTag(cameraTag);
      }
      @Nullable Double equivalent =
          exif.getDoubleObject(ExifDirectoryBase.TAG_35MM_FILM_EQUIV_FOCAL_LENGTH);
      if (equivalent != null && equivalent >= 5 && equivalent <= 2000 && focalLength.isEmpty()) {
        focalLength = OptionalDouble.of(equivalent);
      }
    }
    return new PictureMetadata(
        Orientation.ofTag(tag == null ? 1 : tag),
        exifResolution(main).or(() -> jfifResolution(metadata)),
        focalLength,
        camera);
  }

  private static Optional<Resolution> exifResolution(@Nullable Directory main) {
    if (main == null) {
      return Optional.empty();
    }
    @Nullable Double x = main.getDoubleObject(ExifDirectoryBase.TAG_X_RESOLUTION);
    @Nullable Double y = main.getDoubleObject(ExifDirectoryBase.TAG_Y_RESOLUTION);
    @Nullable Integer unit = integer(main, ExifDirectoryBase.TAG_RESOLUTION_UNIT);
    if (x == null || y == null) {
      return Optional.empty();
    }
    // TIFF 6.0: unit 1 = none, 2 = inch (also the default), 3 = centimetre.
    return resolution(x, y, unit == null ? 2 : unit, 3);
  }

  private static Optional<Resolution> jfifResolution(Metadata metadata) {
    @Nullable Directory jfif = metadata.getFirstDirectoryOfType(JfifDirectory.class);
    @Nullable Integer x = integer(jfif, JfifDirectory.TAG_RESX);
    @Nullable Integer y = integer(jfif, JfifDirectory.TAG_RESY);
    @Nullable Integer unit = integer(jfif, JfifDirectory.TAG_UNITS);
    if (x == null || y == null || unit == null) {
      return Optional.empty();
    }
    // JFIF 1.02: unit 0 = aspect ratio only, 1 = inch, 2 = centimetre.
    return unit == 0 ? Optional.empty() : resolution(x, y, unit + 1, 3);
  }

  private static Optional<Resolution> resolution(double x, double y, int unit, int centimetreUnit) {
    if (unit != 2 && unit != centimetreUnit) {
      return Optional.empty();
    }
    double factor = unit == centimetreUnit ? CENTIMETRES_PER_INCH : 1;
    return PictureMetadata.resolutionOf(x * factor, y * factor);
  }

  private static @Nullable Integer integer(@Nullable Directory directory, int tag) {
    return directory == null ? null : directory.getInteger(tag);
  }
}
