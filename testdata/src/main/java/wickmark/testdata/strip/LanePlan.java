package wickmark.testdata.strip;

import java.util.List;
import wickmark.testdata.truth.Role;

/**
 * A lane to paint.
 *
 * @param xMm where the sample is put on the baseline, from the strip's left edge
 * @param driftMm how far the lane has wandered to the right when it reaches the front
 */
public record LanePlan(String name, Role role, double xMm, double driftMm, List<SpotPlan> spots) {
  public LanePlan {
    spots = List.copyOf(spots);
  }

  public static LanePlan reference(String name, double xMm, SpotPlan... spots) {
    return new LanePlan(name, Role.REFERENCE, xMm, 0, List.of(spots));
  }

  public static LanePlan unknown(String name, double xMm, SpotPlan... spots) {
    return new LanePlan(name, Role.UNKNOWN, xMm, 0, List.of(spots));
  }

  public LanePlan drifting(double mm) {
    return new LanePlan(name, role, xMm, mm, spots);
  }
}
