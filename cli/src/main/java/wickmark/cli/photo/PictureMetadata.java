package wickmark.cli.photo;

import java.util.Optional;
import java.util.OptionalDouble;
import wickmark.imaging.photo.Resolution;

/**
 * What a picture file says about itself besides its pixels.
 *
 * @param resolution of the stored picture, before it is turned upright
 * @param focalLength35mm 35-mm-equivalent focal length in millimetres
 * @param fromCamera whether a camera wrote it
 */
record PictureMetadata(
    Orientation orientation,
    Optional<Resolution> resolution,
    OptionalDouble focalLength35mm,
    boolean fromCamera) {

  static final PictureMetadata NONE =
      new PictureMetadata(Orientation.NORMAL, Optional.empty(), OptionalDouble.empty(), false);

  PictureMetadata withResolution(Optional<Resolution> found) {
    return new PictureMetadata(orientation, found, focalLength35mm, fromCamera);
  }

  /** Returns the resolution of the upright picture. */
  Optional<Resolution> uprightResolution() {
    return orientation.swapsAxes()
        ? resolution.map(r -> new Resolution(r.dpiY(), r.dpiX()))
        : resolution;
  }

  /** Returns a resolution, or none where the two numbers cannot be one. */
  static Optional<Resolution> resolutionOf(double dpiX, double dpiY) {
    boolean possible = dpiX > 0 && dpiY > 0 && dpiX < 1e6 && dpiY < 1e6;
    return possible ? Optional.of(new Resolution(dpiX, dpiY)) : Optional.empty();
  }
}
