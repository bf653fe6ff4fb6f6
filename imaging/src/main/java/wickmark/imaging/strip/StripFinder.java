package wickmark.imaging.strip;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Function;
import java.util.function.ToDoubleBiFunction;
import java.util.stream.Stream;
import wickmark.imaging.photo.Photo;
import wickmark.imaging.photo.PhotoArea;
import wickmark.imaging.raster.ColourRaster;

/**
 * Finds sheets of paper in a photo: straight edges (Hough), put together to quadrilaterals, ranked
 * by edge support and by what lies inside and outside, then followed at finer scale. It does not
 * know a strip from a ruler or from a blank sheet: later stages tell by what is on the paper.
 */
public final class StripFinder {
  /** Long side of the shrunken picture on which sheets are looked for, cells. */
  private static final int SEARCH_SIZE = 1000;

  private static final int MOST_LINES = 60;

  /** Weight of a line, cells that are surely an edge, below which none is looked for. */
  private static final double LEAST_VOTES = 18;

  private static final int MOST_QUADS = 400;

  /** Ranks looked at for further sheets beside those that rank first. */
  private static final int MOST_RANKS = 60;

  /** How far off such a step the side is looked for, cells. */
  private static final double BESIDE_REACH = 5;

  /** Outlines of one place that are taken beyond those that rank first. */
  private static final int MOST_OF_A_PLACE = 2;

  /** Sheets on rulers that are taken beside all others. */
  private static final int MOST_ON_RULERS = 6;

  /** Sheets that a ruler lies over which are taken beside all others. */
  private static final int MOST_UNDER_RULERS = 3;

  /** Thresholds, neighbours mostly, at which a region is one and the same if it is a thing. */
  private static final int STABLE = 4;

  /** Stable regions that are taken whatever their rank. */
  private static final int MOST_REGIONS = 2;

  private final Photo photo;
  private final int factor;
  private final ColourRaster small;
  private final EdgeMap edges;
  private final PaperLikelihood paper;

  /** The shrunken picture; of what lies on squared or ruled paper without the printed lines. */
  private final ColourRaster ground;

  /** Regions that may be sheets, best first. */
  private final List<RankedQuad> regions;

  /** Quadrilaterals that may be sheets, best first. */
  private final List<RankedQuad> seen;

  /** Those together with sheets that lines part. */
  private final List<RankedQuad> whole;

