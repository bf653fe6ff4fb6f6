package wickmark.imaging;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import wickmark.imaging.line.Layout;
import wickmark.imaging.line.LayoutSearch;
import wickmark.imaging.paper.DensityMap;
import wickmark.imaging.photo.Photo;
import wickmark.imaging.photo.PhotoArea;
import wickmark.imaging.photo.PhotoPoint;
import wickmark.imaging.pose.SheetView;
import wickmark.imaging.raster.Selection;
import wickmark.imaging.scale.RulerEdge;
import wickmark.imaging.straight.PaperShape;
import wickmark.imaging.straight.StraightStrip;
import wickmark.imaging.straight.StripFrame;
import wickmark.imaging.strip.SheetOutlines;
import wickmark.imaging.strip.StripOutline;

/**
 * Which sheet in the picture is the strip: outlines are looked at quickly and coarsely for what is
 * on them, and edges and content vote together.
 */
final class StripChoice {
  /** Cells per (nominal) millimetre of the quick look. */
  private static final double CELLS_PER_MM = 4;

  private static final double BLOCK_MM = 2;

  /** Weight of the outline's score (0 to 1) against the content's. */
  private static final double OUTLINE_WEIGHT = 8;

  /** Weight against an outline that a ruler runs through: it holds the ruler or is one. */
  private static final double RULER_WEIGHT = 5;

  /** Weight against a side where a ruler has its edge: another step beside it is the strip's. */
  private static final double RULER_SIDE = 1;

  /**
   * Weight of an outline's square corners: one side of it may be the edge of something else, or of
   * its shadow.
   */
  private static final double SQUARE = 0.3;

  /** Outlines of sheets that lie open to view score more. */
  private static final double POOR_OUTLINE = 0.25;

  /** Cells of the quick look at a sheet of 400 mm by 500 mm. */
  private static final double MOST_CELLS = 5e6;

  /** Overlap from which two outlines are of the same place: strips may lie over one another. */
  private static final double SAME_PLACE = 0.15;

  /** Least score of the outline of a further strip as a part of the best one's. */
  private static final double SEEN_LIKE_BEST = 0.45;

  /**
   * The most evidence that a layout can have: both lines with the greatest certainty, names below
   * all lanes and nowhere else, marks on the baseline and dots at all lanes. Practice pictures have
   * up to 10.5.
   */
  private static final double MOST_LAYOUT = 12.1;

  /** Layout's evidence from which a sheet surely shows its lines, and no desk that hides them. */
  private static final double CLEAR_LAYOUT = 7;

  /**
   * By how much a part of such a sheet may show more than the sheet: by 0.52 at the most, in 97
   * drawn and 31 practice pictures.
   */
  private static final double CLEARER_PART = 0.6;

  /** Confidence of a graduated edge that no pencilled row reaches. */
  private static final double SURE_MARKS = 0.85;

  /** Confidence of a graduated edge that makes what bears it a ruler. */
  private static final double SURE_RULER = 0.4;

  /** Weight against an outline that cuts a sheet short at one side: a fold or line across it. */
  private static final double PART_WEIGHT = 1;

  /** Weight against an outline that holds a sheet and something of another colour beside it. */
  private static final double DESK_WEIGHT = 2;

  private static final Comparator<Candidate> BEST_FIRST =
      Comparator.comparingDouble(Candidate::total).reversed();

  private StripChoice() {}

