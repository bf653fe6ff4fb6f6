package wickmark.testdata.strip;

import java.util.List;

/**
 * A developed strip as it is to be painted.
 *
 * @param lanes from the left
 * @param marks pencil marks other than baseline and front
 * @param blemishes what else is on the paper
 * @param seed chance of the paper's texture, the hand and the dyes' unevenness
 */
public record StripPlan(
    Sheet sheet,
    Lines lines,
    List<LanePlan> lanes,
    List<PencilMark> marks,
    List<Blemish> blemishes,
    long seed) {
  public StripPlan {
    lanes = List.copyOf(lanes);
    marks = List.copyOf(marks);
    blemishes = List.copyOf(blemishes);
  }

  /** Baseline and front. */
  public record Lines(Baseline baseline, SolventFront front) {}

  /**
   * Returns a builder for a strip of that size on filter paper with a straight baseline and front.
   */
  public static StripPlanBuilder sheet(double widthMm, double heightMm) {
    return new StripPlanBuilder(widthMm, heightMm);
  }
}
