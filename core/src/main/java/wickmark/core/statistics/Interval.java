package wickmark.core.statistics;

/** A range of values, both ends included. */
public record Interval(double low, double high) {

  /** Returns the range around {@code middle} of a half width. */
  static Interval around(double middle, double halfWidth) {
    return new Interval(middle - halfWidth, middle + halfWidth);
  }
}
