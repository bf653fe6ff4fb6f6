package wickmark.imaging.straight;

import java.util.List;

/**
 * How far dried paper stands off the plane, as seen in its outline. A part of the sheet that is
 * raised by h towards a camera at distance Z looks larger by m = Z/(Z − h), and is pushed away from
 * the camera's nadir by the same factor: a sheet arched along its length looks wider in the middle.
 * So the width along the strip tells m along it, the height across the strip tells m across it, and
 * both are undone. Lengths are then arc lengths: what a ruler reads on the sheet pressed flat.
 *
 * <p>All in the frame's cells. Between the corners m changes by a quadratic and a cubic term along
 * and across, and by sines of three half waves and more where the sheet is cockled. No paper lies
 * below the desk: where the sheet is narrower in the middle than at its ends, it is the ends that
 * are raised, and the whole sheet looks larger by that.
 *
 * @param width of the frame
 * @param height of the frame
 * @param nadirX column of the place straight below the camera
 * @param nadirY row of that place
 * @param distance of the camera from the plane, cells
 * @param along coefficients of m − 1 down the strip: bow, lopsided bow, then sines of 3, 4 … half
 *     waves
 * @param across the same to the right
 * @param doubt standard uncertainty of lengths on the sheet by how it is bent, relative
 */
record PaperSurface(
    double width,
    double height,
    double nadirX,
    double nadirY,
    double distance,
    List<Double> along,
    List<Double> across,
    double doubt) {

  /** Scissors keep a straight line within about this, mm (common practice). */
  static final double CUT_MM = 0.15;

  PaperSurface {
    along = List.copyOf(along);
    across = List.copyOf(across);
  }

  /**
   * Change of magnification that is as likely scissors as a raised rim: hand-cut strips have a
   * waist of some tenths of a millimetre.
   */
  private static final double WAIST = 0.008;

  /** Magnification at a place, where the corners' is 1. */
  double magnification(double x, double y) {
    return 1 + term(along, y / height) + term(across, x / width);
  }

  /** Magnification of the corners, at least 1: the lowest place of the sheet lies on the desk. */
  double cornerMagnification() {
    double lowest = lowest(along) + lowest(across);
    double raised = lowest * lowest * lowest / (lowest * lowest + WAIST * WAIST);
    return 1 / (1 + raised);
  }

  private static double lowest(List<Double> c) {
    double least = 0;
    for (int k = 0; k <= 40; k++) {
      least = Math.min(least, term(c, k / 40.0));
    }
    return least;
  }

  private static double term(List<Double> c, double at) {
    double t = Math.max(-0.05, Math.min(1.05, at));
    double bow = 4 * t * (1 - t);
    double sum = c.get(0) * bow + c.get(1) * bow * (2 * t - 1);
    for (int i = 2; i < c.size() && t > 0 && t < 1; i++) {
      sum += c.get(i) * StrictMath.sin((i + 1) * Math.PI * t);
    }
    return sum;
  }

  /** Where a place of the flat sheet is seen on the plane. */
  double[] seen(double x, double y) {
    double m = magnification(x, y);
    return new double[] {nadirX + (x - nadirX) * m, nadirY + (y - nadirY) * m};
  }

  /** The place of the sheet that is seen at a place of the plane. */
  double[] flat(double x, double y) {
    double fx = x;
    double fy = y;
    for (int i = 0; i < 6; i++) {
      double m = magnification(fx, fy);
      fx = nadirX + (x - nadirX) / m;
      fy = nadirY + (y - nadirY) / m;
    }
    return new double[] {fx, fy};
  }

  /** Height off the plane at a row, cells, of the bend along the strip alone. */
  double heightAt(double y) {
    return distance * (1 - 1 / (1 + term(along, y / height)));
  }
}
