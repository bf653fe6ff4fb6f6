package wickmark.imaging.photo;

/**
 * What the file's metadata says of its resolution, in dots per inch, unjudged: many programs write
 * 72 or 96 when they do not know.
 */
public record Resolution(double dpiX, double dpiY) {
  public Resolution {
    if (!(dpiX > 0 && dpiY > 0 && dpiX < 1e6 && dpiY < 1e6)) {
      throw new IllegalArgumentException(
          "resolution must be positive dpi, was " + dpiX + " x " + dpiY);
    }
  }
}
