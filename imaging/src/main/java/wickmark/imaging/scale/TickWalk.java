package wickmark.imaging.scale;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * Walks from mark to mark along a profile, each step foretold by the marks before it, so that a
 * mark not seen still counts as one step.
 */
final class TickWalk {
  /** A peak further than this share of the pitch from where it is expected is not the mark. */
  private static final double MOST_SURPRISE = 0.25;

  /** A peak less high than this share of its neighbours is not a mark. */
  private static final double LEAST_HEIGHT = 0.35;

  /** After this many marks not seen in a row nothing is foretold any more. */
  private static final int MOST_MISSED = 30;

  private static final int SHORT_MEMORY = 8;
  private static final int LONG_MEMORY = 40;

  private final TickProfile profile;
  private final double uLow;
  private final double uHigh;

  TickWalk(TickProfile profile, double uLow, double uHigh) {
    this.profile = profile;
    this.uLow = uLow;
    this.uHigh = uHigh;
  }

  /** Returns the marks in the order of their index, walking both ways from near {@code start}. */
  List<Tick> from(double start, double pitch) {
    double[] comb = bestComb(start, pitch);
    List<Tick> ahead = firstTicks(comb[0], comb[1]);
    if (ahead.size() < 4) {
      return List.of();
    }
    walk(ahead, 1);
    Collections.reverse(ahead);
    walk(ahead, -1);
    Collections.reverse(ahead);
    return ahead;
  }

  /** Lays a comb of nine teeth on the profile; returns its first place and its pitch. */
  private double[] bestComb(double start, double pitch) {
    double best = Double.NEGATIVE_INFINITY;
    double[] found = {start, pitch};
    for (int i = -5; i <= 5; i++) {
      double tried = pitch * (1 + 0.015 * i);
      for (double phase = 0; phase < tried; phase += 0.5) {
        double sum = 0;
        for (int k = -4; k <= 4; k++) {
          sum += Math.min(profile.at(start + phase + k * tried), 100);
        }
        if (sum > best) {
          best = sum;
          found = new double[] {start + phase, tried};
        }
      }
    }
    return found;
  }

  private List<Tick> firstTicks(double start, double pitch) {
    List<Tick> ticks = new ArrayList<>();
    for (int k = -4; k <= 4; k++) {
      double at = profile.peakNear(start + k * pitch, MOST_SURPRISE * pitch);
      if (!Double.isNaN(at) && at > uLow && at < uHigh) {
        ticks.add(new Tick(k, at, profile.at(at)));
      }
    }
    return ticks;
  }

  private void walk(List<Tick> ticks, int way) {
    int index = ticks.get(ticks.size() - 1).index();
    int missed = 0;
    while (missed <= MOST_MISSED) {
      index += way;
      RobustPolynomial memory = memory(ticks);
      double expected = memory.at(index);
      if (expected < uLow || expected > uHigh) {
        return;
      }
      double pitch = Math.abs(memory.slopeAt(index));
      double at = profile.peakNear(expected, MOST_SURPRISE * pitch);
      if (!Double.isNaN(at) && profile.at(at) > LEAST_HEIGHT * usualHeight(ticks)) {
        ticks.add(new Tick(index, at, profile.at(at)));
        missed = 0;
      } else {
        missed++;
      }
    }
  }

  private static RobustPolynomial memory(List<Tick> ticks) {
    int all = ticks.size();
    boolean many = all >= 2 * SHORT_MEMORY;
    List<Tick> last = ticks.subList(Math.max(0, all - (many ? LONG_MEMORY : SHORT_MEMORY)), all);
    return RobustPolynomial.fit(
        last.stream().mapToDouble(Tick::index).toArray(),
        last.stream().mapToDouble(Tick::u).toArray(),
        many ? 2 : 1,
        0.1);
  }

  private static double usualHeight(List<Tick> ticks) {
    int all = ticks.size();
    return RobustPolynomial.median(
        ticks.subList(Math.max(0, all - 12), all).stream().mapToDouble(Tick::height).toArray());
  }
}
