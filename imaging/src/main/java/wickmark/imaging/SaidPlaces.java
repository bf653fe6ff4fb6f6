package wickmark.imaging;

import java.util.Optional;
import java.util.Set;
import java.util.stream.DoubleStream;
import wickmark.imaging.line.FittedLine;
import wickmark.imaging.line.SaidLayout;
import wickmark.imaging.photo.PhotoPoint;
import wickmark.imaging.straight.PaperShape;
import wickmark.imaging.straight.StripFrame;
import wickmark.imaging.strip.StripOutline;

/** Carries what the person says of bottom, baseline and front from the photo to one strip. */
final class SaidPlaces {
  /** A place on a line is set within a part of the line's width, mm (common practice). */
  private static final double PLACE_MM = 0.2;

  /** The middle of a spot is set by eye within this, mm (common practice). */
  private static final double SPOT_MM = 0.3;

  /** And within a pixel of the photo. */
  private static final double PLACE_PX = 1;

  private static final int PROBES = 40;

  private SaidPlaces() {}

  /** What is said of a strip's layout; a line that lies beside the strip is another strip's. */
  static SaidLayout layout(
      ReadingRequest request, StripOutline outline, PaperShape shape, StripFrame frame) {
    return new SaidLayout(
        request.strip().bottom().map(b -> Set.of(turns(outline, b))).orElse(Set.of(0, 1, 2, 3)),
        on(shape, request.lines().baseline()).map(s -> places(s, frame)),
        on(shape, request.lines().front()).map(s -> places(s, frame)));
  }

  /** The segment, if any part of it lies on the paper. */
  static Optional<ReadingRequest.Segment> on(
      PaperShape shape, Optional<ReadingRequest.Segment> segment) {
    return segment.filter(s -> crosses(shape, s));
  }

  private static boolean crosses(PaperShape shape, ReadingRequest.Segment s) {
    return DoubleStream.iterate(0, t -> t <= 1, t -> t + 1.0 / PROBES)
        .anyMatch(
            t ->
                shape.contains(
                    new PhotoPoint(
                        s.from().x() + t * (s.to().x() - s.from().x()),
                        s.from().y() + t * (s.to().y() - s.from().y()))));
  }

  /** The line in the straight strip, with the uncertainty of places set by hand. */
  static FittedLine line(ReadingRequest.Segment segment, StripFrame frame, double cellsPerMm) {
    double[] from = frame.fromPhoto(segment.from());
    double[] to = frame.fromPhoto(segment.to());
    return FittedLine.byHand(
        from, to, uncertainty(PLACE_MM, frame, from, cellsPerMm), frame.width());
  }

  /**
   * Standard uncertainty, along the strip, of a line's place set by hand.
   *
   * @param at {column, row}; all in cells
   */
  static double lineUncertainty(StripFrame frame, double[] at, double cellsPerMm) {
    return uncertainty(PLACE_MM, frame, at, cellsPerMm);
  }

  /** The same of a spot's centre. */
  static double spotUncertainty(StripFrame frame, double[] at, double cellsPerMm) {
    return uncertainty(SPOT_MM, frame, at, cellsPerMm);
  }

  private static double uncertainty(double mm, StripFrame frame, double[] at, double cellsPerMm) {
    PhotoPoint a = frame.toPhoto(at[0], at[1]);
    PhotoPoint b = frame.toPhoto(at[0], at[1] + 1);
    double pixel = PLACE_PX / Math.hypot(b.x() - a.x(), b.y() - a.y());
    return Math.hypot(pixel, mm * cellsPerMm);
  }

  private static SaidLayout.TwoPlaces places(ReadingRequest.Segment segment, StripFrame frame) {
    double[] from = frame.fromPhoto(segment.from());
    double[] to = frame.fromPhoto(segment.to());
    double w = frame.width();
    double h = frame.height();
    return new SaidLayout.TwoPlaces(from[0] / w, from[1] / h, to[0] / w, to[1] / h);
  }

  /** Quarter turns of the corners' order that bring that end to the bottom. */
  private static int turns(StripOutline outline, ReadingRequest.Bottom bottom) {
    double x = bottom == ReadingRequest.Bottom.LEFT ? -1 : 0;
    x = bottom == ReadingRequest.Bottom.RIGHT ? 1 : x;
    double y = bottom == ReadingRequest.Bottom.UP ? -1 : 0;
    y = bottom == ReadingRequest.Bottom.DOWN ? 1 : y;
    int best = 0;
    double most = Double.NEGATIVE_INFINITY;
    for (int t = 0; t < 4; t++) {
      PhotoPoint topLeft = outline.corners().get((4 - t) % 4);
      PhotoPoint topRight = outline.corners().get((5 - t) % 4);
      PhotoPoint bottomRight = outline.corners().get((6 - t) % 4);
      PhotoPoint bottomLeft = outline.corners().get((7 - t) % 4);
      double dx = bottomRight.x() + bottomLeft.x() - topRight.x() - topLeft.x();
      double dy = bottomRight.y() + bottomLeft.y() - topRight.y() - topLeft.y();
      double along = (dx * x + dy * y) / Math.hypot(dx, dy);
      if (along > most) {
        most = along;
        best = t;
      }
    }
    return best;
  }
}
