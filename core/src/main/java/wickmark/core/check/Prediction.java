package wickmark.core.check;

/** What a person would have written, with its standard uncertainty, in the unit of writing. */
record Prediction(double value, double uncertainty) {
  private static final double HALF_LOG_TWO_PI = 0.9189385332046727;

  /** Minus the logarithm of the probability density of what was written, per millimetre. */
  double cost(double written) {
    double deviations = (written - value) / uncertainty;
    return deviations * deviations / 2 + StrictMath.log(uncertainty) + HALF_LOG_TWO_PI;
  }

  Prediction shifted(double by, double uncertaintyOfShift) {
    return new Prediction(value + by, StrictMath.hypot(uncertainty, uncertaintyOfShift));
  }

  /** The same length written in a unit so many times larger, with a rounding of its own. */
  Prediction inUnit(double millimetres, double rounding) {
    return new Prediction(
        value / millimetres, StrictMath.hypot(uncertainty / millimetres, rounding));
  }
}
