package wickmark.imaging.scale;

/**
 * Curved coordinates along a ruler's edge: v = 0 is the line that the marks are measured on, and a
 * step in v at fixed u follows the marks, which lean with the perspective.
 *
 * @param axis a straight line near the edge
 * @param middle offset of the line v = 0 from the axis, over u, in level pixels
 * @param slant lean of the marks, over u: pixels along the axis per pixel square to it
 */
record EdgeFrame(CombSeed.Axis axis, RobustPolynomial middle, RobustPolynomial slant) {
  /** Returns the same frame on a plane whose pixels are finer by a whole factor. */
  EdgeFrame enlarged(int by) {
    return new EdgeFrame(axis.enlarged(by), middle.enlarged(by), slant.stretched(by));
  }

  double x(double u, double v) {
    return axis.xAt(u + slant.at(u) * v, middle.at(u) + v);
  }

  double y(double u, double v) {
    return axis.yAt(u + slant.at(u) * v, middle.at(u) + v);
  }
}
