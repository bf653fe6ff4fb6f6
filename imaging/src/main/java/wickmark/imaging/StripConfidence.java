package wickmark.imaging;

import java.util.List;
import wickmark.imaging.lane.LaneTrack;
import wickmark.imaging.line.FittedLine;

/** How sure each finding is, from the evidence for it and its lead over the next hypothesis. */
final class StripConfidence {
  private StripConfidence() {}

  static StripReading.Confidence of(
      StripChoice.Candidate chosen, FittedLine baseline, FittedLine front, List<LaneTrack> lanes) {
    double laneSupport = lanes.stream().mapToDouble(LaneTrack::support).average().orElse(0);
    return new StripReading.Confidence(
        share(chosen.total() - StripSelection.LEAST_EVIDENCE, 1.5),
        share(chosen.layout().lead(), 0.4),
        baseline.certainty(),
        front.certainty() * share(chosen.layout().frontLead(), 0.25),
        laneSupport);
  }

  /** A lead over the next hypothesis as a number from 0 to 1. */
  private static double share(double lead, double half) {
    return lead <= 0 ? 0 : Double.isInfinite(lead) ? 1 : lead / (lead + half);
  }
}
