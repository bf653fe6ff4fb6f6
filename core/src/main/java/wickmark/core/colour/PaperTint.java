package wickmark.core.colour;

/** What people call the colour of blank paper. */
public final class PaperTint {
  /** Chroma below which paper passes for white: filter paper has about 4 (common practice). */
  private static final double WHITE_CHROMA = 5;

  /** Chroma up to which yellowish paper is called cream. */
  private static final double CREAM_CHROMA = 25;

  private static final double CREAM_FROM_DEGREES = 55;
  private static final double CREAM_TO_DEGREES = 115;

  private PaperTint() {}

  /**
   * Returns the word for paper of a colour. Its lightness has no say: how much light falls on it is
   * not known.
   *
   * @param paper with a known white as the white
   */
  public static String of(LabColour paper) {
    double hue = paper.hueDegrees();
    if (paper.chroma() < WHITE_CHROMA) {
      return "white";
    }
    return paper.chroma() < CREAM_CHROMA && hue >= CREAM_FROM_DEGREES && hue <= CREAM_TO_DEGREES
        ? "cream"
        : "tinted " + ColourName.of(paper).word();
  }
}
