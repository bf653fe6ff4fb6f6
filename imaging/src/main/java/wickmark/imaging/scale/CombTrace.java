package wickmark.imaging.scale;

/**
 * The marks of an edge, followed to both ends.
 *
 * @param band the band along the edge in which the marks were last seen
 * @param series the marks
 * @param shortTicks the part of the band where all marks are
 * @param sign 1 for dark marks, -1 for light ones
 * @param reduction photo pixels per level pixel
 */
record CombTrace(
    EdgeBand band, TickSeries series, ShortTickBand shortTicks, double sign, double reduction) {
  /** Strokes this near to the marks, in pitches, belong to the same edge. */
  private static final double BESIDE = 5;

  /** Returns the place of the middle mark, in level pixels, with the direction of the edge. */
  CombSeed.Axis middle() {
    double u = series.course().at((series.first() + series.last()) / 2.0);
    CombSeed.Axis axis = band.frame().axis();
    return new CombSeed.Axis(band.frame().x(u, 0), band.frame().y(u, 0), axis.dx(), axis.dy());
  }

  /** Tells whether the place, in level pixels, lies on the marks or on the figures beside them. */
  boolean covers(double x, double y) {
    EdgeFrame frame = band.frame();
    double u = frame.axis().u(x, y);
    double v = frame.axis().v(x, y) - frame.middle().at(u);
    double pitch = series.middlePitch();
    double slack = BESIDE * pitch;
    double first = series.course().at(series.first());
    double last = series.course().at(series.last());
    return Math.abs(v) < slack
        && u > Math.min(first, last) - slack
        && u < Math.max(first, last) + slack;
  }
}
