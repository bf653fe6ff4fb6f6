package wickmark.imaging.line;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import wickmark.imaging.paper.DensityMap;

/**
 * Weighs every pair of lines that could be baseline and front, in all four directions: how clearly
 * the lines are seen, whether the dye lies between them, whether there is writing below the
 * baseline and marks on it, and how far from the ends people draw them.
 */
public final class LayoutSearch {
  /** Evidence from which a line is surely one: the shade at the paper's edge has less. */
  private static final double CLEAR_FRONT = 1.2;

  /** What it costs to see no front: strips without one are rare, a remark at it is not. */
  private static final double NO_FRONT = 0.7;

  /** Contrast, density, that tide marks hardly exceed. */
  private static final double DEEPEST_TIDE = 0.06;

  /** What speaks against a baseline in ink: everybody is told to take a pencil. */
  private static final double INK_BASELINE = 0.8;

  /** Within this distance of a line of ink the edge of what ran out of it seems a line, mm. */
  private static final double INK_RUN_MM = StripContent.INK_RUN_MM;

  /** Evidence of a pencil line that somebody drew right across. */
  private static final double CLEAR_PENCIL = 2;

  /**
   * How far from the pencilled front its tide mark lies at the most, mm: the front is marked at
   * once, and the solvent creeps on while the strip dries (common practice).
   */
  private static final double CREEP_MM = 6;

  /** What two clear ticks are worth as a front; a line right across is worth 3. */
  private static final double TICKS = 1.9;

  /** What names below the lanes are worth. */
  private static final double NAMES = 2.5;

  /** What dots on the line at all lanes are worth. */
  private static final double DOTS = 1;

  /**
   * What it costs that they are on the other line. Names stand at either end, and beside the front
   * if somebody likes them there; the samples were put where the dots are.
   */
  private static final double DOTS_AT_FRONT = 5;

  /** Share of the lanes that may have a dot by chance: a spot's rim, a letter that touches it. */
  private static final double CHANCE_DOTS = 0.4;

  private final List<Hypothesis> all = new ArrayList<>();

  private record Hypothesis(
      int turns, CrossLine baseline, @Nullable CrossLine front, double score, double evidence) {}

  private final SaidLayout said;

  private LayoutSearch(SaidLayout said) {
    this.said = said;
  }

  /**
   * Searches.
   *
   * @param upright the strip with its corners as they come
   * @param turned the strip with its corners turned by one quarter
   * @param said what need not be searched for
   */
  public static Layout find(DensityMap upright, DensityMap turned, SaidLayout said) {
    LayoutSearch search = new LayoutSearch(said);
    StripContent content = StripContent.of(upright);
    StripContent turnedContent = content.turned(turned);
    SmoothDensities smooth = SmoothDensities.of(upright);
    search.consider(upright, smooth, content, 0);
    search.consider(turned, smooth.turned(), turnedContent, 1);
    search.all.sort((a, b) -> Double.compare(b.score, a.score));
    return search.layout(upright, content, turned, turnedContent);
  }

  /**
   * What may be the front, with what tells of it whichever line is the baseline.
   *
   * @param line null: no front
   * @param dyeBeyond share of the dye above it
   * @param names evidence that it is the line above the names, and the strip lies upside down
   * @param dots the same for the line with dots at the lanes
   */
  private record Front(
      @Nullable CrossLine line, double evidence, double dyeBeyond, double names, double dots) {}

  private void consider(DensityMap map, SmoothDensities smooth, StripContent content, int turns) {
    List<CrossLine> lines = CrossLineFinder.find(map, smooth);
    List<CrossLine> baselines = baselines(lines, map, turns);
    for (int down : new int[] {-1, 1}) {
      int quarterTurns = down > 0 ? turns : turns + 2;
      if (!said.turns().contains(quarterTurns)) {
        continue;
      }
      List<Front> fronts = new ArrayList<>();
      for (CrossLine line : fronts(lines, map, turns)) {
        fronts.add(front(line, content, down));
      }
      for (CrossLine baseline : baselines) {
        List<Front> possible =
            fronts.stream().filter(front -> possible(map, baseline, front.line, down)).toList();
        double alone = score(map, content, baseline, down);
        double farNames = possible.stream().mapToDouble(Front::names).max().orElse(0);
        double farDots = possible.stream().mapToDouble(Front::dots).max().orElse(0);
        double against =
            NAMES * farNames + DOTS_AT_FRONT * clear(farDots - content.dotsAtLanes(baseline, down));
        for (Front front : possible) {
          double evidence = alone + score(map, baseline, front, down);
          // What is at the other end speaks against this end, whichever line there is the front.
          all.add(new Hypothesis(quarterTurns, baseline, front.line, evidence - against, evidence));
        }
      }
    }
  }

