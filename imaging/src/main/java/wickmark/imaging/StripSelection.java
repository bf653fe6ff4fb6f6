package wickmark.imaging;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import wickmark.imaging.photo.PhotoPoint;
import wickmark.imaging.scale.RulerEdge;

/**
 * Which of the outlines are strips to report: the best, and further ones beside it that would be
 * taken for strips without it. A ruler has no baseline, an unused strip no dye.
 */
final class StripSelection {
  /** Least evidence of a strip that nobody pointed at. */
  static final double LEAST_EVIDENCE = 5.6;

  /**
   * Evidence from which a strip is one and no other outline need be looked for: in 176 drawn and
   * practice pictures all right ones but one had at least 10.5, parts of strips up to 9.6.
   */
  private static final double SURE = 10.2;

  /**
   * That an outline's corners are square, at the least, for a strip that is sure: sheets that are
   * cut by hand may have less, and so do those with a wedge of the desk at one side.
   */
  private static final double SQUARE = 0.05;

  /** Evidence of a strip that was found only then: wrong ones had at most 7.7, right ones 9.2. */
  private static final double CONVINCING = 9;

  /** Least evidence of a second strip: most pictures show one. */
  private static final double LEAST_FURTHER = 5.6;

  /** Least evidence of a second strip that shows no front. */
  private static final double LEAST_FRONTLESS = 5.8;

  /**
   * Least evidence of a second strip as a part of the best's: strips of one picture are alike, the
   * tiles that they lie on have half as much at the most.
   */
  private static final double FURTHER_LIKE_BEST = 0.6;

  private static final double LEAST_FURTHER_BASELINE = 0.5;

  /** Ratio of two outlines' scores from which the poorer is none. */
  private static final double BETTER_SEEN = 1.3;

  /**
   * Least light of a second strip as a part of the best's: half shade passes, most desks do not.
   */
  private static final double LIKE_PAPER = 0.3;

  /** Least score, over the best strip's, of the outline of a sheet like the strips. */
  private static final double SEEN_LIKE_STRIPS = 0.7;

  /** Least ratio of the areas of sheets of one size: strips of one picture differ in length. */
  private static final double LEAST_OF_SIZE = 0.5;

  /** Least coloured area of a developed strip, mm²: one small spot has more. */
  private static final double LEAST_DYE_MM2 = 4;

  private final ReadingRequest request;
  private final List<RulerEdge> edges;

  private StripSelection(ReadingRequest request, List<RulerEdge> edges) {
    this.request = request;
    this.edges = edges;
  }

  /**
   * Selects.
   *
   * @param candidates best first
   * @param edges rulers in the picture
   * @return from the left; empty if there is no strip
   */
  static List<StripChoice.Candidate> of(
      List<StripChoice.Candidate> candidates, ReadingRequest request, List<RulerEdge> edges) {
    return new StripSelection(request, edges).select(candidates);
  }

  private List<StripChoice.Candidate> select(List<StripChoice.Candidate> candidates) {
    List<StripChoice.Candidate> ranked = new ArrayList<>(candidates);
    ranked.sort(
        Comparator.comparingInt((StripChoice.Candidate c) -> -saidOn(c))
            .thenComparingDouble(c -> -c.total()));
    List<StripChoice.Candidate> strips = new ArrayList<>();
    for (StripChoice.Candidate c : ranked) {
      boolean enough = strips.isEmpty() ? isStrip(c) : isFurther(c, strips.get(0));
      if (enough && strips.stream().noneMatch(c::overlaps) && isBestSeen(c, ranked, strips)) {
        strips.add(c);
      }
    }
    addAlike(ranked, strips);
    boolean developed = strips.stream().anyMatch(StripSelection::isDeveloped);
    if (developed) {
      strips.removeIf(c -> !isDeveloped(c) && saidOn(c) == 0);
    }
    return inOrder(strips);
  }

  /**
   * Adds the sheets among several strips that are like them but do not show what a strip shows:
   * each is one that cannot be read, and to be told so under its own number.
   */
  private void addAlike(List<StripChoice.Candidate> ranked, List<StripChoice.Candidate> strips) {
    if (strips.size() < 2) {
      return;
    }
    List<StripChoice.Candidate> read = List.copyOf(strips);
    for (StripChoice.Candidate c : ranked) {
      if (isLike(c, read)
          && strips.stream().noneMatch(c::overlaps)
          && isBestSeen(c, ranked, strips)) {
        strips.add(c);
      }
    }
  }

  /** Whether dye is on a sheet of the strips' size and paper, seen as well as they are. */
  private boolean isLike(StripChoice.Candidate c, List<StripChoice.Candidate> strips) {
    StripChoice.Candidate best = strips.get(0);
    double size = strips.stream().mapToDouble(s -> s.outline().area()).average().orElseThrow();
    return isDeveloped(c)
        && c.outline().score() >= SEEN_LIKE_STRIPS * best.outline().score()
        && c.outline().area() > LEAST_OF_SIZE * size
        && c.outline().area() < size / LEAST_OF_SIZE
        && c.light() >= LIKE_PAPER * best.light()
        && !StripChoice.holdsRuler(c, edges);
  }

