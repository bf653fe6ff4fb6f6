package wickmark.imaging.spot;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import wickmark.imaging.raster.Selection;

/**
 * How many dyes a lane holds, and where: starts from the maxima of each channel, then adds a peak
 * where dye is left over and takes away what is not needed. Two peaks of one hue count as two only
 * if there is a valley between them; of two hues, if the fit needs both.
 */
final class PeakSearch {
  /**
   * Two colours that differ by less (radians) are one hue: paper texture alone makes a few degrees.
   */
  private static final double SAME_HUE = 0.22;

  /** Depth of a valley, as a part of the lower peak, that parts two peaks of one hue. */
  private static final double VALLEY = 0.15;

  private static final int MOST_PEAKS = 9;

  /**
   * After so many fits no peak is added any more, only taken away. A lane in which a sum of peaks
   * can be seen takes far fewer (the figures are in RESULTS.md); one that takes more is a lane of
   * noise, whose peaks mean nothing, and each fit of one costs the most, since none settles.
   */
  static final int MOST_FITS = 24;

  /** A peak with less of a larger neighbour's height, its hue just told apart, needs a valley. */
  private static final double SATELLITE = 0.4;

  /** Least length of a streak seen by itself, mm. */
  private static final double FREE_STREAK_MM = 4;

  private static final double MOST_STREAK = 0.3;

  /** Mean flank of a peak that is wider than any spot, mm: a stretch of a streak may be. */
  private static final double PLATEAU_MM = 6;

  /** Height over a streak's up to which its own unevenness goes. */
  private static final double UNEVEN_STREAK = 0.5;

  /** A description with more misfit than this is none: see {@link #misfit}. */
  private static final double MOST_MISFIT = 60;

  /** Cosine of the greatest angle between the colours of a streak and of its spot. */
  private static final double STREAK_HUE = 0.93;

  /** A shoulder stands off its neighbour by more than this many of the flanks between them. */
  private static final double CLEAR = 1.15;

  /** Least height of a shoulder over the highest peak's. */
  private static final double SHOULDER = 0.1;

  /** How much worse the fit must be without a shoulder. */
  private static final double NEEDED = 2;

  /** Ratio of a flank to the other from which it is long. */
  private static final double LONG_FLANK = 1.6;

  /** How much worse a fit may be that needs no long flank under a neighbour. */
  private static final double MUCH_BETTER = 1.35;

  private final LaneProfile profile;
  private int fits;

  PeakSearch(LaneProfile profile) {
    this.profile = profile;
  }

  static PeakFit find(LaneProfile profile) {
    return new PeakSearch(profile).search();
  }

  PeakFit search() {
    PeakFit fit = withoutPlateaus(pruned(fitted(maxima())));
    fit = withStreaks(fit);
    for (int round = 0; round < 4 && fit.shapes().size() < MOST_PEAKS; round++) {
      PeakFit more = withOneMore(fit);
      if (more == null) {
        break;
      }
      fit = more;
    }
    return withHiddenFlanksEven(pruned(withStreaks(fit)));
  }

  /**
   * Where two peaks run into one another, the flank of the one under the other is not seen by
   * itself, and a long one may stand for a part of the neighbour. Unless the fit is much better
   * with it, such a flank is as its other one, which lies open.
   */
  private PeakFit withHiddenFlanksEven(PeakFit fit) {
    List<PeakShape> even = new ArrayList<>();
    for (int i = 0; i < fit.shapes().size(); i++) {
      PeakShape s = fit.shapes().get(i);
      PeakShape e = s;
      for (int j = 0; j < fit.shapes().size(); j++) {
        PeakShape other = fit.shapes().get(j);
        double hidden = flank(s, other);
        double open = other.centre() > s.centre() ? s.behind() : s.ahead();
        double apart = Math.abs(other.centre() - s.centre());
        if (i != j && apart < 3.2 * (hidden + flank(other, s)) && hidden > LONG_FLANK * open) {
          e = new PeakShape(s.centre(), open, open, s.streak());
        }
      }
      even.add(e);
    }
    if (even.equals(fit.shapes())) {
      return fit;
    }
    PeakFit other = fitted(even);
    return other.loss() < MUCH_BETTER * fit.loss() ? other : fit;
  }

  private PeakFit fitted(List<PeakShape> start) {
    fits++;
    return PeakFit.of(profile, start);
  }

  /** How many fits the search has taken so far. */
  int fits() {
    return fits;
  }

