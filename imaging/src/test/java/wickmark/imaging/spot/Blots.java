package wickmark.imaging.spot;

import java.util.Arrays;
import java.util.List;
import wickmark.imaging.lane.DyeMap;
import wickmark.imaging.lane.LaneTrack;
import wickmark.imaging.lane.OriginZone;
import wickmark.imaging.line.FittedLine;
import wickmark.imaging.paper.DensityMap;
import wickmark.imaging.raster.Raster;

/** A sheet of 40 mm × 66 mm with round blots: baseline at 58 mm, front at 5 mm from its top. */
final class Blots {
  static final int MM = 8;
  static final int WIDTH = 40 * MM;
  static final double BASELINE_MM = 58;
  private static final int HEIGHT = 66 * MM;

  private final Raster[] density = new Raster[3];

  Blots() {
    for (int c = 0; c < 3; c++) {
      density[c] = new Raster(WIDTH, HEIGHT);
    }
  }

  /**
   * Adds a round Gaussian blot.
   *
   * @param xMm from the left
   * @param alongMm from the baseline
   * @param sigmaMm its standard deviation
   * @param heights of red, green and blue density
   */
  Blots with(double xMm, double alongMm, double sigmaMm, double... heights) {
    for (int y = 0; y < HEIGHT; y++) {
      for (int x = 0; x < WIDTH; x++) {
        double dx = ((x + 0.5) / MM - xMm) / sigmaMm;
        double dy = (BASELINE_MM - (y + 0.5) / MM - alongMm) / sigmaMm;
        double shape = StrictMath.exp(-(dx * dx + dy * dy) / 2);
        for (int c = 0; c < 3; c++) {
          density[c].set(x, y, density[c].at(x, y) + (float) (heights[c] * shape));
        }
      }
    }
    return this;
  }

  /** The spots of lanes at these places, mm from the left. */
  List<List<SpotRegion>> spots(double... lanesMm) {
    Raster paper = new Raster(WIDTH, HEIGHT);
    Arrays.fill(paper.cells(), 1);
    DensityMap map =
        new DensityMap(
            density, paper, new Raster(WIDTH, HEIGHT), MM, new double[] {0.004, 0.004, 0.004});
    FittedLine baseline = line(BASELINE_MM);
    FittedLine front = line(5);
    return SpotFinder.find(
        map,
        baseline,
        front,
        DyeMap.of(map, baseline, front),
        new OriginZone(2.2, false),
        Arrays.stream(lanesMm).mapToObj(x -> LaneTrack.said(x * MM)).toList());
  }

  private static FittedLine line(double fromTopMm) {
    double y = fromTopMm * MM;
    return FittedLine.byHand(new double[] {0, y}, new double[] {WIDTH, y}, 0.2, WIDTH);
  }

  /** Distance of a spot's centre from the baseline, mm. */
  static double alongMm(SpotRegion spot) {
    return BASELINE_MM - spot.centroid().y() / MM;
  }
}