  private StripFinder(Photo photo, List<PhotoArea> ignored) {
    this.photo = photo;
    this.factor = OutlineTracer.factorFor(photo, SEARCH_SIZE);
    this.small = ColourRaster.shrink(photo, factor);
    this.edges = edges(small, ignored);
    this.paper = new PaperLikelihood(small.blurred(1.2));
    List<RankedQuad> regionsSeen = regions(small, edges, paper);
    this.regions = stable(regionsSeen);
    List<EdgeLine> lines = lines(edges);
    List<List<RankedQuad>> quads = new ArrayList<>(List.of(quads(lines), regionsSeen));
    boolean isCrowded = lines.size() >= PrintedLines.MANY;
    ColourRaster filled = isCrowded ? PrintedLines.filled(small) : small;
    EdgeMap steps = isCrowded ? edges(filled, ignored) : edges;
    boolean onLines = isCrowded && PrintedLines.areMany(lines, steps);
    this.ground = onLines ? filled : small;
    if (onLines) {
      quads.add(quads(lines(steps)));
    }
    this.seen = distinct(quads.stream());
    List<RankedQuad> joined = joined(seen, small, edges, paper);
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
   * Returns what may be sheets.
   *
   * @param best how many are taken by their rank alone
   * @param most how many at the most, with those of lower rank that lie elsewhere
   * @param rulers rows of marks: where a side runs along a ruler, a sheet is looked for beside it
   * @param onRulers whether one is looked for on it and below it, too, which takes longer
   */
  public SheetOutlines outlines(int best, int most, List<MarkRow> rulers, boolean onRulers) {
    SheetsByRulers sheets = new SheetsByRulers(paper, rulers, factor);
    List<RankedQuad> beside = byRulers(best, sheets::beside, QuadSearch::supportOf);
    // A side beside a ruler is a guess more: what was seen keeps at least half of the places.
    List<RankedQuad> ranked = new ArrayList<>(beside.subList(0, Math.min(best / 2, beside.size())));
    ranked.addAll(whole);
    List<RankedQuad> spread = spread(ranked, best, most);
    int first = Math.min(best, spread.size());
    List<RankedQuad> taken = withRegions(spread.subList(0, first));
    if (onRulers) {
      taken.addAll(
          byRulers(best, sheets::on, QuadSearch::supportOf).stream()
              .limit(MOST_ON_RULERS)
              .toList());
      taken.addAll(
          byRulers(best, sheets::under, QuadSearch::supportOfCovered).stream()
              .limit(MOST_UNDER_RULERS)
              .toList());
    }
    OutlineTracer tracer = new OutlineTracer(photo, ground, factor, edges);
    return new SheetOutlines(
        tracer.outlines(taken), tracer.outlines(spread.subList(first, spread.size())));
  }

  /** Sheets beside rulers or on them, of which the ruler's edge hides a side; best first. */
  private List<RankedQuad> byRulers(
      int best, Function<Quad, List<Quad>> sheets, ToDoubleBiFunction<Quad, EdgeMap> support) {
    return distinct(
        Stream.of(
            seen.subList(0, Math.min(best, seen.size())).stream()
                .flatMap(r -> sheets.apply(r.quad()).stream())
                .map(sheet -> byRuler(sheet, support.applyAsDouble(sheet, edges)))
                .filter(sheet -> sheet.score() > 0)
                .toList()));
  }

  private RankedQuad byRuler(Quad sheet, double support) {
    return new RankedQuad(sheet, score(sheet, support, paper, small), BESIDE_REACH);
  }

  /** The best, then those that lie elsewhere: six strips on one scan are all to be seen. */
  private static List<RankedQuad> spread(List<RankedQuad> ranked, int best, int most) {
    List<RankedQuad> taken = new ArrayList<>();
    for (RankedQuad r : ranked) {
      long here = taken.stream().filter(t -> t.quad().shareOf(r.quad()) > 0.5).count();
      if (taken.size() < best || (taken.size() < most && here < MOST_OF_A_PLACE)) {
        taken.add(r);
      }
    }
    return taken;
  }

  /**
   * The same and the best of the stable regions: on wood, whose grain is straight edges everywhere,
   * a small sheet ranks behind much that is none.
   */
  private List<RankedQuad> withRegions(List<RankedQuad> taken) {
    List<RankedQuad> all = new ArrayList<>(taken);
    regions.stream()
        .filter(r -> taken.stream().noneMatch(t -> similar(t.quad(), r.quad())))
        .limit(MOST_REGIONS)
        .forEach(all::add);
    return all;
  }

  private static List<RankedQuad> regions(
      ColourRaster small, EdgeMap edges, PaperLikelihood paper) {
    List<RankedQuad> regions = new ArrayList<>();
    for (Quad quad : PaperRegions.find(small)) {
      double support = QuadSearch.supportOf(quad, edges);
      regions.add(new RankedQuad(quad, score(quad, support, paper, small)));
    }
    return regions;
  }

  /** Regions that are the same at several thresholds: what is lighter by chance is not. */
  private static List<RankedQuad> stable(List<RankedQuad> regions) {
    return distinct(
        Stream.of(
            regions.stream()
                .filter(r -> r.score() > 0)
                .filter(
                    r ->
                        regions.stream().filter(o -> similar(o.quad(), r.quad())).count() >= STABLE)
                .toList()));
  }

  private static List<EdgeLine> lines(EdgeMap edges) {
    return LineHough.find(edges, MOST_LINES, LEAST_VOTES);
  }

  private EdgeMap edges(ColourRaster picture, List<PhotoArea> ignored) {
    EdgeMap map = EdgeMap.of(picture);
    ignored.forEach(area -> map.leaveOut(area, factor));
    return map;
  }

  private List<RankedQuad> quads(List<EdgeLine> found) {
    List<EdgeLine> lines = new ArrayList<>(found);
    int w = small.width();
    int h = small.height();
    double diagonal = Math.hypot(w, h);
    lines.add(EdgeLine.border(1, 0, 0, QuadSearch.BORDER_SUPPORT, diagonal));
    lines.add(EdgeLine.border(1, 0, w, QuadSearch.BORDER_SUPPORT, diagonal));
    lines.add(EdgeLine.border(0, 1, 0, QuadSearch.BORDER_SUPPORT, diagonal));
    lines.add(EdgeLine.border(0, 1, h, QuadSearch.BORDER_SUPPORT, diagonal));
    List<RankedQuad> ranked = new ArrayList<>();
    for (QuadSearch.Scored s : QuadSearch.best(lines, w, h, MOST_QUADS)) {
      ranked.add(new RankedQuad(s.quad(), score(s.quad(), s.support(), paper, small)));
    }
    return ranked;
  }

  /**
   * Sheets that a pencilled line across them parts in two, each as good a figure as the whole: the
   * whole has less support where a clip or a finger lies on its end. Only what was not seen as a
   * whole is joined, for a part's corner is less sure than its own.
   */
  private static List<RankedQuad> joined(
      List<RankedQuad> ranked, ColourRaster small, EdgeMap edges, PaperLikelihood paper) {
    List<RankedQuad> joined = new ArrayList<>();
    for (int i = 0; i < ranked.size(); i++) {
      for (int j = 0; j < i; j++) {
        ranked
            .get(i)
            .quad()
            .joinedWith(ranked.get(j).quad())
            .filter(whole -> ranked.stream().noneMatch(r -> similar(r.quad(), whole)))
            .map(q -> new RankedQuad(q, score(q, QuadSearch.supportOf(q, edges), paper, small)))
            .filter(whole -> whole.score() > 0)
            .ifPresent(joined::add);
      }
    }
    return joined;
  }

  /** The best, of which no two are nearly the same. */
  private static List<RankedQuad> distinct(Stream<List<RankedQuad>> lists) {
    List<RankedQuad> distinct = new ArrayList<>();
    for (RankedQuad r :
        lists
            .flatMap(List::stream)
            .sorted(Comparator.comparingDouble(RankedQuad::score).reversed())
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
}