  /**
   * An outline with what is on it.
   *
   * @param shape the paper, less what is to be ignored
   * @param light of the paper, linear, in its darkest channel, 0 to 1; 0 where nothing was looked
   *     at
   * @param total evidence of outline and content together
   */
  record Candidate(
      StripOutline outline,
      PaperShape shape,
      PlaneScale plane,
      Layout layout,
      double light,
      double total) {
    /** The corners from the top-left on, the baseline's end being the bottom. */
    List<PhotoPoint> corners() {
      List<PhotoPoint> corners = new ArrayList<>(outline.corners());
      Collections.rotate(corners, layout.quarterTurns());
      return corners;
    }

    /** Whether two outlines cannot both be sheets. */
    boolean overlaps(Candidate other) {
      return outline.overlap(other.outline) > SAME_PLACE;
    }

    /**
     * Less evidence where a larger sheet, at least as well seen, goes on beyond this one's upper or
     * lower end: strips are folded across, to be hung up. Beside a strip other things lie, rulers
     * above all. Less, too, where this one goes on beyond a smaller one's side in another colour.
     */
    private Candidate amongOthers(Photo photo, List<Candidate> all) {
      double less = 0;
      if (all.stream()
          .filter(c -> c.outline.score() >= outline.score())
          .anyMatch(c -> isCutAtEnd(photo, c))) {
        less += PART_WEIGHT;
      }
      if (all.stream().anyMatch(c -> goesOnInOtherColour(photo, c.outline))) {
        less += DESK_WEIGHT;
      }
      return less == 0 ? this : new Candidate(outline, shape, plane, layout, light, total - less);
    }

    private boolean isCutAtEnd(Photo photo, Candidate whole) {
      OptionalInt cut = outline.cutOf(whole.outline);
      return cut.isPresent()
          && isEnd(cut.getAsInt())
          && !CutColour.isOther(photo, outline, cut.getAsInt(), whole.outline);
    }

    private boolean goesOnInOtherColour(Photo photo, StripOutline part) {
      OptionalInt cut = part.cutOf(outline);
      return cut.isPresent() && CutColour.isOther(photo, part, cut.getAsInt(), outline);
    }

    /** Whether a side of the outline is the strip's upper or lower end. */
    private boolean isEnd(int side) {
      return (side + layout.quarterTurns()) % 2 == 0;
    }

    /** Top, right, bottom and left edge, in the corners' order. */
    List<List<PhotoPoint>> sides() {
      List<List<PhotoPoint>> sides = new ArrayList<>(outline.sides());
      Collections.rotate(sides, layout.quarterTurns());
      return sides;
    }

    /** Plane units of a (nominal) millimetre. */
    double unitsPerMm() {
      if (plane.millimetresPerUnit().isPresent()) {
        return 1 / plane.millimetresPerUnit().getAsDouble();
      }
      return 1 / SheetView.usualMillimetresPerUnit(plane.view(), outline.corners());
    }
  }

  private static PaperShape shape(StripOutline outline, List<List<PhotoPoint>> ignored) {
    List<PhotoPoint> around = new ArrayList<>();
    for (int i = 0; i < 4; i++) {
      around.add(outline.corners().get(i));
      around.addAll(outline.sides().get(i));
    }
    return new PaperShape(around, ignored);
  }

  /**
   * Weighs the outlines; best first. Those that do not rank first count only where another strip
   * could lie: beside the best, as well seen or nearly so, and not on a ruler. What lies over the
   * best seen one and cannot reach it, whatever is on it, is passed over.
   */
  static List<Candidate> weigh(
      Photo photo, ReadingRequest request, SheetOutlines outlines, ScaleSources scales) {
    List<StripOutline> next = new ArrayList<>(outlines.first());
    next.sort(Comparator.comparingDouble(StripOutline::score).reversed());
    List<StripOutline> bestSeen = next.subList(0, Math.min(1, next.size()));
    List<Candidate> all = new ArrayList<>(looked(photo, request, bestSeen, scales));
    bestSeen.clear();
    List<StripOutline> passedOver = new ArrayList<>(next);
    all.stream()
        .filter(leader -> nothingSaid(request) && StripSelection.isSureStrip(leader))
        .forEach(leader -> next.removeIf(o -> isHopeless(o, leader)));
    passedOver.removeAll(next);
    all.addAll(looked(photo, request, next, scales));
    Optional<Candidate> best = best(all);
    // Beside what is best after all there may be another strip.
    best.filter(StripSelection::isSureStrip)
        .ifPresent(b -> passedOver.removeIf(o -> b.outline().overlap(o) > SAME_PLACE));
    all.addAll(looked(photo, request, passedOver, scales));
    List<StripOutline> further = new ArrayList<>();
    for (StripOutline outline : outlines.further()) {
      boolean another = best.map(b -> mayBeAnother(outline, b.outline())).orElse(true);
      if (another && !isRuler(shape(outline, List.of()), scales.rulers())) {
        further.add(outline);
      }
    }
    all.addAll(looked(photo, request, further, scales));
    return all.stream().map(c -> c.amongOthers(photo, all)).sorted(BEST_FIRST).toList();
  }

