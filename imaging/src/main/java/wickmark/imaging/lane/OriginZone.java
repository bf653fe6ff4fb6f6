package wickmark.imaging.lane;

import wickmark.imaging.line.FittedLine;
import wickmark.imaging.raster.Raster;

/**
 * The band above the baseline that is not read: marks and left-over dye stand there, and the ink of
 * a baseline that ran.
 *
 * @param heightMm how far it reaches from the baseline, (nominal) mm
 * @param ran whether the baseline itself ran: stain stands above nearly all of it
 */
public record OriginZone(double heightMm, boolean ran) {
  /** Marks and left-over dye lie within this distance of the baseline, mm. */
  private static final double USUAL_MM = 2.2;

  /** Where the removal of the line has no say any more, mm. */
  private static final double FROM_MM = 1.2;

  private static final double STEP_MM = 0.25;

  /** Share of the baseline's length that is stained where the ink ran: between the lanes, too. */
  private static final double RAN = 0.8;

  /** The same further up, where the ink is about to end. */
  private static final double STILL = 0.55;

  /** Faint rim of the ink beyond what is seen of it, mm. */
  private static final double RIM_MM = 0.6;

  /** Looks for ink above the baseline. */
  public static OriginZone of(
      DyeMap dye, FittedLine baseline, FittedLine front, double cellsPerMm) {
    double middle = dye.mask().width() / 2.0;
    double mostMm = 0.4 * (baseline.at(middle) - front.at(middle)) / cellsPerMm;
    double upTo = FROM_MM;
    while (upTo < mostMm
        && share(dye.mask(), baseline, upTo * cellsPerMm) > (upTo < USUAL_MM ? RAN : STILL)) {
      upTo += STEP_MM;
    }
    return upTo > USUAL_MM ? new OriginZone(upTo + RIM_MM, true) : new OriginZone(USUAL_MM, false);
  }

  private static double share(Raster mask, FittedLine baseline, double distance) {
    int stained = 0;
    for (int x = 0; x < mask.width(); x++) {
      int y = (int) Math.floor(baseline.at(x + 0.5) - distance);
      stained += y >= 0 && y < mask.height() && mask.at(x, y) > 0 ? 1 : 0;
    }
    return stained / (double) mask.width();
  }
}
