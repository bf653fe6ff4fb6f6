package wickmark.imaging;

import java.util.List;
import java.util.Optional;
import wickmark.imaging.lane.DyeMap;
import wickmark.imaging.lane.OriginZone;
import wickmark.imaging.line.FittedLine;
import wickmark.imaging.raster.Raster;
import wickmark.imaging.spot.SpotRegion;
import wickmark.imaging.spot.Strokes;

/** Stain between baseline and front that belongs to no spot: where one may have been missed. */
final class LeftoverDye {
  /** Rim of what sits on the baseline: residue, marks or the samples' own dots, mm. */
  private static final double ORIGIN_RIM_MM = 0.8;

  /** The front's own wake, mm. */
  private static final double WAKE_MM = 1.5;

  /** A spot fades out beyond its visible extent, mm. */
  private static final double FADE_MM = 1.2;

  /** Density of stain that would be a spot by itself: the faintest that count have 0.06. */
  private static final double CLEAR = 0.035;

  private LeftoverDye() {}

  /**
   * A stain left over.
   *
   * @param areaMm2 of all of it that is clear
   * @param peak greatest density in it
   * @param x column of its densest place, cells
   * @param y row of its densest place, cells
   */
  record Stain(double areaMm2, double peak, double x, double y) {}

  /**
   * Looks for it above the origin zone; none where all clear stain is part of a spot or writing.
   */
  static Optional<Stain> find(
      DyeMap dye,
      FittedLine baseline,
      FittedLine front,
      OriginZone zone,
      List<List<SpotRegion>> spots,
      double cellsPerMm) {
    Raster strength = dye.strength();
    double origin = (zone.heightMm() + ORIGIN_RIM_MM) * cellsPerMm;
    boolean[] left = new boolean[strength.cells().length];
    int cells = 0;
    double peak = 0;
    int column = -1;
    int row = -1;
    for (int x = 0; x < strength.width(); x++) {
      int from = (int) Math.max(0, front.at(x + 0.5) + WAKE_MM * cellsPerMm);
      int to = (int) Math.min(strength.height(), baseline.at(x + 0.5) - origin);
      for (int y = from; y < to; y++) {
        double d = strength.at(x, y);
        if (d > CLEAR && dye.mask().at(x, y) > 0 && !inSpot(spots, x, y, FADE_MM * cellsPerMm)) {
          left[y * strength.width() + x] = true;
          cells++;
          if (d > peak) {
            peak = d;
            column = x;
            row = y;
          }
        }
      }
    }
    double areaMm2 = cells / (cellsPerMm * cellsPerMm);
    return column < 0 || Strokes.are(dye.density(), left, cellsPerMm)
        ? Optional.empty()
        : Optional.of(new Stain(areaMm2, peak, column + 0.5, row + 0.5));
  }

  private static boolean inSpot(List<List<SpotRegion>> spots, int x, int y, double fade) {
    for (List<SpotRegion> lane : spots) {
      for (SpotRegion spot : lane) {
        if (x > spot.box().left() - fade
            && x < spot.box().right() + fade
            && y > spot.box().top() - fade
            && y < spot.box().bottom() + fade) {
          return true;
        }
      }
    }
    return false;
  }
}
