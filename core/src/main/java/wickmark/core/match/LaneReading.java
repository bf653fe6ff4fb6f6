package wickmark.core.match;

import wickmark.core.chromatogram.Lane;

/** What the number of spots in a lane says, in words. */
public final class LaneReading {
  private LaneReading() {}

  /** Returns a phrase such as "a mixture of at least 3 dyes". */
  public static String of(Lane lane) {
    return of(LaneSignature.of(lane));
  }

  static String of(LaneSignature lane) {
    int spots = lane.moved().size();
    String left = lane.hasResidue() ? "; some colour stayed at the origin" : "";
    if (spots == 0) {
      return lane.hasResidue()
          ? "all of the colour stayed at the origin: this solvent does not move it"
          : "no spot found";
    }
    if (spots == 1) {
      return "one spot in this solvent: consistent with a single dye" + left;
    }
    return "a mixture of at least " + spots + " dyes" + left;
  }
}
