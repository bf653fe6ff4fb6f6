package wickmark.imaging.strip;

import wickmark.imaging.photo.PhotoPoint;

/**
 * A row of a ruler's marks in the photo, for telling the ruler's edge from the side of a sheet that
 * lies beside it.
 *
 * @param from its first mark
 * @param to its last mark
 * @param pixelsPerMm mean distance of two marks a millimetre apart
 */
public record MarkRow(PhotoPoint from, PhotoPoint to, double pixelsPerMm) {
  /** How far from the marks the ruler's own edge lies at the most, mm. */
  private static final double EDGE_MM = 6;

  /** Least part of a side that lies beside the row. */
  private static final double LEAST_BESIDE = 0.5;

  /** Sine of the greatest angle between a ruler's edge and its marks' row. */
  private static final double PARALLEL = 0.035;

  /** Whether a side from a to b runs where the ruler's edge is. */
  public boolean hasEdgeAt(PhotoPoint a, PhotoPoint b) {
    double dx = to.x() - from.x();
    double dy = to.y() - from.y();
    double length = Math.hypot(dx, dy);
    double offsetA = ((a.x() - from.x()) * dy - (a.y() - from.y()) * dx) / length;
    double offsetB = ((b.x() - from.x()) * dy - (b.y() - from.y()) * dx) / length;
    double side = Math.hypot(b.x() - a.x(), b.y() - a.y());
    double alongA = ((a.x() - from.x()) * dx + (a.y() - from.y()) * dy) / length;
    double alongB = ((b.x() - from.x()) * dx + (b.y() - from.y()) * dy) / length;
    double beside =
        Math.min(length, Math.max(alongA, alongB)) - Math.max(0, Math.min(alongA, alongB));
    return Math.abs(offsetA - offsetB) < PARALLEL * side
        && Math.abs(offsetA + offsetB) / 2 < EDGE_MM * pixelsPerMm
        && beside > LEAST_BESIDE * side;
  }
}
