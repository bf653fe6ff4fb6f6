package wickmark.imaging.straight;

import java.util.List;
import wickmark.imaging.photo.PhotoPoint;
import wickmark.imaging.pose.PlanePoint;

/** Estimates the {@link PaperSurface} from the four sides as they were seen. */
final class SurfaceFit {
  private static final int SAMPLES = 41;

  private SurfaceFit() {}

  /**
   * Fits.
   *
   * @param frame laid flat around the corners
   * @param sides top, right, bottom and left, clockwise, as points in the photo
   * @param cellsPerMm cells per (nominal) millimetre
   */
  static PaperSurface fit(StripFrame frame, List<List<PhotoPoint>> sides, double cellsPerMm) {
    double[] nadir = frame.fromPlane(new PlanePoint(0, 0));
    double w = frame.width();
    double h = frame.height();
    double cut = PaperSurface.CUT_MM * cellsPerMm;
    double[] along = bend(frame, sides.get(3), sides.get(1), true, h, cut);
    double[] across = bend(frame, sides.get(0), sides.get(2), false, w, cut);
    return new PaperSurface(
        w,
        h,
        nadir[0],
        nadir[1],
        1 / frame.cell(),
        List.of(along[0], along[1]),
        List.of(across[0], across[1]));
  }

  /**
   * How the distance between two opposite sides departs from running straight between its ends, as
   * a part of it: coefficients of the bow and of the lopsided bow, each drawn towards 0 as far as
   * the scissors could have made it.
   */
  private static double[] bend(
      StripFrame frame,
      List<PhotoPoint> first,
      List<PhotoPoint> second,
      boolean down,
      double length,
      double cut) {
    double[] gap = new double[SAMPLES];
    for (int k = 0; k < SAMPLES; k++) {
      double at = length * (0.03 + 0.94 * k / (SAMPLES - 1.0));
      gap[k] = Math.abs(place(frame, second, down, at) - place(frame, first, down, at));
    }
    double bowBow = 0;
    double lopLop = 0;
    double bowGap = 0;
    double lopGap = 0;
    double mean = 0;
    double t0 = 0.03;
    for (int k = 0; k < SAMPLES; k++) {
      double t = t0 + 0.94 * k / (SAMPLES - 1.0);
      double straight = gap[0] + (gap[SAMPLES - 1] - gap[0]) * (t - t0) / 0.94;
      double off = gap[k] / straight - 1;
      // The same shapes with the same chord taken off as the measured gap.
      double bow = 4 * t * (1 - t) - 4 * t0 * (1 - t0);
      double lop = 4 * t * (1 - t) * (2 * t - 1) - 4 * t0 * (1 - t0) * (2 * t - 1);
      bowBow += bow * bow;
      lopLop += lop * lop;
      bowGap += bow * off;
      lopGap += lop * off;
      mean += gap[k] / SAMPLES;
    }
    double sigma = cut / mean;
    return new double[] {
      shrunk(bowGap / bowBow, 0.5 * sigma), shrunk(lopGap / lopLop, 1.2 * sigma)
    };
  }

  private static double shrunk(double value, double sigma) {
    return value * value * value / (value * value + 2 * sigma * sigma + 1e-18);
  }

  /** Column (or row) of a side at a row (or column), linearly between its points. */
  private static double place(StripFrame frame, List<PhotoPoint> side, boolean down, double at) {
    double[] before = frame.fromPhoto(side.get(0));
    for (int i = 1; i < side.size(); i++) {
      double[] here = frame.fromPhoto(side.get(i));
      double u0 = down ? before[1] : before[0];
      double u1 = down ? here[1] : here[0];
      if ((u0 - at) * (u1 - at) <= 0 && u0 != u1) {
        double f = (at - u0) / (u1 - u0);
        double v0 = down ? before[0] : before[1];
        double v1 = down ? here[0] : here[1];
        return v0 + f * (v1 - v0);
      }
      before = here;
    }
    double[] first = frame.fromPhoto(side.get(0));
    double[] last = frame.fromPhoto(side.get(side.size() - 1));
    double toFirst = Math.abs((down ? first[1] : first[0]) - at);
    double toLast = Math.abs((down ? last[1] : last[0]) - at);
    double[] nearest = toFirst < toLast ? first : last;
    return down ? nearest[0] : nearest[1];
  }
}
