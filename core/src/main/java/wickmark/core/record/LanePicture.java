package wickmark.core.record;

import java.util.List;

/**
 * Where a measured lane lies in the photo, in photo pixels.
 *
 * @param originPx x and y of the lane's place on the baseline
 * @param confidence how sure it is that one sample was put there, 0 to 1
 * @param spots in the order of {@link wickmark.core.chromatogram.LaneEvidence#spots}
 */
public record LanePicture(List<Double> originPx, double confidence, List<SpotPicture> spots) {

  /** Keeps copies of the lists. */
  public LanePicture {
    if (!(confidence >= 0 && confidence <= 1)) {
      throw new IllegalArgumentException("confidence is between 0 and 1, was " + confidence);
    }
    originPx = List.copyOf(originPx);
    spots = List.copyOf(spots);
  }

  /**
   * Where a spot lies.
   *
   * @param centrePx x and y of its centre
   * @param outlinePx its visible extent as a closed polygon
   */
  public record SpotPicture(List<Double> centrePx, List<List<Double>> outlinePx) {

    /** Keeps copies of the lists. */
    public SpotPicture {
      centrePx = List.copyOf(centrePx);
      outlinePx = outlinePx.stream().map(List::copyOf).toList();
    }
  }
}
