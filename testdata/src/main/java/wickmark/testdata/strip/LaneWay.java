package wickmark.testdata.strip;

import wickmark.testdata.truth.PointMm;
import wickmark.testdata.truth.SegmentMm;

/**
 * The way of one lane: from its origin square to the baseline up to the front, wandering sideways
 * on the way.
 *
 * @param frontPoint where the line square to the baseline meets the front
 */
record LaneWay(
    PointMm origin, PointMm frontPoint, double frontMm, double driftMm, SegmentMm baseline) {

  static LaneWay of(LanePlan lane, StripPlan plan, SegmentMm baseline) {
    SolventFront front = plan.lines().front();
    double width = plan.sheet().widthMm();
    PointMm origin = baseline.at(lane.xMm());
    double up = front.heightAt(origin.x(), width) - origin.y();
    for (int i = 0; i < 20; i++) {
      PointMm place = baseline.above(origin, up);
      up += front.heightAt(place.x(), width) - place.y();
    }
    return new LaneWay(origin, baseline.above(origin, up), up, lane.driftMm(), baseline);
  }

  /** Returns the middle of the lane at a share of the way to the front. */
  PointMm at(double share) {
    PointMm straight = baseline.above(origin, share * frontMm);
    double slope = StrictMath.toRadians(baseline.slopeDeg());
    double off = driftMm * share;
    return new PointMm(
        straight.x() + off * StrictMath.cos(slope), straight.y() + off * StrictMath.sin(slope));
  }
}
