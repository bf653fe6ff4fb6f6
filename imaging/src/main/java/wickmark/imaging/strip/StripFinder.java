package wickmark.imaging.strip;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import wickmark.imaging.photo.Photo;
import wickmark.imaging.photo.PhotoArea;
import wickmark.imaging.photo.PhotoPoint;
import wickmark.imaging.raster.ColourRaster;

/**
 * Finds sheets of paper in a photo: straight edges (Hough), put together to quadrilaterals, ranked
 * by edge support and by what lies inside and outside, then followed at finer scale. It does not
 * know a strip from a ruler or from a blank sheet: later stages tell by what is on the paper.
 */
public final class StripFinder {
  /** Long side of the shrunken picture on which sheets are looked for, cells. */
  private static final int SEARCH_SIZE = 1000;

  /** Long side of the picture on which sides are followed, cells. */
  private static final int TRACE_SIZE = 2600;

  /** Smoothing of the picture on which sides are followed, cells. */
  private static final double TRACE_SIGMA = 0.8;

  private static final int MOST_LINES = 60;
  private static final int MOST_QUADS = 400;

  /** Ranks looked at for further sheets beside those that rank first. */
  private static final int MOST_RANKS = 60;

  /** How far off such a step the side is looked for, cells. */
  private static final double BESIDE_REACH = 5;

  /** Least clearness of a step that may be the side of a sheet beside a ruler. */
  private static final double CLEAR_STEP = 0.3;

  /** Outlines of one place that are taken beyond those that rank first. */
  private static final int MOST_OF_A_PLACE = 2;

  private final Photo photo;
  private final int factor;
  private final ColourRaster small;
  private final EdgeMap edges;
  private final PaperLikelihood paper;

  /** Quadrilaterals that may be sheets, best first. */
  private final List<Ranked> seen;

  /** Those together with sheets that lines part. */
  private final List<Ranked> whole;

  private StripFinder(Photo photo, List<PhotoArea> ignored) {
    this.photo = photo;
    this.factor = factorFor(photo, SEARCH_SIZE);
    this.small = ColourRaster.shrink(photo, factor);
    this.edges = EdgeMap.of(small);
    ignored.forEach(area -> edges.leaveOut(area, factor));
    this.paper = new PaperLikelihood(small.blurred(1.2));
    this.seen = rank(small, edges, paper);
    List<Ranked> joined = joined(seen, small, edges, paper);
    this.whole = joined.isEmpty() ? seen : distinct(Stream.of(seen, joined));
  }

  /**
   * Looks for sheets.
   *
   * @param ignored where no edge counts
   */
  public static StripFinder in(Photo photo, List<PhotoArea> ignored) {
    return new StripFinder(photo, ignored);
  }

  /**
   * Returns outlines, best first. They overlap: a sheet is often outlined in several ways.
   *
   * @param best how many are taken by their rank alone
   * @param most how many at the most, with those of lower rank that lie elsewhere
   * @param rulers rows of marks: where a side runs along a ruler, a sheet is looked for beside it
   */
  public List<StripOutline> outlines(int best, int most, List<MarkRow> rulers) {
    List<Ranked> beside = distinct(Stream.of(besideRulers(best, rulers)));
    // A side beside a ruler is a guess more: what was seen keeps at least half of the places.
    List<Ranked> ranked = new ArrayList<>(beside.subList(0, Math.min(best / 2, beside.size())));
    ranked.addAll(whole);
    int fine = Math.max(1, Math.min(factor, factorFor(photo, TRACE_SIZE)));
    SmoothPicture smooth = new SmoothPicture(photo, fine, TRACE_SIGMA);
    SmoothPicture coarse = new SmoothPicture(photo, factor, TRACE_SIGMA);
    List<StripOutline> outlines = new ArrayList<>();
    for (Ranked r : spread(ranked, best, most)) {
      StripOutline outline = refine(r, coarse, factor, smooth, fine);
      if (outline.isFigure()) {
        outlines.add(outline);
      }
    }
    return outlines;
  }

  /**
   * The edge of a ruler is a better step than that of white paper on a white bench: where a good
   * outline has a side that runs along a ruler, the clearest step a little inwards is tried, too.
   */
  private List<Ranked> besideRulers(int best, List<MarkRow> rulers) {
    List<Ranked> found = new ArrayList<>();
    for (Ranked r : seen.subList(0, Math.min(best, seen.size()))) {
      for (int side = 0; side < 4; side++) {
        for (MarkRow ruler : rulers) {
          double[] line = line(r.quad().scaled(factor), side);
          if (ruler.hasEdgeAt(new PhotoPoint(line[0], line[1]), new PhotoPoint(line[2], line[3]))) {
            stepInside(r.quad(), side, ruler.pixelsPerMm() / factor, paper)
                .map(this::besideRuler)
                .filter(inner -> inner.score() > 0)
                .ifPresent(found::add);
          }
        }
      }
    }
    return found;
  }

  private Ranked besideRuler(Quad inner) {
    double support = QuadSearch.supportOf(inner, edges);
    return new Ranked(inner, score(inner, support, paper, small), BESIDE_REACH);
  }

