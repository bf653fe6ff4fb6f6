package wickmark.core.chromatogram;

import java.util.Locale;

/**
 * A doubt that the reader must see.
 *
 * @param message a sentence that names lane, spot and figures
 */
public record Caution(Kind kind, String message) {

  /** The kinds of doubt; their codes do not change. */
  public enum Kind {
    /** A spot lay beyond the front by no more than its uncertainty and was put on it. */
    SPOT_PUT_ON_FRONT,
    /** A spot lay below the baseline by no more than its uncertainty and was put on it. */
    SPOT_PUT_ON_BASELINE,
    /** A spot reaches over the front, and its centre lies beyond by more than its uncertainty. */
    SPOT_BEYOND_FRONT,
    /** A coloured spot lies wholly beyond the front or below the baseline and was left out. */
    SPOT_LEFT_OUT,
    /** The centres of a spot differ by more than its uncertainty. */
    SPOT_CENTRES_DIFFER;

    /** Returns the code that records use. */
    public String code() {
      return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
  }
}
