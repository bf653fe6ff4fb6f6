package wickmark.imaging;

import java.util.List;
import java.util.OptionalDouble;
import org.apache.commons.math3.special.Erf;
import wickmark.imaging.lane.LaneTrack;
import wickmark.imaging.line.FittedLine;
import wickmark.imaging.line.Layout;
import wickmark.imaging.line.LineKind;

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

  private static final double HALF_BASELINE_LEAD = 0.25;

  private static final double HALF_FRONT_LEAD = 0.25;

  /** Lengths that are off by a larger part are wrong. */
  private static final double RIGHT_SCALE = 0.01;

  private StripConfidence() {}

  /**
   * The confidences of all findings.
   *
   * @param relativeScale standard uncertainty of the scale over the scale; empty without a scale
   */
  static StripReading.Confidence of(
      ReadingRequest request,
      StripChoice.Candidate chosen,
      FittedLine baseline,
      FittedLine front,
      List<LaneTrack> lanes,
      OptionalDouble relativeScale) {
    boolean placed = !request.strip().corners().isEmpty();
    double evidence = chosen.total() - StripSelection.LEAST_EVIDENCE;
    double support = lanes.stream().mapToDouble(LaneTrack::support).min().orElse(0);
    double lead = chosen.layout().lead() + LANES_WEIGHT * (support - HALF_SUPPORT);
    double strip = placed ? 1 : share(evidence, HALF_EVIDENCE);
    double bottom = request.strip().bottom().isPresent() ? 1 : share(lead, HALF_LEAD);
    // On another sheet, or with the other end below, these lines would be others.
    double ground = Math.min(strip, bottom);
    return new StripReading.Confidence(
        strip,
        bottom,
        relativeScale.isPresent()
            ? chosen.plane().confidence() * within(RIGHT_SCALE, relativeScale.getAsDouble())
            : 1,
        onGround(
            baseline, line(baseline, chosen.layout().baselineLead(), HALF_BASELINE_LEAD), ground),
        onGround(front, ofFront(chosen.layout(), front), ground),
        lanes.stream().mapToDouble(LaneTrack::confidence).min().orElse(0));
  }

  /** How sure it is that this line, and no other, is the front of a strip that lies so. */
  static double ofFront(Layout layout, FittedLine front) {
    return line(front, layout.frontLead(), HALF_FRONT_LEAD);
  }

  private static double line(FittedLine line, double lead, double half) {
    return line.kind() == LineKind.BY_HAND ? 1 : line.certainty() * share(lead, half);
  }

  /** A line that was found is no surer than what it was found on. */
  private static double onGround(FittedLine line, double alone, double ground) {
    return line.kind() == LineKind.BY_HAND ? alone : Math.min(alone, ground);
  }

  /** The chance that a normally distributed error lies within a bound. */
  static double within(double bound, double sigma) {
    return Erf.erf(bound / sigma / Math.sqrt(2));
  }

  /** A lead over the next hypothesis as a number from 0 to 1. */
  private static double share(double lead, double half) {
    return lead <= 0 ? 0 : Double.isInfinite(lead) ? 1 : lead / (lead + half);
  }
}