  /** Whether this sheet, if none is better, is a strip whatever the others are. */
  static boolean isSureStrip(StripChoice.Candidate c) {
    return c.total() >= LEAST_EVIDENCE && isDeveloped(c);
  }

  /**
   * Whether so much speaks for it that no other outline need be looked for. Where a side runs along
   * a ruler, the paper's own may be hidden by the ruler's better step.
   */
  static boolean isSure(StripChoice.Candidate c, List<RulerEdge> edges) {
    return c.total() >= SURE
        && c.plane().careful() >= SQUARE
        && StripChoice.sidesOnRulers(c.outline(), edges) == 0;
  }

  /** Whether enough speaks for it where it was found only on a closer look. */
  static boolean isConvincing(StripChoice.Candidate c) {
    return c.total() >= CONVINCING;
  }

  private boolean isStrip(StripChoice.Candidate c) {
    return saidOn(c) > 0
        || (c.total() >= LEAST_EVIDENCE
            && (isDeveloped(c) || !StripChoice.isRuler(c.shape(), edges)));
  }

  private boolean isFurther(StripChoice.Candidate c, StripChoice.Candidate best) {
    return saidOn(c) > 0
        || (c.total() >= (c.layout().front() == null ? LEAST_FRONTLESS : LEAST_FURTHER)
            && c.total() >= FURTHER_LIKE_BEST * best.total()
            && c.layout().baseline() != null
            && (c.layout().baseline().certainty() >= LEAST_FURTHER_BASELINE || isConvincing(c))
            && c.light() >= LIKE_PAPER * best.light()
            && !StripChoice.holdsRuler(c, edges));
  }

  /**
   * Whether no other sheet in its place, beside the strips taken, shows its sides much better: a
   * sheet together with the desk beside it may hold more lines, but no sides.
   */
  private boolean isBestSeen(
      StripChoice.Candidate c, List<StripChoice.Candidate> all, List<StripChoice.Candidate> taken) {
    return taken.isEmpty()
        || saidOn(c) > 0
        || all.stream()
            .filter(other -> other.overlaps(c) && taken.stream().noneMatch(other::overlaps))
            .noneMatch(other -> other.outline().score() > BETTER_SEEN * c.outline().score());
  }

  private static boolean isDeveloped(StripChoice.Candidate c) {
    return c.layout().dyeMm2() >= LEAST_DYE_MM2;
  }

  /** How many of the person's words hold for this sheet. */
  private int saidOn(StripChoice.Candidate c) {
    int said = request.strip().corners().isEmpty() ? 0 : 1;
    said += SaidPlaces.on(c.shape(), request.lines().baseline()).isPresent() ? 1 : 0;
    said += SaidPlaces.on(c.shape(), request.lines().front()).isPresent() ? 1 : 0;
    return said;
  }

  /** The option whose place lies on none of the strips, if there is one. */
  static Optional<String> saidBeside(List<StripChoice.Candidate> strips, ReadingRequest request) {
    if (isBeside(strips, request.lines().baseline())) {
      return Optional.of("--baseline");
    }
    if (isBeside(strips, request.lines().front())) {
      return Optional.of("--front");
    }
    if (request.spots().stream().anyMatch(spot -> isBeside(strips, spot.place()))) {
      return Optional.of("the corrections of a spot");
    }
    return request.lines().origins().entrySet().stream()
        .filter(o -> isBeside(strips, o.getValue()))
        .map(o -> "--origin " + o.getKey())
        .sorted()
        .findFirst();
  }

  private static boolean isBeside(List<StripChoice.Candidate> strips, PhotoPoint place) {
    return strips.stream().noneMatch(c -> c.shape().contains(place));
  }

  private static boolean isBeside(
      List<StripChoice.Candidate> strips, Optional<ReadingRequest.Segment> said) {
    return said.isPresent()
        && strips.stream().noneMatch(c -> SaidPlaces.on(c.shape(), said).isPresent());
  }

  /** From the left; from the top where they lie one below the other. */
  private static List<StripChoice.Candidate> inOrder(List<StripChoice.Candidate> strips) {
    ToDoubleFunction<StripChoice.Candidate> x = c -> mean(c, PhotoPoint::x);
    ToDoubleFunction<StripChoice.Candidate> y = c -> mean(c, PhotoPoint::y);
    strips.sort(Comparator.comparingDouble(spread(strips, x) >= spread(strips, y) ? x : y));
    return strips;
  }

  private static double mean(StripChoice.Candidate c, ToDoubleFunction<PhotoPoint> coordinate) {
    return c.outline().corners().stream().mapToDouble(coordinate).average().orElse(0);
  }

  private static double spread(
      List<StripChoice.Candidate> strips, ToDoubleFunction<StripChoice.Candidate> coordinate) {
    return strips.stream().mapToDouble(coordinate).max().orElse(0)
        - strips.stream().mapToDouble(coordinate).min().orElse(0);
  }
}
