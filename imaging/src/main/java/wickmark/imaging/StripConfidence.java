package wickmark.imaging;

import java.util.List;
import wickmark.imaging.lane.LaneTrack;
import wickmark.imaging.line.FittedLine;

/**
 * How sure each finding is, 0 to 1, from the evidence for it and its lead over the next hypothesis.
 * What the person said is sure.
 */
final class StripConfidence {
  /** Evidence above the least at which a strip is as sure as not. */
  private static final double HALF_EVIDENCE = 1;

  /** Lead over the other end being below at which the bottom is as sure as not. */
  private static final double HALF_LEAD = 0.4;

  /**
   * How much the lanes, found later and finer, add to that lead: on a strip that lies the wrong way
   * round there is no writing where lanes begin.
   */
  private static final double LANES_WEIGHT = 2;

  private static final double HALF_SUPPORT = 0.75;

  private static final double HALF_FRONT_LEAD = 0.25;

  private StripConfidence() {}

  static StripReading.Confidence of(
      ReadingRequest request,
      StripChoice.Candidate chosen,
      FittedLine baseline,
      FittedLine front,
      List<LaneTrack> lanes) {
    boolean placed = !request.strip().corners().isEmpty();
    double evidence = chosen.total() - StripSelection.LEAST_EVIDENCE;
    double support = lanes.stream().mapToDouble(LaneTrack::support).min().orElse(0);
    double lead = chosen.layout().lead() + LANES_WEIGHT * (support - HALF_SUPPORT);
    return new StripReading.Confidence(
        placed ? 1 : share(evidence, HALF_EVIDENCE),
        request.strip().bottom().isPresent() ? 1 : share(lead, HALF_LEAD),
        chosen.plane().confidence(),
        baseline.certainty(),
        front.certainty() * share(chosen.layout().frontLead(), HALF_FRONT_LEAD),
        lanes.stream().mapToDouble(LaneTrack::confidence).min().orElse(0));
  }

  /** A lead over the next hypothesis as a number from 0 to 1. */
  private static double share(double lead, double half) {
    return lead <= 0 ? 0 : Double.isInfinite(lead) ? 1 : lead / (lead + half);
  }
}
