package wickmark.core.chromatogram;

import java.util.Locale;

/** What a lane's sample is there for. */
public enum LaneRole {
  /** A sample of known name. */
  REFERENCE,
  /** A sample to explain. */
  UNKNOWN;

  /** Returns the word that records use. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }
}
