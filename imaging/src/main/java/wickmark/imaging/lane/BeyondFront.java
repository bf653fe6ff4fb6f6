package wickmark.imaging.lane;

import wickmark.imaging.line.FittedLine;
import wickmark.imaging.paper.DensityMap;
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

  /** Least area of a spot's stain, mm². */
  private static final double LEAST_MM2 = 4;

  private BeyondFront() {}

  /** Says whether there is coloured stain as large as a spot; pencil has no colour. */
  public static boolean holdsDye(DensityMap map, FittedLine front) {
    double mm = map.cellsPerMm();
    Raster chroma = Smoothing.gaussian(map.chroma(), SMOOTHING_MM * mm);
    for (int x = 0; x < map.width(); x++) {
      int from = (int) Math.max(0, front.at(x + 0.5) - MARGIN_MM * mm);
      for (int y = from; y < map.height(); y++) {
        chroma.set(x, y, 0);
      }
    }
    int stained = 0;
    for (float cell : Hysteresis.above(chroma, SURE, FLANK).cells()) {
      stained += cell > 0 ? 1 : 0;
    }
    return stained > LEAST_MM2 * mm * mm;
  }
}