  /** The quad with a side moved to the clearest step within its reach inwards; none if none is. */
  private static Optional<Quad> stepInside(
      Quad quad, int side, double perMm, PaperLikelihood paper) {
    double reach =
        Math.min(
            MarkRow.BESIDE_MM * perMm,
            0.3 * Math.min(quad.side((side + 1) % 4), quad.side((side + 3) % 4)));
    double[] at = {0, 0};
    double most = CLEAR_STEP;
    double step = Math.max(1.5, reach / 24);
    for (double start = 3; start <= reach; start += step) {
      for (double end = 3; end <= reach; end += step) {
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

  /** The best, then those that lie elsewhere: six strips on one scan are all to be seen. */
  private static List<Ranked> spread(List<Ranked> ranked, int best, int most) {
    List<Ranked> taken = new ArrayList<>();
    for (Ranked r : ranked) {
      long here = taken.stream().filter(t -> t.quad().shareOf(r.quad()) > 0.5).count();
      if (taken.size() < best || (taken.size() < most && here < MOST_OF_A_PLACE)) {
        taken.add(r);
      }
    }
    return taken;
  }

  static int factorFor(Photo photo, int size) {
    return (int)
        Math.max(1, Math.round(Math.max(photo.widthPx(), photo.heightPx()) / (double) size));
  }

  /**
   * A quad with its score.
   *
   * @param reach how far off its sides the sheet's are looked for, cells; a ruler's edge beside it
   *     would draw them off
   */
  private record Ranked(Quad quad, double score, double reach) {
    Ranked(Quad quad, double score) {
      this(quad, score, Double.POSITIVE_INFINITY);
    }
  }

  private static List<Ranked> rank(ColourRaster small, EdgeMap edges, PaperLikelihood paper) {
    List<EdgeLine> lines = new ArrayList<>(LineHough.find(edges, MOST_LINES, 18));
    int w = small.width();
    int h = small.height();
    double diagonal = Math.hypot(w, h);
    lines.add(EdgeLine.border(1, 0, 0, 0.3, diagonal));
    lines.add(EdgeLine.border(1, 0, w, 0.3, diagonal));
    lines.add(EdgeLine.border(0, 1, 0, 0.3, diagonal));
    lines.add(EdgeLine.border(0, 1, h, 0.3, diagonal));
    List<Ranked> ranked = new ArrayList<>();
    List<QuadSearch.Scored> quads = QuadSearch.best(lines, w, h, MOST_QUADS);
    for (Quad region : PaperRegions.find(small)) {
      quads.add(new QuadSearch.Scored(region, QuadSearch.supportOf(region, edges)));
    }
    for (QuadSearch.Scored s : quads) {
      ranked.add(new Ranked(s.quad(), score(s.quad(), s.support(), paper, small)));
    }
    return distinct(Stream.of(ranked));
  }

  /**
   * Sheets that a pencilled line across them parts in two, each as good a figure as the whole: the
   * whole has less support where a clip or a finger lies on its end. Only what was not seen as a
   * whole is joined, for a part's corner is less sure than its own.
   */
  private static List<Ranked> joined(
      List<Ranked> ranked, ColourRaster small, EdgeMap edges, PaperLikelihood paper) {
    List<Ranked> joined = new ArrayList<>();
    for (int i = 0; i < ranked.size(); i++) {
      for (int j = 0; j < i; j++) {
        ranked
            .get(i)
            .quad()
            .joinedWith(ranked.get(j).quad())
            .filter(whole -> ranked.stream().noneMatch(r -> similar(r.quad(), whole)))
            .map(q -> new Ranked(q, score(q, QuadSearch.supportOf(q, edges), paper, small)))
            .filter(whole -> whole.score() > 0)
            .ifPresent(joined::add);
      }
    }
    return joined;
  }

  /** The best, of which no two are nearly the same. */
  private static List<Ranked> distinct(Stream<List<Ranked>> lists) {
    List<Ranked> distinct = new ArrayList<>();
    for (Ranked r :
        lists
            .flatMap(List::stream)
            .sorted(Comparator.comparingDouble(Ranked::score).reversed())
            .toList()) {
      if (distinct.stream().noneMatch(d -> similar(d.quad(), r.quad()))) {
        distinct.add(r);
      }
      if (distinct.size() >= MOST_RANKS) {
        break;
      }
    }
    return distinct;
  }

  private static double score(
      Quad quad, double support, PaperLikelihood paper, ColourRaster picture) {
    double size = StrictMath.pow(quad.area() / (picture.width() * (double) picture.height()), 0.3);
    return paper.of(quad) * support * size;
  }

  private static boolean similar(Quad a, Quad b) {
    double ratio = Math.min(a.area(), b.area()) / Math.max(a.area(), b.area());
    return ratio > 0.95 && a.overlap(b) > 0.95;
  }

  private static StripOutline refine(
      Ranked ranked, SmoothPicture coarse, int coarseFactor, SmoothPicture fine, int fineFactor) {
    Quad quad = ranked.quad();
    SideCurve[] curves = new SideCurve[4];
    double shortest =
        Math.min(Math.min(quad.side(0), quad.side(1)), Math.min(quad.side(2), quad.side(3)));
    for (int i = 0; i < 4; i++) {
      double[] line = line(quad, i);
      int samples = (int) Math.max(30, Math.min(160, quad.side(i) / 3));
      double usual = Math.max(3, Math.min(0.025 * quad.side(i), 0.08 * shortest));
      double reach = Math.min(usual, ranked.reach());
      SideTracer tracer = new SideTracer(coarse, reach, samples);
      curves[i] = SideCurve.fit(line, tracer.trace(line[0], line[1], line[2], line[3], null));
    }
    double up = coarseFactor / (double) fineFactor;
    Quad large = quad.scaled(up);
    for (int i = 0; i < 4; i++) {
      double[] line = line(large, i);
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

  private static double[] line(Quad quad, int i) {
    int j = (i + 1) % 4;
    return new double[] {quad.x()[i], quad.y()[i], quad.x()[j], quad.y()[j]};
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
