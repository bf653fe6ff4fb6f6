package wickmark.cli.photo;

/**
 * The picture reader under a search that is guided by coverage; DEVELOPERS.md says how to run it.
 */
public final class PictureFuzz {
  private PictureFuzz() {}

  /** Any bytes are a picture or are refused in one sentence. */
  public static void fuzzerTestOneInput(byte[] data) {
    try {
      PhotoFile file = PhotoFile.of("strip.x", data);
      if (file.photo().widthPx() < 1 || file.photo().heightPx() < 1) {
        throw new IllegalStateException("a picture without pixels");
      }
    } catch (UnreadablePictureException e) {
      if (!e.getMessage().startsWith("strip.x cannot be read: ") || e.getMessage().contains("\n")) {
        throw new IllegalStateException("not one sentence: " + e.getMessage(), e);
      }
    }
  }
}