  /**
   * The streak of each dye, measured far below its spot, where nothing else lies: a fitted one
   * would take the spot's own tail.
   */
  private PeakFit withStreaks(PeakFit fit) {
    List<PeakShape> shapes = new ArrayList<>();
    boolean any = false;
    for (int j = 0; j < fit.shapes().size(); j++) {
      double streak = streakBelow(fit, j);
      PeakShape s = fit.shapes().get(j);
      any |= streak > 0 || s.streak() > 0;
      shapes.add(new PeakShape(s.centre(), s.ahead(), s.behind(), streak));
    }
    return any ? fitted(shapes) : fit;
  }

  private double streakBelow(PeakFit fit, int j) {
    PeakShape s = fit.shapes().get(j);
    double to = s.centre() - 4 * s.behind();
    double from = Math.max(3.5, profile.start());
    for (PeakShape other : fit.shapes()) {
      if (other.centre() < s.centre()) {
        from = Math.max(from, other.centre() + 3 * other.ahead());
      }
    }
    if (to - from < FREE_STREAK_MM) {
      return 0;
    }
    int n = index(to) - index(from);
    double along = 0;
    double size = 0;
    double norm = fit.height(j);
    for (int c = 0; c < 3; c++) {
      double[] v = new double[n];
      System.arraycopy(profile.density()[c], index(from), v, 0, n);
      double level = Selection.median(v, n);
      along += level * fit.amount()[j][c] / norm;
      size += level * level;
    }
    boolean sameHue = along > STREAK_HUE * Math.sqrt(size);
    return sameHue ? Math.min(MOST_STREAK, along / norm) : 0;
  }

  private List<PeakShape> maxima() {
    List<double[]> found = new ArrayList<>();
    collect(profile.total(0.7), 0.05, found);
    for (int c = 0; c < 3; c++) {
      collect(profile.channel(c, 0.7), 0.12, found);
    }
    found.sort(Comparator.comparingDouble(f -> -f[1]));
    List<double[]> kept = new ArrayList<>();
    for (double[] f : found) {
      boolean near = kept.stream().anyMatch(k -> Math.abs(k[0] - f[0]) < 1.6);
      if (!near && kept.size() < MOST_PEAKS) {
        kept.add(f);
      }
    }
    List<PeakShape> shapes = new ArrayList<>();
    for (double[] f : kept) {
      double flank = f[2];
      for (double[] other : kept) {
        // What several dyes make together is wider than each of them.
        flank = other == f ? flank : Math.min(flank, 0.55 * Math.abs(other[0] - f[0]));
      }
      shapes.add(new PeakShape(f[0], Math.max(0.6, flank), Math.max(0.6, flank), 0));
    }
    return shapes;
  }

  /** Maxima with some prominence, as {place, height, half width}. */
  private void collect(double[] curve, double leastPart, List<double[]> found) {
    double most = 0;
    for (double v : curve) {
      most = Math.max(most, v);
    }
    for (int k = 0; k < curve.length; k++) {
      double before = k > 0 ? curve[k - 1] : 0;
      double after = k + 1 < curve.length ? curve[k + 1] : 0;
      if (curve[k] <= before || curve[k] < after || curve[k] < 4 * profile.noise()[k]) {
        continue;
      }
      double prominence = Math.min(fall(curve, k, -1), fall(curve, k, 1));
      if (prominence > Math.max(3 * profile.noise()[k], leastPart * curve[k])
          && curve[k] > 0.015 * most) {
        found.add(new double[] {profile.place(k), curve[k], halfWidth(curve, k)});
      }
    }
  }

  /** How deep the curve falls on one side before it rises above this maximum. */
  private static double fall(double[] curve, int top, int direction) {
    double least = curve[top];
    for (int k = top + direction; k >= 0 && k < curve.length; k += direction) {
      if (curve[k] > curve[top]) {
        return curve[top] - least;
      }
      least = Math.min(least, curve[k]);
    }
    return curve[top] - Math.min(least, 0);
  }

  private double halfWidth(double[] curve, int top) {
    int left = top;
    int right = top;
    while (left > 0 && curve[left] > 0.6 * curve[top]) {
      left--;
    }
    while (right < curve.length - 1 && curve[right] > 0.6 * curve[top]) {
      right++;
    }
    return Math.max(0.6, Math.min(6, (right - left) * profile.step() / 2));
  }

  private @org.jspecify.annotations.Nullable PeakFit withOneMore(PeakFit fit) {
    double[] left = fit.unexplained(profile);
    int at = -1;
    double most = 0;
    for (int k = 2; k < left.length - 2; k++) {
      double lobe = left[k - 2] + left[k - 1] + left[k] + left[k + 1] + left[k + 2];
      double relative = lobe / (profile.noise()[k] + 0.03 * Math.max(0, total(k)));
      if (relative > most) {
        most = relative;
        at = k;
      }
    }
    if (at < 0) {
      return null;
    }
    List<Double> places = new ArrayList<>(between(fit));
    places.add(profile.place(at));
    PeakFit best = null;
    for (double place : places) {
      if (fits >= MOST_FITS) {
        break;
      }
      List<PeakShape> start = new ArrayList<>(fit.shapes());
      start.add(new PeakShape(place, 1.6, 1.6, 0.01));
      PeakFit more = fitted(start);
      if (more.loss() < 0.8 * fit.loss() - 40 && (best == null || more.loss() < best.loss())) {
        PeakFit kept = pruned(more);
        best = kept.loss() < 0.8 * fit.loss() - 40 ? kept : best;
      }
    }
    return best;
  }

