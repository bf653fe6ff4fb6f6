package wickmark.imaging.scale;

/**
 * How a kind of ruler makes its marks longer: the rank of a mark by its number within a period. The
 * divisions are common practice of the trade.
 */
enum Division {
  MILLIMETRES(GraduationUnit.MILLIMETRE, 10, 1.0) {
    @Override
    int rank(int k) {
      return k == 0 ? 2 : k == 5 ? 1 : 0;
    }
  },
  /** Millimetres whose fifths are as short as the others. */
  PLAIN_MILLIMETRES(GraduationUnit.MILLIMETRE, 10, 0.6) {
    @Override
    int rank(int k) {
      return k == 0 ? 1 : 0;
    }
  },
  HALF_MILLIMETRES(GraduationUnit.HALF_MILLIMETRE, 20, 1.0) {
    @Override
    int rank(int k) {
      return k == 0 ? 3 : k == 10 ? 2 : k % 2 == 0 ? 1 : 0;
    }
  },
  EIGHTHS(GraduationUnit.EIGHTH_INCH, 8, 0.75) {
    @Override
    int rank(int k) {
      return halvings(k, 8);
    }
  },
  SIXTEENTHS(GraduationUnit.SIXTEENTH_INCH, 16, 0.75) {
    @Override
    int rank(int k) {
      return halvings(k, 16);
    }
  },
  THIRTY_SECONDS(GraduationUnit.THIRTY_SECOND_INCH, 32, 0.75) {
    @Override
    int rank(int k) {
      return halvings(k, 32);
    }
  };

  private final GraduationUnit unit;
  private final int period;
  private final double trust;

  Division(GraduationUnit unit, int period, double trust) {
    this.unit = unit;
    this.period = period;
    this.trust = trust;
  }

  /**
   * Returns 0 for the shortest marks of the division, more for longer ones; k from 0 to period-1.
   */
  abstract int rank(int k);

  GraduationUnit unit() {
    return unit;
  }

  int period() {
    return period;
  }

  /** Returns how far the pattern by itself tells the unit from others, 0 to 1. */
  double trust() {
    return trust;
  }

  /** Tells whether this division is the other one with one more halving or several. */
  boolean halves(Division other) {
    return inch() && other.inch() && period > other.period;
  }

  boolean inch() {
    return this == EIGHTHS || this == SIXTEENTHS || this == THIRTY_SECONDS;
  }

  /**
   * Returns the least length of the longest marks from the middle of the shortest, in pitches, for
   * which the unit is not mistaken: tenths and twentieths of an inch have the pattern of (half)
   * millimetres, but on any ruler that length is some 3 to 6 mm (common practice).
   */
  double leastReach() {
    return inch() ? 0 : this == HALF_MILLIMETRES ? 5.5 : 2.8;
  }

  int ranks() {
    return rank(0) + 1;
  }

  private static int halvings(int k, int period) {
    int rank = 0;
    for (int step = 2; step <= period && k % step == 0; step *= 2) {
      rank++;
    }
    return rank;
  }
}
