package wickmark.imaging.lane;

import java.util.ArrayList;
import java.util.List;

/**
 * One sample's place on the baseline.
 *
 * @param originX column on the baseline, cells
 * @param left column from which on stain belongs to this lane
 * @param right column up to which it does
 * @param support how well writing, marks and stain agree on it, 0 to 1
 * @param countLead how much better the evidence is explained with this number of lanes on the strip
 *     than with another; infinite where the person says it and no other explains it better, below 0
 *     where another does
 */
public record LaneTrack(
    double originX, double left, double right, double support, double countLead) {
  /** Lead of the number of lanes at which it is as sure as not. */
  private static final double HALF_LEAD = 0.3;

  /** A lane that the person says. */
  public static LaneTrack said(double originX) {
    return new LaneTrack(originX, originX, originX, 1, Double.POSITIVE_INFINITY);
  }

  /** A lane that was found. */
  static LaneTrack found(double originX, double support, double countLead) {
    return new LaneTrack(originX, originX, originX, support, countLead);
  }

  /**
   * The same lanes with their bounds: stain belongs to the lane whose origin is nearer.
   *
   * @param lanes from left to right
   * @param width of the strip, cells
   */
  public static List<LaneTrack> bounded(List<LaneTrack> lanes, double width) {
    List<LaneTrack> out = new ArrayList<>();
    for (int k = 0; k < lanes.size(); k++) {
      LaneTrack lane = lanes.get(k);
      double left = k == 0 ? 0 : (lanes.get(k - 1).originX() + lane.originX()) / 2;
      double right =
          k == lanes.size() - 1 ? width : (lane.originX() + lanes.get(k + 1).originX()) / 2;
      out.add(lane.between(left, right));
    }
    return List.copyOf(out);
  }

  /** The same lane with stain from one column to another. */
  public LaneTrack between(double from, double to) {
    return new LaneTrack(originX, from, to, support, countLead);
  }

  /** How sure it is that one sample was put there, 0 to 1. */
  public double confidence() {
    return support * counted();
  }

  private double counted() {
    if (Double.isInfinite(countLead)) {
      return 1;
    }
    // The number that was said is right; what speaks for another says that a lane was misplaced.
    return countLead < 0
        ? HALF_LEAD / (HALF_LEAD - countLead)
        : countLead / (countLead + HALF_LEAD);
  }
}
