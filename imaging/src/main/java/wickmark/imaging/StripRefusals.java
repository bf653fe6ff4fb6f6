package wickmark.imaging;

import wickmark.imaging.finding.Refusal;

/** Why a strip cannot be measured, in words that say what to do. */
final class StripRefusals {
  private StripRefusals() {}

  static StripOutcome noStrip() {
    return refused(
        Refusal.Reason.NO_STRIP,
        "No chromatography strip was found: no sheet of paper with a pencil baseline across it."
            + " Take the picture from above with the whole strip in it, on a desk of another"
            + " colour, or say its corners with --corners.");
  }

  static StripOutcome besideStrip(String option) {
    return refused(
        Refusal.Reason.NO_STRIP,
        "What was said with "
            + option
            + " lies on no strip that was found. Check the places (pixels of the upright picture,"
            + " x to the right, y down), or say the strip's corners with --corners.");
  }

  static StripOutcome noBaseline(ReadingRequest request) {
    return refused(
        Refusal.Reason.NO_BASELINE,
        request.lines().baseline().isPresent() || request.lines().front().isPresent()
            ? "The baseline and front as they were said do not fit the strip: both must run across"
                + " it, the front on the other side of the spots from the bottom. Check the places"
                + " and --bottom."
            : "No baseline was found across the strip. Mark it with --baseline X1,Y1,X2,Y2 (two of"
                + " its points, in pixels of the picture).");
  }

  static StripOutcome noFront() {
    return refused(
        Refusal.Reason.NO_FRONT,
        "No solvent front was found between the spots and the strip's upper edge: no pencil line,"
            + " no tide mark. Without a front there is no Rf. If you can see it, mark it with"
            + " --front X1,Y1,X2,Y2; if the solvent ran off the top, the run must be repeated.");
  }

  static StripOutcome dyeBeyondFront() {
    return refused(
        Refusal.Reason.NO_FRONT,
        "No solvent front was found: dye has run further than what looks most like one. Without a"
            + " front there is no Rf. If you can see it, mark it with --front X1,Y1,X2,Y2; if the"
            + " solvent ran off the top, the run must be repeated.");
  }

  static StripOutcome noBottom() {
    return refused(
        Refusal.Reason.NOT_CERTAIN,
        "Which end of the strip is the bottom cannot be told: the two lines across it look alike,"
            + " with no names below one of them and no dots on it, and upside down every Rf would"
            + " be wrong. Say --bottom up, down, left or right: where in the picture the end is"
            + " that hung in the solvent.");
  }

  static StripOutcome noLanes() {
    return refused(
        Refusal.Reason.NO_LANES,
        "No lanes were found: no stain above the baseline and no writing below it. Say where a"
            + " sample was put with --origin NAME=X,Y and its name with --lanes.");
  }

  static StripOutcome lanesNotCertain(ReadingRequest request) {
    return refused(
        Refusal.Reason.NOT_CERTAIN,
        request.lanes().isPresent()
            ? "The "
                + request.lanes().getAsInt()
                + " lanes that were said are not all found: writing, marks on the baseline and stain"
                + " speak for another number or other places, and with one lane missed the others"
                + " would bear their neighbours' names. Check --lanes or --lane-count; if it is right,"
                + " say where the sample was put of each lane that is hard to see, with --origin"
                + " NAME=X,Y."
            : "How many lanes there are and where cannot be told: writing, marks on the baseline and"
                + " stain contradict one another. Say --lanes or --lane-count, and where the sample"
                + " was put of each lane that is hard to see, with --origin NAME=X,Y.");
  }

  static StripOutcome noSpots() {
    return refused(
        Refusal.Reason.NO_SPOTS,
        "No spot was found between baseline and front: the strip looks unused, or nothing moved."
            + " If there are faint spots, take the picture in brighter, even light and closer.");
  }

  static StripOutcome lanesOutOfOrder() {
    return refused(
        Refusal.Reason.NO_LANES,
        "The origins that were said lie in one place, or in another order than the lanes' names,"
            + " which run from left to right with the baseline at the bottom. Check --lanes and"
            + " --origin.");
  }

  /**
   * What to say besides where there is a card and no strip lies wholly on its place: across the
   * place's edge white paper runs from grey onto white, and its edges are hardly seen.
   */
  static StripOutcome withCardFree(StripOutcome outcome) {
    return withMore(
        outcome,
        " The card is in the picture, but no strip lies wholly on its grey place: if yours lies"
            + " across the edge of it, lay it on the grey and take the picture again.");
  }

  /** What to say besides where the paper is as white as the picture can be. */
  static StripOutcome withTooBright(StripOutcome outcome) {
    return withMore(
        outcome,
        " The paper is as bright as the picture can be, so that pale lines and spots may be lost:"
            + " perhaps it is there when the picture is taken a little darker.");
  }

  private static StripOutcome withMore(StripOutcome outcome, String more) {
    return outcome.fold(
        reading -> outcome, refusal -> refused(refusal.reason(), refusal.message() + more));
  }

  private static StripOutcome refused(Refusal.Reason reason, String message) {
    return new StripOutcome.Refused(new Refusal(reason, message));
  }
}
