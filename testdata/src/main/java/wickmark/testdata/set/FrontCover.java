package wickmark.testdata.set;

import java.util.List;
import java.util.OptionalDouble;
import wickmark.testdata.strip.LanePlan;
import wickmark.testdata.strip.StripPlan;

/**
 * Where something may lie over a strip's front without hiding a spot: between two lanes. Places are
 * relative to the sheet's middle.
 */
final class FrontCover {
  private final StripPlan strip;

  FrontCover(StripPlan strip) {
    this.strip = strip;
  }

  /** Returns the middle between the two neighbours whose spots end farthest below the front. */
  double acrossMm() {
    List<LanePlan> lanes = strip.lanes();
    double best = 0.5 * strip.sheet().widthMm();
    double lowest = Double.POSITIVE_INFINITY;
    for (int i = 0; i + 1 < lanes.size(); i++) {
      double highest = Math.max(highestRf(lanes.get(i)), highestRf(lanes.get(i + 1)));
      if (highest < lowest) {
        lowest = highest;
        best = (atFront(lanes.get(i)) + atFront(lanes.get(i + 1))) / 2;
      }
    }
    return best - strip.sheet().widthMm() / 2;
  }

  private static double atFront(LanePlan lane) {
    return lane.xMm() + lane.driftMm();
  }

  private static double highestRf(LanePlan lane) {
    OptionalDouble highest = lane.spots().stream().mapToDouble(spot -> spot.rf()).max();
    return highest.orElse(0);
  }

  /** Returns the front's height there. */
  double alongMm() {
    double width = strip.sheet().widthMm();
    return strip.lines().front().heightAt(acrossMm() + width / 2, width)
        - strip.sheet().heightMm() / 2;
  }
}
