package wickmark.testdata.truth;

import java.util.List;

/**
 * One sample's lane.
 *
 * @param origin where the sample was put, near the baseline
 * @param frontPoint where the front crosses the lane's way, which is square to the baseline
 * @param frontMm distance from the baseline to that point
 * @param spots from the baseline up
 */
public record LaneTruth(
    String name,
    Role role,
    PointMm origin,
    PointMm frontPoint,
    double frontMm,
    List<SpotTruth> spots) {
  public LaneTruth {
    spots = List.copyOf(spots);
  }
}
