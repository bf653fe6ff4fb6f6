package wickmark.imaging;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import wickmark.imaging.finding.Doubt;

/**
 * A doubt for each finding whose confidence lies below the level from which it is believed. The
 * levels lie where right and wrong findings part over drawn pictures of many kinds; the command
 * {@code WarningTable} among the command line's tests counts both for a folder of pictures.
 */
final class FindingDoubts {
  private static final double STRIP = 0.4;
  private static final double BOTTOM = 0.25;
  private static final double SCALE = 0.7;
  private static final double BASELINE = 0.55;
  private static final double FRONT = 0.62;
  private static final double LANES = 0.6;

  private FindingDoubts() {}

  /** Whether a front of this confidence is doubted. */
  static boolean doubtsFront(double confidence) {
    return confidence < FRONT;
  }

  static List<Doubt> of(StripReading.Confidence sure) {
    List<Doubt> doubts = new ArrayList<>();
    add(
        doubts,
        "strip-unsure",
        sure.strip(),
        STRIP,
        "That this sheet is the strip",
        "Look at its outline in the report; if it is not the strip, say --corners.");
    add(
        doubts,
        "bottom-unsure",
        sure.orientation(),
        bottomLevel(sure),
        "Which end of the strip is the bottom",
        "Look whether the baseline in the report is the one the samples were put on; if not, say"
            + " --bottom.");
    add(
        doubts,
        "scale-unsure",
        sure.scale(),
        SCALE,
        "How long a millimetre is",
        "Compare the strip's width in the report with its true one; if it is wrong, say --span or"
            + " --strip-height. A ruler close beside the strip with both its edges in the picture, taken"
            + " from straight above, leaves less doubt. Rf does not depend on it.");
    if (!hangsOnBottom(sure.baseline(), sure)) {
      add(
          doubts,
          "baseline-unsure",
          sure.baseline(),
          BASELINE,
          "Where the baseline runs",
          "Look at it in the report; if it is wrong, mark it with --baseline.");
    }
    if (!hangsOnBottom(sure.front(), sure)) {
      add(
          doubts,
          "front-unsure",
          sure.front(),
          FRONT,
          "Where the solvent front runs",
          "Look at it in the report; if it is wrong, mark it with --front.");
    }
    add(
        doubts,
        "lanes-unsure",
        sure.lanes(),
        LANES,
        "How many lanes there are and where",
        "Writing, marks on the baseline and stain do not all tell of each lane, or of another number"
            + " of lanes nearly as well. Look at their origins in the report; say --lane-count if"
            + " there are more or fewer, --origin for one that is wrong.");
    return doubts;
  }

  /**
   * Whether a line is doubted for no other reason than that the other end may be the bottom: its
   * confidence is then that one's, and what to look at, and to say, is the bottom.
   */
  private static boolean hangsOnBottom(double line, StripReading.Confidence sure) {
    return line == sure.orientation() && sure.orientation() < sure.strip();
  }

  private static double bottomLevel(StripReading.Confidence sure) {
    double forBaseline = hangsOnBottom(sure.baseline(), sure) ? BASELINE : BOTTOM;
    double forFront = hangsOnBottom(sure.front(), sure) ? FRONT : BOTTOM;
    return Math.max(forBaseline, forFront);
  }

  private static void add(
      List<Doubt> doubts, String code, double is, double level, String what, String advice) {
    if (is < level) {
      doubts.add(
          new Doubt(
              code,
              String.format(
                  Locale.ROOT,
                  "%s is not sure: %.2f on a scale from 0 to 1, where %.2f is enough. %s",
                  what,
                  is,
                  level,
                  advice)));
    }
  }
}
