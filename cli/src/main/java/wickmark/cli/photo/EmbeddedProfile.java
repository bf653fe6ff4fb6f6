package wickmark.cli.photo;

import java.awt.color.ColorSpace;
import java.awt.color.ICC_ColorSpace;
import java.awt.image.BufferedImage;
import java.util.Optional;

/** The profile that a reader has put on the picture it decoded. */
final class EmbeddedProfile {
  private EmbeddedProfile() {}

  /**
   * Returns an RGB profile other than Java's own sRGB; other colour spaces are converted already.
   */
  static Optional<byte[]> in(BufferedImage image) {
    ColorSpace space = image.getColorModel().getColorSpace();
    if (space.isCS_sRGB()
        || space.getType() != ColorSpace.TYPE_RGB
        || !(space instanceof ICC_ColorSpace profiled)) {
      return Optional.empty();
    }
    return Optional.of(profiled.getProfile().getData());
  }
}
