package wickmark.imaging.spot;

import wickmark.imaging.raster.Raster;
import wickmark.imaging.raster.Smoothing;

/** Tells writing, which is grey and all lines with paper between them, from a dye. */
public final class Strokes {
  /** Smoothing that leaves a pencil's line and takes away the paper's grain, mm. */
  private static final double FINE_MM = 0.15;

  /** Smoothing that leaves a spot and runs lines together, mm. */
  private static final double COARSE_MM = 0.7;

  /**
   * Scatter of the fine density about the coarse one over its mean, from which a figure is lines.
   * Written numbers have 1.2 and more, spots with a pencilled ring up to 0.6, bare ones 0.2.
   */
  private static final double LINES = 0.9;

  /** Channels whose sums differ by less than this part of the largest are grey. */
  private static final double GREY = 0.2;

  private Strokes() {}

  /**
   * Whether some cells hold writing.
   *
   * @param density red, green and blue
   * @param cells which of them
   */
  public static boolean are(Raster[] density, boolean[] cells, double cellsPerMm) {
    return isGrey(density, cells) && scatter(density, cells, cellsPerMm) > LINES;
  }

  private static boolean isGrey(Raster[] density, boolean[] cells) {
    double most = 0;
    double least = Double.POSITIVE_INFINITY;
    for (Raster channel : density) {
      double sum = 0;
      for (int i = 0; i < cells.length; i++) {
        sum += cells[i] ? channel.cells()[i] : 0;
      }
      most = Math.max(most, sum);
      least = Math.min(least, sum);
    }
    return most - least < GREY * most;
  }

  private static double scatter(Raster[] density, boolean[] cells, double cellsPerMm) {
    Raster grey = new Raster(density[0].width(), density[0].height());
    for (int i = 0; i < cells.length; i++) {
      grey.cells()[i] = (density[0].cells()[i] + density[1].cells()[i] + density[2].cells()[i]) / 3;
    }
    Raster fine = Smoothing.gaussian(grey, FINE_MM * cellsPerMm);
    Raster coarse = Smoothing.gaussian(grey, COARSE_MM * cellsPerMm);
    double squares = 0;
    double sum = 0;
    int n = 0;
    for (int i = 0; i < cells.length; i++) {
      if (cells[i]) {
        double d = fine.cells()[i] - coarse.cells()[i];
        squares += d * d;
        sum += coarse.cells()[i];
        n++;
      }
    }
    return sum > 0 ? Math.sqrt(squares * n) / sum : 0;
  }
}
