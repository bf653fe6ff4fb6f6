package wickmark.imaging.lane;

import java.util.List;
import wickmark.imaging.line.FittedLine;
import wickmark.imaging.paper.DensityMap;
import wickmark.imaging.raster.Hysteresis;
import wickmark.imaging.raster.Raster;
import wickmark.imaging.raster.Selection;
import wickmark.imaging.raster.Smoothing;

/**
 * Where there is dye between baseline and front.
 *
 * @param strength smoothed density, the norm of the three channels over √3 less what blank paper
 *     gives; 0 outside the developed part
 * @param mask 1 where there is dye: all of a figure that is surely dye somewhere, down to where it
 *     fades into the paper
 * @param noise standard deviation of the smoothed density on blank paper
 * @param density the map's three densities with baseline, front line and dried stains taken out
 * @param driedStains these stains
 */
public record DyeMap(
    Raster strength, Raster mask, double noise, Raster[] density, List<DriedStain> driedStains) {
  /** Smoothing, mm: well below the size of a spot, well above pencil and paper texture. */
  private static final double SIGMA_MM = 0.45;

  /** Density that is surely dye: faint spots have a peak of 0.06. */
  private static final double SURE = 0.026;

  /** Least density followed down a spot's flank. */
  private static final double FLANK = 0.012;

  /** Finds the dye. */
  public static DyeMap of(DensityMap map, FittedLine baseline, FittedLine front) {
    double mm = map.cellsPerMm();
    Raster[] smooth = new Raster[3];
    Raster strength = new Raster(map.width(), map.height());
    Raster[] withoutLines = LineRemoval.remove(map, baseline, front);
    TideMarkRemoval.takeOff(map, withoutLines, front);
    DriedStain.TakenOff bare = DriedStainFinder.takeOff(withoutLines, map.paper(), mm);
    Raster[] clean = bare.density();
    for (int c = 0; c < 3; c++) {
      smooth[c] = Smoothing.gaussian(clean[c], SIGMA_MM * mm);
    }
    int w = map.width();
    int[] from = new int[w];
    int[] to = new int[w];
    for (int x = 0; x < w; x++) {
      from[x] = (int) Math.max(0, front.at(x + 0.5) - 3 * mm);
      to[x] = (int) Math.min(map.height(), baseline.at(x + 0.5) + 1.5 * mm);
    }
    for (int y = 0; y < map.height(); y++) {
      for (int x = 0; x < w; x++) {
        if (y >= from[x] && y < to[x] && map.paper().at(x, y) > 0) {
          strength.set(x, y, Math.max(0, norm(smooth, x, y) - (float) map.unsure(x, y)));
        }
      }
    }
    double noise = noise(smooth, strength);
    Raster mask =
        Hysteresis.above(strength, Math.max(SURE, 5 * noise), Math.max(FLANK, 2.5 * noise));
    return new DyeMap(strength, mask, noise, clean, bare.stains());
  }

  private static float norm(Raster[] smooth, int x, int y) {
    double sum = 0;
    for (int c = 0; c < 3; c++) {
      double d = smooth[c].at(x, y);
      sum += d > 0 ? d * d : 0;
    }
    return (float) Math.sqrt(sum / 3);
  }

  /**
   * From the signed mean of the channels: its lower half is blank paper, whatever stands on the
   * rest.
   */
  private static double noise(Raster[] smooth, Raster strength) {
    double[] v = new double[strength.cells().length / 3 + 1];
    int n = 0;
    for (int i = 0; i < strength.cells().length; i += 3) {
      if (strength.cells()[i] > 0) {
        v[n++] = (smooth[0].cells()[i] + smooth[1].cells()[i] + smooth[2].cells()[i]) / 3;
      }
    }
    if (n < 10) {
      return 0.003;
    }
    double middle = Selection.nth(v, n, (int) (0.4 * n));
    double low = Selection.nth(v, n, (int) (0.08 * n));
    // Of a normal distribution the 8 % and the 40 % point lie 1.15 standard deviations apart.
    return Math.max(0.0008, (middle - low) / 1.15);
  }
}
