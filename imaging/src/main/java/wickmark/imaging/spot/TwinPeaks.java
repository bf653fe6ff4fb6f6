package wickmark.imaging.spot;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Two dyes of one hue that ran into one without a valley between them. A lane by itself cannot tell
 * such a spot from a longer one of a single dye; the lanes beside it can, if each of the two dyes
 * lies there alone: where it lies and how long its spot is.
 *
 * @param fit with two peaks in place of the one
 * @param first number of one of them
 * @param second number of the other
 */
record TwinPeaks(PeakFit fit, int first, int second) {
  /** One peak is longer than each of two alone by at least this. */
  private static final double LONGER = 1.15;

  /** Two dyes are told apart by their Rf if it differs by more than this between lanes. */
  private static final double LEAST_APART = 0.02;

  /** How far within a peak the dyes have to lie, in its flanks. */
  private static final double WITHIN = 2.2;

  /**
   * Misfit with two peaks over that with one, at the most. Of drawn spots that are two it is 0.1,
   * of tails and large spots 0.6 and more.
   */
  private static final double BETTER = 0.3;

  /** How far a fitted peak may be from its dye's place, as a part of their distance. */
  private static final double OFF = 0.35;

  /** By what factor it may be longer or shorter. */
  private static final double LIKE_LENGTH = 1.6;

  /** Least height of the lower over that of the higher. */
  private static final double LEAST_HEIGHT = 0.15;

  /** A peak lower than this, over the highest of its lane, says little of where its dye lies. */
  private static final double CLEAR = 0.25;

  /** A dye of another lane where it would lie in this one. */
  private record Dye(PeakShape shape, int lane) {}

  /** Looks for them in one lane by all others; the pair that fits best. */
  static Optional<TwinPeaks> in(List<LanePeaks> lanes, int own) {
    LanePeaks lane = lanes.get(own);
    Optional<TwinPeaks> best = Optional.empty();
    for (int peak = 0; peak < lane.fit().shapes().size(); peak++) {
      List<Dye> dyes = dyes(lanes, own, peak);
      for (int i = 0; i < dyes.size(); i++) {
        for (int j = i + 1; j < dyes.size(); j++) {
          Dye one = dyes.get(i);
          Dye other = dyes.get(j);
          boolean apart =
              Math.abs(one.shape().centre() - other.shape().centre()) > LEAST_APART * lane.run();
          if (apart && one.lane() != other.lane()) {
            Optional<TwinPeaks> twins = fitted(lane, peak, one.shape(), other.shape());
            if (twins.isPresent()
                && (best.isEmpty() || twins.get().fit().loss() < best.get().fit().loss())) {
              best = twins;
            }
          }
        }
      }
    }
    return best;
  }

  /** Dyes of the peak's hue in other lanes that lie within it and are shorter. */
  private static List<Dye> dyes(List<LanePeaks> lanes, int own, int peak) {
    LanePeaks lane = lanes.get(own);
    PeakShape whole = lane.fit().shapes().get(peak);
    List<Dye> dyes = new ArrayList<>();
    for (int k = 0; k < lanes.size(); k++) {
      PeakFit fit = lanes.get(k).fit();
      for (int q = 0; q < fit.shapes().size() && k != own; q++) {
        PeakShape there = fit.shapes().get(q);
        PeakShape here = scaled(there, lane.run() / lanes.get(k).run());
        boolean within =
            here.centre() > whole.centre() - WITHIN * whole.behind()
                && here.centre() < whole.centre() + WITHIN * whole.ahead();
        if (within
            && length(whole) > LONGER * length(here)
            && fit.height(q) > CLEAR * lanes.get(k).highest()
            && PeakFit.angle(fit.amount()[q], lane.fit().amount()[peak]) < PeakParting.SAME_HUE) {
          dyes.add(new Dye(here, k));
        }
      }
    }
    return dyes;
  }

  private static PeakShape scaled(PeakShape shape, double by) {
    return new PeakShape(shape.centre() * by, shape.ahead(), shape.behind(), 0);
  }

  private static double length(PeakShape shape) {
    return shape.ahead() + shape.behind();
  }

  /** Whether these peaks of the fit are the two dyes. */
  boolean are(int i, int j) {
    return Math.min(i, j) == Math.min(first, second) && Math.max(i, j) == Math.max(first, second);
  }

  private static Optional<TwinPeaks> fitted(
      LanePeaks lane, int peak, PeakShape one, PeakShape other) {
    List<PeakShape> start = new ArrayList<>(lane.fit().shapes());
    start.remove(peak);
    start.add(one);
    start.add(other);
    PeakFit fit = PeakFit.of(lane.profile(), start);
    int second = start.size() - 1;
    int first = second - 1;
    double apart = Math.abs(one.centre() - other.centre());
    double low = Math.min(fit.height(first), fit.height(second));
    double high = Math.max(fit.height(first), fit.height(second));
    return fit.loss() < BETTER * lane.fit().loss()
            && low > LEAST_HEIGHT * high
            && isLike(fit.shapes().get(first), one, apart)
            && isLike(fit.shapes().get(second), other, apart)
        ? Optional.of(new TwinPeaks(fit, first, second))
        : Optional.empty();
  }

  private static boolean isLike(PeakShape found, PeakShape dye, double apart) {
    double ratio = length(found) / length(dye);
    return Math.abs(found.centre() - dye.centre()) < OFF * apart
        && ratio < LIKE_LENGTH
        && ratio > 1 / LIKE_LENGTH;
  }
}
