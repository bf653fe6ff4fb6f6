package wickmark.imaging.scale;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Joins patches that touch and agree in direction and spacing. */
final class SeedGrouping {
  /** Patches this many grid steps apart still touch: one may fail between two that hold. */
  private static final int STEPS = 2;

  private static final double MOST_TURN = Math.toRadians(12);
  private static final double MOST_PITCH_RATIO = 1.15;
  private static final int LEAST_CELLS = 4;

  private SeedGrouping() {}

  /** Returns the groups, the heaviest first. */
  static List<CombSeed> seeds(List<PeriodicCell> cells) {
    Map<Long, PeriodicCell> grid = new HashMap<>();
    for (PeriodicCell cell : cells) {
      grid.put(key(cell.column(), cell.row()), cell);
    }
    Set<PeriodicCell> taken = new HashSet<>();
    List<CombSeed> seeds = new ArrayList<>();
    for (PeriodicCell cell : cells) {
      if (taken.add(cell)) {
        List<PeriodicCell> group = grow(cell, grid, taken);
        if (group.size() >= LEAST_CELLS) {
          seeds.add(CombSeed.of(group));
        }
      }
    }
    seeds.sort(Comparator.comparingDouble(CombSeed::weight).reversed());
    return seeds;
  }

  private static List<PeriodicCell> grow(
      PeriodicCell first, Map<Long, PeriodicCell> grid, Set<PeriodicCell> taken) {
    List<PeriodicCell> group = new ArrayList<>();
    ArrayDeque<PeriodicCell> open = new ArrayDeque<>(List.of(first));
    while (!open.isEmpty()) {
      PeriodicCell cell = open.remove();
      group.add(cell);
      for (int dr = -STEPS; dr <= STEPS; dr++) {
        for (int dc = -STEPS; dc <= STEPS; dc++) {
          PeriodicCell other = grid.get(key(cell.column() + dc, cell.row() + dr));
          if (other != null && agree(cell, other) && taken.add(other)) {
            open.add(other);
          }
        }
      }
    }
    return group;
  }

  private static boolean agree(PeriodicCell a, PeriodicCell b) {
    double ratio = a.pitchPx() / b.pitchPx();
    return a.turnTo(b.angle()) < MOST_TURN
        && ratio < MOST_PITCH_RATIO
        && ratio > 1 / MOST_PITCH_RATIO;
  }

  private static long key(int column, int row) {
    return ((long) row << 32) | (column & 0xffffffffL);
  }
}