  /** What is left of a share of lanes with dots when chance has had its part, 0 to 1. */
  private static double clear(double dots) {
    return Math.max(0, dots - CHANCE_DOTS) / (1 - CHANCE_DOTS);
  }

  private static Front front(@Nullable CrossLine line, StripContent content, int down) {
    if (line == null) {
      return new Front(null, -NO_FRONT, 0, 0, 0);
    }
    double evidence = frontEvidence(line);
    double beyond = content.dyeShareBeyond(line, down);
    // As the baseline of a strip that lies upside down: a finger beyond it is no dye below it.
    boolean clear = evidence > CLEAR_FRONT && content.dyeShareBelow(line, -down) < 0.1;
    return new Front(
        line,
        evidence,
        beyond,
        clear ? content.namesUnderLanes(line, -down) : 0,
        clear ? content.dotsAtLanes(line, -down) : 0);
  }

  private List<CrossLine> baselines(List<CrossLine> lines, DensityMap map, int turns) {
    return said.baseline().isPresent()
        ? said.baseline().get().in(map, turns).stream().toList()
        : lines.stream()
            .filter(line -> line.kind() == LineKind.PENCIL || line.kind() == LineKind.INK)
            .toList();
  }

  /** The last one is null: no front. */
  private List<@Nullable CrossLine> fronts(List<CrossLine> lines, DensityMap map, int turns) {
    if (said.front().isPresent()) {
      return new ArrayList<>(said.front().get().in(map, turns).stream().toList());
    }
    List<@Nullable CrossLine> fronts =
        new ArrayList<>(lines.stream().filter(line -> line.kind() != LineKind.INK).toList());
    // No solvent leaves a mark as deep in colour as ink.
    fronts.removeIf(
        front ->
            lines.stream()
                .anyMatch(line -> apart(line, front, map) < INK_RUN_MM && isInk(line, front)));
    fronts.removeIf(
        front ->
            front.kind() == LineKind.TIDE_MARK
                && lines.stream()
                    .filter(line -> line.kind() == LineKind.PENCIL)
                    .filter(line -> frontEvidence(line) > CLEAR_PENCIL)
                    .anyMatch(line -> apart(line, front, map) < CREEP_MM));
    fronts.add(null);
    return fronts;
  }

  /**
   * Whether a front is the course of a line of ink: pencil in warm light, or on tinted paper, has a
   * colour too, but is darker than coloured.
   */
  private static boolean isInk(CrossLine line, CrossLine front) {
    boolean pencil = front.kind() == LineKind.PENCIL && front.strength() > line.strength();
    return line.kind() == LineKind.INK && !pencil;
  }

  /** Whether the front lies above the baseline, and as far as it must where it was found. */
  private static boolean possible(
      DensityMap map, CrossLine baseline, @Nullable CrossLine front, int down) {
    if (front == null) {
      return true;
    }
    double gap = down * (baseline.level() - front.level());
    boolean byHand = front.kind() == LineKind.BY_HAND;
    return gap > (byHand ? 0 : 0.2 * map.height()) && (byHand || clearOfEdge(map, front, down));
  }

  /** A front closer than 2.3 mm to the upper edge cannot be told from the edge. */
  private static boolean clearOfEdge(DensityMap map, CrossLine front, int down) {
    double fromTop = down > 0 ? front.level() : map.height() - front.level();
    return fromTop > 2.3 * map.cellsPerMm();
  }

  /**
   * The evidence for a baseline by itself.
   *
   * @param down 1 if the strip's bottom is at the map's last row, −1 if at its first
   */
  private static double score(DensityMap map, StripContent content, CrossLine baseline, int down) {
    double score = 3 * baseline.certainty() - 40 * content.darkShare();
    score -= baseline.kind() == LineKind.INK ? INK_BASELINE : 0;
    // Common practice: the baseline lies 1 to 3 cm above the lower edge of a strip of 10 to 15 cm.
    double margin = StrictMath.log(Math.max(0.01, below(map, baseline, down)) / 0.16) / 0.8;
    score -= 0.5 * margin * margin;
    score += 0.7 * content.writingBalance(baseline, down);
    score += NAMES * content.namesUnderLanes(baseline, down);
    score += 1.0 * content.marksOn(baseline, down);
    score += DOTS * content.dotsAtLanes(baseline, down);
    return score - 6 * content.dyeShareBelow(baseline, down);
  }

