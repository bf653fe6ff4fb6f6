package wickmark.imaging.scale;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/**
 * A division laid over the lengths of an edge's marks.
 *
 * @param division the kind
 * @param phase index of a longest mark, 0 to period - 1
 * @param side side of the short marks to which the lengths go, 1 or -1
 * @param explained share of the variation of length that the ranks explain, at most 1
 */
record DivisionFit(Division division, int phase, double explained, int side) {
  /** A rank is longer than the one below by at least this share of the latter's length. */
  private static final double LEAST_STEP = 0.1;

  /** Shorter lengths than this, in pitches, are within the error of measuring them. */
  private static final double SHORTEST = 0.5;

  /**
   * Tells whether this fit shows the other one to be too coarse: marks which the other takes for
   * equals it finds of two lengths.
   */
  boolean refutes(DivisionFit other) {
    return division.halves(other.division)
        && side == other.side
        && Math.floorMod(phase - other.phase, other.division.period()) == 0;
  }

  /** Tells whether the two give the marks different units, or the same pattern at other marks. */
  boolean meansOtherNumbersThan(DivisionFit other) {
    return division.unit() != other.division.unit()
        || (division == other.division && phase != other.phase);
  }

  /** Returns every division and phase that the lengths allow. */
  static List<DivisionFit> all(TickLengths lengths, int side) {
    List<DivisionFit> fits = new ArrayList<>();
    for (Division division : Division.values()) {
      for (int phase = 0; phase < division.period(); phase++) {
        double explained = explainedShare(lengths, division, phase);
        if (explained > 0) {
          fits.add(new DivisionFit(division, phase, explained, side));
        }
      }
    }
    return fits;
  }

  /** Returns the length of the longest marks from the middle of the short ones, in pitches. */
  double longest(TickLengths lengths) {
    return RobustPolynomial.median(
        IntStream.range(0, lengths.indices().length)
            .filter(i -> Math.floorMod(lengths.indices()[i] - phase, division.period()) == 0)
            .mapToDouble(i -> lengths.lengths()[i])
            .toArray());
  }

  /** Returns 1 - (deviation from the ranks' medians) / (deviation from the median), or 0. */
  static double explainedShare(TickLengths lengths, Division division, int phase) {
    int n = lengths.indices().length;
    List<List<Double>> ranks = new ArrayList<>();
    for (int r = 0; r < division.ranks(); r++) {
      ranks.add(new ArrayList<>());
    }
    for (int i = 0; i < n; i++) {
      int k = Math.floorMod(lengths.indices()[i] - phase, division.period());
      ranks.get(division.rank(k)).add(lengths.lengths()[i]);
    }
    double left = 0;
    for (int r = 0; r < ranks.size(); r++) {
      double[] own = array(ranks.get(r));
      if (own.length == 0 || (r > 0 && !apart(array(ranks.get(r - 1)), own))) {
        return 0;
      }
      double median = RobustPolynomial.median(own);
      left += Arrays.stream(own).map(x -> Math.abs(x - median)).sum();
    }
    double middle = Arrays.stream(lengths.lengths()).average().orElse(0);
    double whole = Arrays.stream(lengths.lengths()).map(x -> Math.abs(x - middle)).sum();
    return whole > 0 ? Math.max(0, 1 - left / whole) : 0;
  }

  /** Marks of one rank must be longer than those below it, and the two must hardly overlap. */
  private static boolean apart(double[] lower, double[] upper) {
    double low = RobustPolynomial.median(lower);
    double high = RobustPolynomial.median(upper);
    boolean overlap =
        upper[(upper.length - 1) / 4] <= lower[lower.length - 1 - (lower.length - 1) / 4];
    return !overlap && high - low > LEAST_STEP * Math.max(low, SHORTEST);
  }

  private static double[] array(List<Double> values) {
    return values.stream().mapToDouble(Double::doubleValue).toArray();
  }
}
