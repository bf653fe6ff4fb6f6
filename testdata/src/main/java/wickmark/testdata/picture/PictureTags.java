package wickmark.testdata.picture;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What a picture file says besides its pixels.
 *
 * @param orientation EXIF orientation, 1 to 8: how the stored pixels must be turned to be upright
 * @param dpi resolution
 * @param focalLength35mm 35-mm-equivalent focal length in mm, where a camera writes it
 */
public record PictureTags(int orientation, Optional<Double> dpi, OptionalDouble focalLength35mm) {
  public PictureTags {
    if (orientation < 1 || orientation > 8) {
      throw new IllegalArgumentException("EXIF orientation must be 1 to 8, was " + orientation);
    }
  }

  public static PictureTags none() {
    return new PictureTags(1, Optional.empty(), OptionalDouble.empty());
  }

  public static PictureTags dpi(double dpi) {
    return new PictureTags(1, Optional.of(dpi), OptionalDouble.empty());
  }

  /**
   * Returns the pixels as they must be stored so that a reader that obeys the orientation sees the
   * picture upright.
   */
  Picture stored(Picture upright) {
    return switch (orientation) {
      case 2 -> upright.mirrored();
      case 3 -> upright.turned(2);
      case 4 -> upright.mirrored().turned(2);
      case 5 -> upright.turned(1).mirrored();
      case 6 -> upright.turned(3);
      case 7 -> upright.turned(3).mirrored();
      case 8 -> upright.turned(1);
      default -> upright;
    };
  }
}