  /** Places between neighbours that run into one another, where a third may hide. */
  private static List<Double> between(PeakFit fit) {
    List<PeakShape> sorted = new ArrayList<>(fit.shapes());
    sorted.sort(Comparator.comparingDouble(PeakShape::centre));
    List<Double> places = new ArrayList<>();
    for (int j = 0; j < sorted.size(); j++) {
      PeakShape s = sorted.get(j);
      if (j + 1 < sorted.size()) {
        PeakShape t = sorted.get(j + 1);
        if (t.centre() - s.centre() < 3.5 * (s.ahead() + t.behind())) {
          places.add((s.centre() + t.centre()) / 2);
        }
      }
      if (Math.max(s.behind(), s.ahead()) > 1.35 * Math.min(s.behind(), s.ahead())) {
        places.add(
            s.behind() > s.ahead() ? s.centre() - 1.5 * s.behind() : s.centre() + 1.5 * s.ahead());
      }
    }
    return places;
  }

  private double total(int k) {
    return profile.density()[0][k] + profile.density()[1][k] + profile.density()[2][k];
  }

  private PeakFit pruned(PeakFit start) {
    PeakFit fit = start;
    Set<PeakShape> shoulders = new HashSet<>();
    int worst = leastNeeded(fit, shoulders);
    while (worst >= 0) {
      List<PeakShape> fewer = new ArrayList<>(fit.shapes());
      fewer.remove(worst);
      PeakFit without = fitted(fewer);
      if (misfit(without) > MOST_MISFIT && without.loss() > 3 * fit.loss()) {
        return fit;
      }
      // Each round keeps a shoulder that was not kept before, or takes a peak away: it ends.
      boolean kept =
          isShoulder(fit, worst)
              && without.loss() > NEEDED * fit.loss()
              && shoulders.add(fit.shapes().get(worst));
      fit = kept ? fit : without;
      worst = leastNeeded(fit, shoulders);
    }
    return fit;
  }

  /**
   * Whether a low peak stands clear of all others, by more than their flanks, and of another hue
   * than they: a shoulder that the eye sees by its colour.
   */
  private boolean isShoulder(PeakFit fit, int i) {
    PeakShape a = fit.shapes().get(i);
    for (int j = 0; j < fit.shapes().size(); j++) {
      PeakShape b = fit.shapes().get(j);
      double apart = Math.abs(a.centre() - b.centre());
      double flanks = flank(a, b) + flank(b, a);
      if (j != i
          && apart < 3.2 * flanks
          && (apart < CLEAR * flanks
              || fit.colourAngle(i, j) < SAME_HUE
              || seenAngle(a, b) < SAME_HUE / 2)) {
        return false;
      }
    }
    return fit.height(i) > SHOULDER * highest(fit);
  }

  private static double highest(PeakFit fit) {
    double highest = 0;
    for (int j = 0; j < fit.shapes().size(); j++) {
      highest = Math.max(highest, fit.height(j));
    }
    return highest;
  }

  /** Mean squared residual where there is dye, in units of what noise and model leave. */
  private double misfit(PeakFit fit) {
    int significant = 0;
    for (int k = 0; k < profile.size(); k++) {
      significant += total(k) > 6 * profile.noise()[k] ? 1 : 0;
    }
    return fit.loss() / Math.max(12, 3 * significant);
  }

  /**
   * A streak is no even band: its waves may have been taken for low, wide peaks, which then leave
   * no part of it to be seen as a streak. They are one if a streak explains them as well.
   */
  private PeakFit withoutPlateaus(PeakFit fit) {
    List<PeakShape> fewer = new ArrayList<>();
    for (int j = 0; j < fit.shapes().size(); j++) {
      PeakShape s = fit.shapes().get(j);
      boolean wide = s.ahead() + s.behind() > 2 * PLATEAU_MM && s.ahead() > PLATEAU_MM / 2;
      if (!wide || !isBehindItsLike(fit, j, MOST_STREAK)) {
        fewer.add(s);
      }
    }
    if (fewer.size() == fit.shapes().size()) {
      return fit;
    }
    PeakFit streaks = withStreaks(fitted(fewer));
    return misfit(streaks) < MOST_MISFIT ? streaks : fit;
  }

