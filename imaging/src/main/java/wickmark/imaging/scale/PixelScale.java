package wickmark.imaging.scale;

import java.util.OptionalDouble;

/**
 * How photo pixels became millimetres.
 *
 * @param source where the scale comes from
 * @param millimetresPerPixel at the strip's centre, mean of along and across; empty without a scale
 * @param relativeUncertainty standard uncertainty of lengths along the lanes from the scale alone,
 *     over the length; empty without a scale
 */
public record PixelScale(
    Source source, OptionalDouble millimetresPerPixel, OptionalDouble relativeUncertainty) {

  /** Where a scale comes from. */
  public enum Source {
    RULER("ruler"),
    CARD("card"),
    RESOLUTION("resolution"),
    STRIP_SIZE("strip-size"),
    SPAN("span"),
    NONE("none");

    private final String word;

    Source(String word) {
      this.word = word;
    }

    /** The word in records. */
    public String word() {
      return word;
    }
  }
}