  /** Whether a sheet lies beside the best one and is seen nearly as well. */
  private static boolean mayBeAnother(StripOutline outline, StripOutline best) {
    return best.overlap(outline) <= SAME_PLACE && outline.score() >= SEEN_LIKE_BEST * best.score();
  }

  private static Optional<Candidate> best(List<Candidate> all) {
    return all.stream().max(Comparator.comparingDouble(Candidate::total));
  }

  private static boolean nothingSaid(ReadingRequest request) {
    return request.lines().baseline().isEmpty() && request.lines().front().isEmpty();
  }

  /** A part of a sheet that is clear has hardly more on it than the sheet. */
  private static boolean isHopeless(StripOutline outline, Candidate leader) {
    double sheet = leader.layout().score();
    boolean isPart = sheet > CLEAR_LAYOUT && outline.isWithin(leader.outline());
    double most = isPart ? Math.min(MOST_LAYOUT, sheet + CLEARER_PART) : MOST_LAYOUT;
    return leader.outline().overlap(outline) > SAME_PLACE
        && outlineEvidence(outline) + most < leader.total();
  }

  /** Looks at outlines, at several at a time where there are processors for it; in their order. */
  private static List<Candidate> looked(
      Photo photo, ReadingRequest request, List<StripOutline> outlines, ScaleSources scales) {
    return outlines.parallelStream()
        .map(outline -> candidate(photo, request, outline, scales))
        .toList();
  }

  /** Whether a sheet is what bears a graduated edge: a ruler, with its long marks as lines. */
  static boolean isRuler(PaperShape shape, List<RulerEdge> edges) {
    return edges.stream()
        .filter(edge -> edge.confidence() >= SURE_RULER)
        .anyMatch(
            edge ->
                edge.marks().stream().filter(m -> shape.contains(m.at())).count()
                    > 0.5 * edge.marks().size());
  }

  /**
   * Whether a graduated edge runs along most of a sheet: then the sheet is a ruler, or what lies
   * between a ruler and a strip.
   */
  static boolean holdsRuler(Candidate c, List<RulerEdge> edges) {
    double longest = 0;
    for (int i = 0; i < 4; i++) {
      List<PhotoPoint> corners = c.outline().corners();
      longest = Math.max(longest, seenLength(corners.get(i), corners.get((i + 1) % 4)));
    }
    for (RulerEdge edge : edges) {
      List<PhotoPoint> inside =
          edge.marks().stream().map(m -> m.at()).filter(c.shape()::contains).toList();
      if (edge.confidence() >= SURE_RULER
          && inside.size() > 1
          && seenLength(inside.get(0), inside.get(inside.size() - 1)) > 0.5 * longest) {
        return true;
      }
    }
    return isRuler(c.shape(), edges);
  }

  private static double seenLength(PhotoPoint a, PhotoPoint b) {
    return Math.hypot(b.x() - a.x(), b.y() - a.y());
  }

