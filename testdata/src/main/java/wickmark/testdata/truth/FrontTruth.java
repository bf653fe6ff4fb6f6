package wickmark.testdata.truth;

import java.util.List;

/**
 * The solvent front.
 *
 * @param mark "pencil", "ticks" (two pencil ticks at the edges) or "none" (only what the solvent
 *     left)
 * @param points the front from the left to the right edge; empty where it ran off the top
 */
public record FrontTruth(String mark, List<PointMm> points) {
  public FrontTruth {
    points = List.copyOf(points);
  }

  public boolean present() {
    return !points.isEmpty();
  }
}
