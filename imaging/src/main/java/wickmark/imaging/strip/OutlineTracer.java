package wickmark.imaging.strip;

import java.util.ArrayList;
import java.util.List;
import wickmark.imaging.photo.Photo;
import wickmark.imaging.photo.PhotoPoint;
import wickmark.imaging.raster.ColourRaster;

/** Follows the sides of quads that were found on a shrunken picture at finer scale. */
final class OutlineTracer {
  /** Long side of the picture on which sides are followed, cells. */
  private static final int SIZE = 2600;

  /** Smoothing of the picture on which sides are followed, cells. */
  private static final double SIGMA = 0.8;

  /** How far an edge lies off a straight line that it is seen along, cells. */
  private static final double STRAIGHT = 2;

  /** Support from which an edge is seen all along a line. */
  private static final double SEEN_ALL_ALONG = 0.95;

  /** How far off a side that is seen straight it is followed, cells. */
  private static final double STRAIGHT_REACH = 5;

  private final EdgeMap edges;
  private final int coarseFactor;
  private final int fineFactor;
  private final SmoothPicture coarse;
  private final SmoothPicture fine;

  /**
   * A tracer.
   *
   * @param ground the shrunken picture on which the quads were found; where they lie on printed
   *     lines, without these: the flank of one that runs along a side of white paper is a better
   *     step than the side
   * @param factor by which it was shrunken
   * @param edges of the picture with its lines, in which the quads' sides were seen
   */
  OutlineTracer(Photo photo, ColourRaster ground, int factor, EdgeMap edges) {
    this.edges = edges;
    this.coarseFactor = factor;
    this.fineFactor = Math.max(1, Math.min(factor, factorFor(photo, SIZE)));
    this.fine = new SmoothPicture(photo, fineFactor, SIGMA);
    this.coarse = new SmoothPicture(ground, SIGMA);
  }

  /** By how much a picture is to be shrunken so that its long side has about so many cells. */
  static int factorFor(Photo photo, int size) {
    return (int)
        Math.max(1, Math.round(Math.max(photo.widthPx(), photo.heightPx()) / (double) size));
  }

  /**
   * The outlines in the photo; quads without sides that meet are left out, and so is what was led
   * by its sides to where one that was better seen lies already.
   */
  List<StripOutline> outlines(List<RankedQuad> quads) {
    List<StripOutline> outlines = new ArrayList<>();
    for (RankedQuad quad : quads) {
      StripOutline outline = traced(quad);
      if (outline.isFigure()
          && outlines.stream()
              .noneMatch(o -> o.score() >= outline.score() && o.isAt(outline, fineFactor))) {
        outlines.removeIf(o -> o.isAt(outline, fineFactor));
        outlines.add(outline);
      }
    }
    return outlines;
  }

  private StripOutline traced(RankedQuad ranked) {
    Quad quad = ranked.quad();
    SideCurve[] curves = new SideCurve[4];
    double shortest =
        Math.min(Math.min(quad.side(0), quad.side(1)), Math.min(quad.side(2), quad.side(3)));
    for (int i = 0; i < 4; i++) {
      double[] line = quad.line(i);
      int samples = (int) Math.max(30, Math.min(160, quad.side(i) / 3));
      double usual = Math.max(3, Math.min(0.025 * quad.side(i), 0.08 * shortest));
      double reach = Math.min(isSeenStraight(quad, i) ? STRAIGHT_REACH : usual, ranked.reach());
      SideTracer tracer = new SideTracer(coarse, reach, samples);
      curves[i] = SideCurve.fit(line, tracer.trace(line[0], line[1], line[2], line[3], null));
    }
    double up = coarseFactor / (double) fineFactor;
    Quad large = quad.scaled(up);
    for (int i = 0; i < 4; i++) {
      double[] line = large.line(i);
      int samples = (int) Math.max(40, Math.min(240, large.side(i) / 4));
      double[] guess = new double[samples];
      for (int k = 0; k < samples; k++) {
        guess[k] = up * curves[i].offsetAt(0.02 + 0.96 * (k + 0.5) / samples);
      }
      SideTracer tracer = new SideTracer(fine, Math.max(2.5, 1.6 * up), samples);
      curves[i] = SideCurve.fit(line, tracer.trace(line[0], line[1], line[2], line[3], guess));
    }
    return outline(curves, fineFactor, ranked.score());
  }

  /**
   * Whether an edge is seen all along the straight side: then the side is there, however much
   * better a step runs away from it, as the border of a stripe does that ends at the sheet.
   */
  private boolean isSeenStraight(Quad quad, int side) {
    return QuadSearch.supportOfSide(quad, side, edges, STRAIGHT) > SEEN_ALL_ALONG;
  }

  private static StripOutline outline(SideCurve[] curves, double factor, double score) {
    List<PhotoPoint> corners = new ArrayList<>();
    List<List<PhotoPoint>> sides = new ArrayList<>();
    double variance = 0;
    for (int i = 0; i < 4; i++) {
      double[] corner = curves[(i + 3) % 4].cornerWith(curves[i]);
      corners.add(new PhotoPoint(corner[0] * factor, corner[1] * factor));
      List<PhotoPoint> side = new ArrayList<>();
      for (double u : curves[i].places()) {
        double[] p = curves[i].pointAt(u);
        side.add(new PhotoPoint(p[0] * factor, p[1] * factor));
      }
      sides.add(side);
      variance += curves[i].sigma() * curves[i].sigma() / 4;
    }
    return new StripOutline(corners, sides, Math.sqrt(variance) * factor, score);
  }
}