  /** Whether a peak lies on the way of one of its hue, with less than a part of its height. */
  private static boolean isBehindItsLike(PeakFit fit, int i, double part) {
    for (int j = 0; j < fit.shapes().size(); j++) {
      if (fit.shapes().get(j).centre() > fit.shapes().get(i).centre()
          && fit.height(i) < part * fit.height(j)
          && fit.colourAngle(i, j) < SAME_HUE) {
        return true;
      }
    }
    return false;
  }

  /** Whether a peak is no more than the unevenness of a streak of its hue that runs through it. */
  private boolean isWaveOfStreak(PeakFit fit, int i) {
    PeakShape wave = fit.shapes().get(i);
    for (int j = 0; j < fit.shapes().size(); j++) {
      PeakShape other = fit.shapes().get(j);
      // What is seen there is mostly the streak: a wave's own colour is the paper's texture.
      if (other.centre() > wave.centre()
          && fit.height(i) < UNEVEN_STREAK * other.streak() * fit.height(j)
          && seenAngle(wave, other) < SAME_HUE) {
        return true;
      }
    }
    return false;
  }

  /** A peak to take away: too low, or not parted from a neighbour of its hue; −1 for none. */
  private int leastNeeded(PeakFit fit, Set<PeakShape> needed) {
    int n = fit.shapes().size();
    double highest = highest(fit);
    for (int j = 0; j < n; j++) {
      PeakShape s = fit.shapes().get(j);
      int k = index(s.centre());
      boolean outside =
          s.centre() < profile.start() + 0.3
              || s.centre() > profile.start() + profile.size() * profile.step() + 1;
      if (outside
          || isWaveOfStreak(fit, j)
          || fit.height(j) < Math.max(3 * profile.noise()[k], 0.012 * highest)) {
        return j;
      }
    }
    for (int i = 0; i < n; i++) {
      for (int j = 0; j < n; j++) {
        if (i != j
            && !needed.contains(fit.shapes().get(i))
            && fit.height(i) <= fit.height(j)
            && !parted(fit, i, j)) {
          return i;
        }
      }
    }
    return -1;
  }

  private int index(double along) {
    return (int)
        Math.max(0, Math.min(profile.size() - 1.0, (along - profile.start()) / profile.step()));
  }

  private boolean parted(PeakFit fit, int i, int j) {
    PeakShape a = fit.shapes().get(i);
    PeakShape b = fit.shapes().get(j);
    double apart = Math.abs(a.centre() - b.centre());
    if (apart > 3.2 * (flank(a, b) + flank(b, a))) {
      return true;
    }
    double ratio = fit.height(i) / fit.height(j);
    double angle = fit.colourAngle(i, j);
    boolean twoHues =
        angle > SAME_HUE && seenAngle(a, b) > SAME_HUE / 2 && ratio > SATELLITE * SAME_HUE / angle;
    if (twoHues && apart > 0.5 * (flank(a, b) + flank(b, a))) {
      return true;
    }
    return hasValley(a, b);
  }

  /** Whether the profile dips between two peaks, against the maxima on both sides of the dip. */
  private boolean hasValley(PeakShape a, PeakShape b) {
    double[] curve = profile.total(0.7);
    int margin = (int) Math.round(0.75 / profile.step());
    int from = Math.max(0, Math.min(index(a.centre()), index(b.centre())) - margin);
    int to = Math.min(curve.length - 1, Math.max(index(a.centre()), index(b.centre())) + margin);
    double[] after = new double[to - from + 1];
    double most = 0;
    for (int k = to; k >= from; k--) {
      most = Math.max(most, curve[k]);
      after[k - from] = most;
    }
    double before = 0;
    for (int k = from; k <= to; k++) {
      before = Math.max(before, curve[k]);
      if (curve[k] < (1 - VALLEY) * Math.min(before, after[k - from])) {
        return true;
      }
    }
    return false;
  }

  /** Angle between the colours that are seen at two peaks, both with what overlaps them. */
  private double seenAngle(PeakShape a, PeakShape b) {
    double dot = 0;
    double aa = 1e-12;
    double bb = 1e-12;
    for (int c = 0; c < 3; c++) {
      double[] curve = profile.channel(c, 0.6);
      double u = Math.max(0, curve[index(a.centre())]);
      double v = Math.max(0, curve[index(b.centre())]);
      dot += u * v;
      aa += u * u;
      bb += v * v;
    }
    return StrictMath.acos(Math.min(1, dot / Math.sqrt(aa * bb)));
  }

  /** The flank of one peak that faces the other. */
  private static double flank(PeakShape of, PeakShape towards) {
    return towards.centre() > of.centre() ? of.ahead() : of.behind();
  }
}