  /** What a front adds to it. */
  private static double score(DensityMap map, CrossLine baseline, Front front, int down) {
    if (front.line == null) {
      return front.evidence;
    }
    double run = Math.abs(front.line.level() - baseline.level()) / map.height();
    double above = Math.max(0.005, 1 - run - below(map, baseline, down));
    double top = StrictMath.log(above / 0.10) / 1.2;
    return front.evidence - 0.3 * top * top - 6 * front.dyeBeyond;
  }

  /** The part of the strip that lies below a line. */
  private static double below(DensityMap map, CrossLine line, int down) {
    double share = line.level() / map.height();
    return down > 0 ? 1 - share : share;
  }

  /**
   * A pencil line or ticks by their certainty; a tide mark by its contrast against all noise,
   * tempered.
   */
  private static double frontEvidence(CrossLine front) {
    if (front.kind() == LineKind.BY_HAND) {
      return 3;
    }
    if (front.kind() == LineKind.PENCIL) {
      // A fold is grey and faint: what is much fainter than pencil counts less.
      double dark = Math.min(1, front.strength() / 0.06);
      return 3 * front.certainty() * dark;
    }
    if (front.kind() == LineKind.TICKS) {
      return TICKS * front.certainty() * Math.min(1, front.strength() / 0.06);
    }
    double significance = front.strength() / front.noise() * Math.sqrt(front.x().length);
    // What is much deeper in colour than what solvents carry is ink or dye.
    double pale = Math.min(1, DEEPEST_TIDE / front.strength());
    return 2.4 * significance / (significance + 18) * Math.min(1, front.coverage() + 0.35) * pale;
  }

  private Layout layout(
      DensityMap upright, StripContent content, DensityMap turned, StripContent turnedContent) {
    if (all.isEmpty()) {
      return new Layout(0, null, null, -3, 0, 0, 0, 0);
    }
    Hypothesis best = all.get(0);
    double other = -3;
    double otherBaseline = -3;
    double otherFront = -3;
    for (Hypothesis h : all) {
      if (h.turns != best.turns) {
        other = Math.max(other, h.score);
      } else if (!Objects.equals(h.front, best.front)
          && Objects.equals(h.baseline, best.baseline)
          && !near(h.front, best.front, upright)) {
        otherFront = Math.max(otherFront, h.score);
      }
      if (h.turns % 2 != best.turns % 2 || !near(h.baseline, best.baseline, upright)) {
        otherBaseline = Math.max(otherBaseline, h.score);
      }
    }
    boolean isUpright = best.turns % 2 == 0;
    DensityMap map = isUpright ? upright : turned;
    return new Layout(
        best.turns,
        path(best.baseline, map, best.turns >= 2),
        path(best.front, map, best.turns >= 2),
        best.evidence,
        best.score - other,
        best.score - otherBaseline,
        best.score - otherFront,
        (isUpright ? content : turnedContent)
            .dyeMm2(best.baseline, best.front, best.turns >= 2 ? -1 : 1));
  }

  /** The same mark is often found twice, as pencil and as a coloured line. */
  private static boolean near(@Nullable CrossLine a, @Nullable CrossLine b, DensityMap map) {
    return a != null && b != null && apart(a, b, map) < 1.5;
  }

  private static double apart(CrossLine a, CrossLine b, DensityMap map) {
    return Math.abs(a.level() - b.level()) / map.cellsPerMm();
  }

  private static Layout.@Nullable LinePath path(
      @Nullable CrossLine line, DensityMap map, boolean upsideDown) {
    if (line == null) {
      return null;
    }
    int n = line.x().length;
    List<Double> x = new ArrayList<>();
    List<Double> y = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      int k = upsideDown ? n - 1 - i : i;
      double fx = line.x()[k] / map.width();
      double fy = line.y()[k] / map.height();
      x.add(upsideDown ? 1 - fx : fx);
      y.add(upsideDown ? 1 - fy : fy);
    }
    double certainty =
        line.kind() == LineKind.TIDE_MARK
            ? Math.min(1, frontEvidence(line) / 2)
            : Math.min(1, line.certainty());
    return new Layout.LinePath(line.kind(), x, y, certainty);
  }
}
