package wickmark.imaging;

import java.util.List;
import wickmark.imaging.finding.Doubt;
import wickmark.imaging.straight.StraightStrip;

/** Whether the paper is so bright in the picture that pale dye on it cannot be seen. */
final class StripExposure {
  /**
   * Linear light of the value 253 of 255 (IEC 61966-2-1), from which a channel may be at its end.
   */
  private static final float CLIPPED = 0.982f;

  /**
   * Share of the paper with all three channels at their end from which it is too bright. A lamp's
   * gleam takes a fiftieth of a strip and tells of itself.
   */
  private static final double TOO_BRIGHT = 0.1;

  private static final String CODE = "over-exposed";

  private StripExposure() {}

  /**
   * Returns the doubt, if there is one.
   *
   * @param before doubts there are already: the card's white may have told of the same
   */
  static List<Doubt> doubts(StraightStrip strip, List<Doubt> before) {
    double share = clipped(strip);
    if (share <= TOO_BRIGHT || before.stream().anyMatch(doubt -> doubt.code().equals(CODE))) {
      return List.of();
    }
    return List.of(
        new Doubt(
            CODE,
            "Over "
                + Math.round(100 * share)
                + " % of the paper the picture is as white as it can be: pale spots and the rims of"
                + " others may be lost there. Take the picture again, a little darker."));
  }

  /** Whether so much of the paper is as white as can be that marks may be lost on it. */
  static boolean isTooBright(StraightStrip strip) {
    return clipped(strip) > TOO_BRIGHT;
  }

  /** Whether paper with so much light in its darkest channel, linear, is as white as can be. */
  static boolean isAtEnd(double light) {
    return light >= CLIPPED;
  }

  private static double clipped(StraightStrip strip) {
    float[] red = strip.light().red().cells();
    float[] green = strip.light().green().cells();
    float[] blue = strip.light().blue().cells();
    float[] paper = strip.paper().cells();
    int all = 0;
    int clipped = 0;
    for (int i = 0; i < paper.length; i++) {
      if (paper[i] > 0) {
        all++;
        clipped += Math.min(red[i], Math.min(green[i], blue[i])) >= CLIPPED ? 1 : 0;
      }
    }
    return clipped / (double) Math.max(1, all);
  }
}
