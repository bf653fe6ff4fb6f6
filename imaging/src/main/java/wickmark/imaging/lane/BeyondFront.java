package wickmark.imaging.lane;

import wickmark.imaging.line.FittedLine;
import wickmark.imaging.paper.DensityMap;
import wickmark.imaging.raster.Hysteresis;
import wickmark.imaging.raster.Raster;
import wickmark.imaging.raster.Smoothing;

/** What lies beyond a front, where no dye runs. */
public final class BeyondFront {
  /** Dye that ran with the front may reach a little beyond it, and so does a front's own colour. */
  private static final double MARGIN_MM = 2;

  private static final double SMOOTHING_MM = 0.45;

  /** Difference of the channels that is surely colour, and down to which it is followed. */
  private static final double SURE = 0.05;

  private static final double FLANK = 0.02;

  /** Channels that differ by less than this part of the density are grey: pencil, or a dark pen. */
  private static final double GREY = 0.3;

  /** Least area of a spot's stain, mm². */
  private static final double LEAST_MM2 = 4;

  private BeyondFront() {}

  /** Says whether there is coloured stain as large as a spot. */
  public static boolean holdsDye(DensityMap map, FittedLine front) {
    double mm = map.cellsPerMm();
    Raster[] smooth = new Raster[3];
    for (int c = 0; c < 3; c++) {
      smooth[c] = Smoothing.gaussian(map.density()[c], SMOOTHING_MM * mm);
    }
    Raster colour = DensityMap.chroma(smooth);
    for (int x = 0; x < map.width(); x++) {
      double to = front.at(x + 0.5) - MARGIN_MM * mm;
      for (int y = 0; y < map.height(); y++) {
        if (y >= to || colour.at(x, y) < GREY * most(smooth, x, y)) {
          colour.set(x, y, 0);
        }
      }
    }
    int stained = 0;
    for (float cell : Hysteresis.above(colour, SURE, FLANK).cells()) {
      stained += cell > 0 ? 1 : 0;
    }
    return stained > LEAST_MM2 * mm * mm;
  }

  private static float most(Raster[] density, int x, int y) {
    return Math.max(density[0].at(x, y), Math.max(density[1].at(x, y), density[2].at(x, y)));
  }
}
