package wickmark.imaging.spot;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import wickmark.imaging.lane.DyeMap;
import wickmark.imaging.lane.LaneTrack;
import wickmark.imaging.lane.OriginZone;
import wickmark.imaging.line.FittedLine;
import wickmark.imaging.paper.DensityMap;
import wickmark.imaging.raster.Raster;

/** A strip with one lane, its front 5 mm below the upper edge. */
final class OneLane {
  static final int CELLS_PER_MM = 8;

  private OneLane() {}

  /**
   * Returns the only spot that is found.
   *
   * @param density red, green and blue
   * @param noise standard deviation of a cell
   * @param originX column of the lane, cells
   * @param baselineMm from the upper edge
   */
  static SpotRegion spot(Raster[] density, double noise, double originX, double baselineMm) {
    int width = density[0].width();
    int height = density[0].height();
    Raster paper = new Raster(width, height);
    Arrays.fill(paper.cells(), 1);
    DensityMap map =
        new DensityMap(
            density,
            paper,
            new Raster(width, height),
            CELLS_PER_MM,
            new double[] {noise, noise, noise});
    FittedLine baseline = line(baselineMm, width);
    FittedLine front = line(5, width);
    List<List<SpotRegion>> found =
        SpotFinder.find(
            map,
            baseline,
            front,
            DyeMap.of(map, baseline, front),
            new OriginZone(2.2, false),
            List.of(LaneTrack.said(originX).between(0, width)));
    assertThat(found.get(0)).hasSize(1);
    return found.get(0).get(0);
  }

  private static FittedLine line(double fromTopMm, int width) {
    double y = fromTopMm * CELLS_PER_MM;
    return FittedLine.byHand(new double[] {0, y}, new double[] {width, y}, 0.2, width);
  }
}
