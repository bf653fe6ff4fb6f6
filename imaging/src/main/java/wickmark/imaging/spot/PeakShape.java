package wickmark.imaging.spot;

/**
 * The course of one dye along its lane: a Gaussian with a flank of its own on either side, and the
 * streak that a dye leaves on its whole way from the origin.
 *
 * @param centre of the peak, mm from the baseline
 * @param ahead standard deviation of the flank towards the front, mm
 * @param behind standard deviation of the flank towards the baseline, mm
 * @param streak height of the streak over the peak's
 */
record PeakShape(double centre, double ahead, double behind, double streak) {

  /** Height at a place, 1 at the centre (without the streak). */
  double peak(double along) {
    double d = along - centre;
    double s = d > 0 ? ahead : behind;
    double z = d / s;
    // Beyond eight standard deviations it is less than rounding.
    return z * z > 64 ? 0 : StrictMath.exp(-z * z / 2);
  }

  /** Height of the streak at a place. */
  double streakAt(double along) {
    if (along < 0 || streak == 0) {
      return 0;
    }
    // A logistic step close to the normal distribution's.
    return streak / (1 + StrictMath.exp(1.702 * (along - centre) / behind));
  }

  /**
   * Height for sharing out what several peaks cover: a real spot fades more slowly than a Gaussian,
   * and what is left at its foot belongs to the nearest.
   */
  double claim(double along) {
    double d = along - centre;
    double z = d / (2.5 * (d > 0 ? ahead : behind));
    return Math.abs(z) > 2 ? 0 : peak(along) + 0.03 / (1 + z * z * z * z);
  }

  double at(double along) {
    return peak(along) + streakAt(along);
  }
}
