package wickmark.imaging.strip;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import wickmark.imaging.photo.PhotoPoint;

/**
 * Sheets with a side that a ruler outdoes: the edge of a ruler is a better step than that of white
 * paper on a white bench beside it, or of paper that lies on a white ruler.
 */
final class SheetsByRulers {
  /** How far from a ruler's edge a strip is looked for beside it, mm. */
  private static final double BESIDE_MM = 14;

  /** How broad rulers are, mm: so far from its other edge may the side of paper on it lie. */
  private static final double BREADTH_MM = 45;

  /** Least clearness of a step that may be the side of a sheet. */
  private static final double CLEAR_STEP = 0.3;

  /** A side's own step is no other side's, cells. */
  private static final double FIRST = 3;

  /** How far from their row a ruler's longest marks end, mm. */
  private static final double MARKS_MM = 6;

  /** Distance of places at which the side of paper on a ruler is looked for, cells. */
  private static final double FINE = 4;

  /** Greatest slant of paper's side against the ruler that it lies on, as a tangent. */
  private static final double SLANT = 0.1;

  /** Distance of places at which a ruler's own edge is looked for beside its marks, cells. */
  private static final double OWN_FINE = 2;

  /** Greatest slant of that edge against the row of its marks, as a tangent. */
  private static final double OWN_SLANT = 0.012;

  private final PaperLikelihood paper;
  private final List<MarkRow> rulers;
  private final int factor;

  /**
   * @param rulers rows of marks, photo pixels
   * @param factor photo pixels of a cell
   */
  SheetsByRulers(PaperLikelihood paper, List<MarkRow> rulers, int factor) {
    this.paper = paper;
    this.rulers = rulers;
    this.factor = factor;
  }

  /** Where a side runs along a ruler, the same with the clearest step a little inwards. */
  List<Quad> beside(Quad quad) {
    List<Quad> found = new ArrayList<>();
    for (int side = 0; side < 4; side++) {
      for (MarkRow ruler : rulers) {
        double[] line = quad.scaled(factor).line(side);
        if (ruler.hasEdgeAt(new PhotoPoint(line[0], line[1]), new PhotoPoint(line[2], line[3]))) {
          double usual = BESIDE_MM * ruler.pixelsPerMm() / factor;
          double reach = Math.min(usual, 0.3 * shorterBeside(quad, side));
          clearest(quad, side, FIRST, reach, Math.max(1.5, reach / 24), Double.POSITIVE_INFINITY)
              .ifPresent(found::add);
        }
      }
    }
    return found;
  }

  /**
   * Where a ruler's marks run through it, what lies on either side of them, with the clearest step
   * on the ruler's breadth as the side that ends it: there the sheet lies on the ruler.
   */
  List<Quad> on(Quad quad) {
    return parts(
        quad,
        (part, mm) ->
            clearest(
                part,
                0,
                MARKS_MM * mm,
                Math.min(BREADTH_MM * mm, 0.5 * shorterBeside(part, 0)),
                FINE,
                SLANT * part.side(0)));
  }

  /**
   * The same with the clearest step beside the marks as side 0: there is the ruler's own edge, and
   * the sheet goes on below the ruler.
   */
  List<Quad> under(Quad quad) {
    return parts(
        quad,
        (part, mm) -> clearest(part, 0, 1, MARKS_MM * mm, OWN_FINE, OWN_SLANT * part.side(0)));
  }

  private List<Quad> parts(Quad quad, BiFunction<Quad, Double, Optional<Quad>> sheet) {
    List<Quad> found = new ArrayList<>();
    for (MarkRow ruler : rulers) {
      PhotoPoint from = ruler.from();
      PhotoPoint to = ruler.to();
      double[] row = {
        from.x() / factor, from.y() / factor, to.x() / factor, to.y() / factor,
      };
      for (Quad part : quad.partsBeside(row)) {
        sheet.apply(part, ruler.pixelsPerMm() / factor).ifPresent(found::add);
      }
    }
    return found;
  }

  private static double shorterBeside(Quad quad, int side) {
    return Math.min(quad.side((side + 1) % 4), quad.side((side + 3) % 4));
  }

  /**
   * The quad with a side moved to the clearest step inwards; none if none is clear.
   *
   * @param first how far inwards from the side steps are looked for, cells
   * @param reach and to how far
   * @param slant how much further one end of the side may be moved than the other, cells
   */
  private Optional<Quad> clearest(
      Quad quad, int side, double first, double reach, double step, double slant) {
    double[] at = {0, 0};
    double most = CLEAR_STEP;
    for (double start = first; start <= reach; start += step) {
      for (double end = first; end <= reach; end += step) {
        if (Math.abs(start - end) > slant) {
          continue;
        }
        double clear = paper.ofSide(quad.withSideMoved(side, start, end), side);
        if (clear > most) {
          most = clear;
          at = new double[] {start, end};
        }
      }
    }
    if (at[0] == 0) {
      return Optional.empty();
    }
    double[] coarse = at;
    for (int i = -4; i <= 4; i++) {
      for (int j = -4; j <= 4; j++) {
        double start = coarse[0] + i * step / 4;
        double end = coarse[1] + j * step / 4;
        double clear = paper.ofSide(quad.withSideMoved(side, start, end), side);
        if (clear > most) {
          most = clear;
          at = new double[] {start, end};
        }
      }
    }
    return Optional.of(quad.withSideMoved(side, at[0], at[1]));
  }
}
