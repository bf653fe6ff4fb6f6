package wickmark.testdata.truth;

/**
 * A place on the strip in millimetres: x from its left edge to the right, y from its lower edge up,
 * the baseline's end being the lower one.
 */
public record PointMm(double x, double y) {}
