package wickmark.imaging.spot;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * How many dyes a lane holds, and where: starts from the maxima of each channel, then adds a peak
 * where dye is left over and takes away what is not needed. Two peaks of one hue count as two only
 * if there is a valley between them; of two hues, if the fit needs both.
 */
final class PeakSearch {
  private static final int MOST_PEAKS = 9;

  /**
   * After so many fits no peak is added any more, only taken away. A lane in which a sum of peaks
   * can be seen takes far fewer (the figures are in RESULTS.md); one that takes more is a lane of
   * noise, whose peaks mean nothing, and each fit of one costs the most, since none settles.
   */
  static final int MOST_FITS = 24;

  /** A description with more misfit than this is none: see {@link #misfit}. */
  private static final double MOST_MISFIT = 60;

  /** Least height of any peak over the highest peak's. */
  private static final double LEAST_HEIGHT = 0.012;

  /** How much worse the fit must be without a shoulder. */
  private static final double NEEDED = 2;

  /** Ratio of a flank to the other from which it is long. */
  private static final double LONG_FLANK = 1.6;

  /** How much worse a fit may be that needs no long flank under a neighbour. */
  private static final double MUCH_BETTER = 1.35;

  private final LaneProfile profile;
  private final PeakParting parting;
  private final Streaks streaks;
  private int fits;

  PeakSearch(LaneProfile profile) {
    this.profile = profile;
    this.parting = new PeakParting(profile);
    this.streaks = new Streaks(profile, parting);
  }

  static PeakFit find(LaneProfile profile) {
    return new PeakSearch(profile).search();
  }

  PeakFit search() {
    PeakFit fit = withoutPlateaus(pruned(fitted(ProfileMaxima.shapes(profile, MOST_PEAKS))));
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

  private PeakFit fitted(List<PeakShape> start) {
    fits++;
    return PeakFit.of(profile, start);
  }

  /** How many fits the search has taken so far. */
  int fits() {
    return fits;
  }

  private PeakFit withStreaks(PeakFit fit) {
    List<PeakShape> shapes = streaks.measured(fit);
    boolean any =
        Stream.concat(shapes.stream(), fit.shapes().stream()).anyMatch(s -> s.streak() > 0);
    return any ? fitted(shapes) : fit;
  }

  /** Low, wide peaks are left out if streaks explain the lane without them. */
  private PeakFit withoutPlateaus(PeakFit fit) {
    List<PeakShape> fewer = streaks.withoutPlateaus(fit);
    if (fewer.size() == fit.shapes().size()) {
      return fit;
    }
    PeakFit without = withStreaks(fitted(fewer));
    return misfit(without) < MOST_MISFIT ? without : fit;
  }

  /** The best fit with a peak more, if one is better enough to need it. */
  private @Nullable PeakFit withOneMore(PeakFit fit) {
    double enough = 0.8 * fit.loss() - 40;
    PeakFit best = null;
    for (double place : HiddenPeaks.places(profile, fit)) {
      if (fits >= MOST_FITS) {
        break;
      }
      List<PeakShape> start = new ArrayList<>(fit.shapes());
      start.add(new PeakShape(place, 1.6, 1.6, 0.01));
      PeakFit more = fitted(start);
      if (more.loss() < enough && (best == null || more.loss() < best.loss())) {
        PeakFit kept = pruned(more);
        best = kept.loss() < enough ? kept : best;
      }
    }
    return best;
  }

  /** Takes away peaks that are not needed, one after another. */
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
          parting.isShoulder(fit, worst)
              && without.loss() > NEEDED * fit.loss()
              && shoulders.add(fit.shapes().get(worst));
      fit = kept ? fit : without;
      worst = leastNeeded(fit, shoulders);
    }
    return fit;
  }

  /** A peak to take away: none at all, or not parted from a higher one; −1 for none. */
  private int leastNeeded(PeakFit fit, Set<PeakShape> shoulders) {
    int n = fit.shapes().size();
    // First what lies outside: its height there is not seen but extrapolated from its foot, may be
    // a hundred times that of all spots, and says nothing of how low a spot may be.
    for (int j = 0; j < n; j++) {
      if (isOutside(fit.shapes().get(j))) {
        return j;
      }
    }
    double highest = fit.highest();
    for (int j = 0; j < n; j++) {
      int k = profile.sampleAt(fit.shapes().get(j).centre());
      if (streaks.isWave(fit, j)
          || fit.height(j) < Math.max(3 * profile.noise()[k], LEAST_HEIGHT * highest)) {
        return j;
      }
    }
    for (int i = 0; i < n; i++) {
      for (int j = 0; j < n; j++) {
        if (i != j
            && !shoulders.contains(fit.shapes().get(i))
            && fit.height(i) <= fit.height(j)
            && !parting.parted(fit, i, j)) {
          return i;
        }
      }
    }
    return -1;
  }

  private boolean isOutside(PeakShape s) {
    return s.centre() < profile.start() + 0.3
        || s.centre() > profile.start() + profile.size() * profile.step() + 1;
  }

  /** Mean squared residual where there is dye, in units of what noise and model leave. */
  private double misfit(PeakFit fit) {
    int significant = 0;
    for (int k = 0; k < profile.size(); k++) {
      significant += profile.totalAt(k) > 6 * profile.noise()[k] ? 1 : 0;
    }
    return fit.loss() / Math.max(12, 3 * significant);
  }

  /**
   * Where two peaks run into one another, the flank of the one under the other is not seen by
   * itself, and a long one may stand for a part of the neighbour. Unless the fit is much better
   * with it, such a flank is as its other one, which lies open.
   */
  private PeakFit withHiddenFlanksEven(PeakFit fit) {
    List<PeakShape> even = fit.shapes().stream().map(s -> hiddenFlankEven(s, fit)).toList();
    if (even.equals(fit.shapes())) {
      return fit;
    }
    PeakFit other = fitted(even);
    return other.loss() < MUCH_BETTER * fit.loss() ? other : fit;
  }

  private static PeakShape hiddenFlankEven(PeakShape s, PeakFit fit) {
    PeakShape even = s;
    for (PeakShape other : fit.shapes()) {
      double hidden = PeakParting.flank(s, other);
      double open = other.centre() > s.centre() ? s.behind() : s.ahead();
      if (!other.equals(s) && PeakParting.overlap(s, other) && hidden > LONG_FLANK * open) {
        even = new PeakShape(s.centre(), open, open, s.streak());
      }
    }
    return even;
  }
}