  private static Candidate candidate(
      Photo photo, ReadingRequest request, StripOutline outline, ScaleSources scales) {
    List<RulerEdge> edges = scales.rulers();
    List<List<PhotoPoint>> ignored =
        new ArrayList<>(request.strip().ignoredAreas().stream().map(PhotoArea::corners).toList());
    PaperShape whole = shape(outline, ignored);
    List<RulerEdge> beside = outside(edges, whole);
    ignored.addAll(RulerCover.of(outline.corners(), whole, surely(edges)));
    PaperShape shape = shape(outline, ignored);
    PlaneScale plane = scales.plane(photo, request, outline, beside);
    Candidate bare = new Candidate(outline, shape, plane, Layout.none(), 0, 0);
    Optional<StraightStrip> strip = quickLook(photo, bare);
    Layout layout = strip.map(s -> layout(s, request, bare)).orElse(Layout.none());
    double light = strip.map(StripChoice::paperLight).orElse(0.0);
    double total =
        outlineEvidence(outline)
            + layout.score()
            + SQUARE * (plane.careful() - 1)
            - RULER_WEIGHT * RulerCover.shareInside(whole, edges)
            - RULER_SIDE * sidesOnRulers(outline, edges);
    Candidate found = new Candidate(outline, shape, plane, layout, light, total);
    return request
        .scale()
        .map(said -> SaidSize.apply(plane, said, found.corners(), outline.sidesSigmaPx()))
        .map(scaled -> new Candidate(outline, shape, scaled, layout, light, total))
        .orElse(found);
  }

  /** How many sides run where a ruler has its edge. */
  static int sidesOnRulers(StripOutline outline, List<RulerEdge> edges) {
    int sides = 0;
    for (int i = 0; i < 4; i++) {
      PhotoPoint a = outline.corners().get(i);
      PhotoPoint b = outline.corners().get((i + 1) % 4);
      sides += RulerRow.marks(edges).stream().anyMatch(row -> row.hasEdgeAt(a, b)) ? 1 : 0;
    }
    return sides;
  }

  /** Four sides that are hardly seen count against a sheet, whatever is within. */
  private static double outlineEvidence(StripOutline outline) {
    double missing = Math.max(0, 1 - outline.score() / POOR_OUTLINE);
    return OUTLINE_WEIGHT * (outline.score() - missing);
  }

  private static List<RulerEdge> surely(List<RulerEdge> edges) {
    return edges.stream().filter(edge -> edge.confidence() >= SURE_MARKS).toList();
  }

  /**
   * Graduated edges that do not run through the strip, or are surely a ruler's lying on it:
   * pencilled rows are no ruler.
   */
  private static List<RulerEdge> outside(List<RulerEdge> edges, PaperShape shape) {
    return edges.stream()
        .filter(
            edge -> {
              long inside = edge.marks().stream().filter(m -> shape.contains(m.at())).count();
              return edge.confidence() >= SURE_MARKS || inside < 0.5 * edge.marks().size();
            })
        .toList();
  }

  /** The straight strip, coarsely; none where by this ruler the sheet is larger than any strip. */
  private static Optional<StraightStrip> quickLook(Photo photo, Candidate candidate) {
    StripFrame frame =
        StripFrame.around(
            candidate.plane().view(),
            candidate.outline().corners(),
            candidate.unitsPerMm() / CELLS_PER_MM);
    return (double) frame.width() * frame.height() > MOST_CELLS
        ? Optional.empty()
        : Optional.of(StraightStrip.quickly(photo, frame, candidate.shape()));
  }

  private static Layout layout(StraightStrip strip, ReadingRequest request, Candidate candidate) {
    DensityMap map = DensityMap.of(strip, CELLS_PER_MM, BLOCK_MM);
    return LayoutSearch.find(
        map,
        map.turned(),
        SaidPlaces.layout(request, candidate.outline(), candidate.shape(), strip.frame()));
  }

  /** Median of the light in the paper's darkest channel. */
  private static double paperLight(StraightStrip strip) {
    int size = strip.paper().cells().length;
    double[] v = new double[size / 11 + 1];
    int n = 0;
    for (int i = 0; i < size; i += 11) {
      if (strip.paper().cells()[i] > 0) {
        v[n++] =
            Math.min(
                strip.light().red().cells()[i],
                Math.min(strip.light().green().cells()[i], strip.light().blue().cells()[i]));
      }
    }
    return n == 0 ? 0 : Selection.median(v, n);
  }
}
