package wickmark.core.chromatogram;

import java.util.Locale;

/** What is special about a spot. */
public enum SpotFlag {
  /** Its dye trails towards the baseline, so that its centres part. */
  TAILING,
  /** Another spot lies partly over it and changes its colour and shape. */
  OVERLAPPED,
  /** So pale that it may be missed elsewhere. */
  FAINT,
  /** It reaches the front. */
  AT_FRONT,
  /** Dye that has not left the place it was put on. */
  AT_ORIGIN,
  /** It reaches the edge of the paper. */
  AT_EDGE,
  /** A person set its centre, which is then all three of its centres. */
  BY_HAND;

  /** Returns the word that records use. */
  public String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
