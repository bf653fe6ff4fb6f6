package wickmark.imaging.scale;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/**
 * A division laid over the lengths of an edge's marks.
 *
 * @param division the kind
 * @param phase index of a longest mark, 0 to period - 1
 * @param explained share of the variation of length that the ranks explain, at most 1
 */
record DivisionFit(Division division, int phase, double explained) {
  /** A rank is longer than the one below by at least this share of the shortest marks' length. */
  private static final double LEAST_STEP = 0.12;

  /** Lengths are cut here, in pitches: a figure behind a mark must not count as its length. */
  private static final double LONGEST = 9;

  /** Returns every division and phase that the lengths allow, best first. */
  static List<DivisionFit> all(TickLengths lengths) {
    List<DivisionFit> fits = new ArrayList<>();
    for (Division division : Division.values()) {
      for (int phase = 0; phase < division.period(); phase++) {
        double explained = explainedShare(lengths, division, phase);
        if (explained > 0) {
          fits.add(new DivisionFit(division, phase, explained));
        }
      }
    }
    fits.sort(Comparator.comparingDouble(DivisionFit::explained).reversed());
    return fits;
  }

  /** Returns 1 - (deviation from the ranks' medians) / (deviation from the median), or 0. */
  static double explainedShare(TickLengths lengths, Division division, int phase) {
    int n = lengths.indices().length;
    List<List<Double>> ranks = new ArrayList<>();
    for (int r = 0; r < division.ranks(); r++) {
      ranks.add(new ArrayList<>());
    }
    double[] cut = new double[n];
    for (int i = 0; i < n; i++) {
      cut[i] = Math.min(lengths.lengths()[i], LONGEST);
      int k = Math.floorMod(lengths.indices()[i] - phase, division.period());
      ranks.get(division.rank(k)).add(cut[i]);
    }
    double shortest = RobustPolynomial.median(array(ranks.get(0)));
    double below = Double.NEGATIVE_INFINITY;
    double left = 0;
    for (List<Double> rank : ranks) {
      double median = RobustPolynomial.median(array(rank));
      if (rank.isEmpty() || median < below + LEAST_STEP * Math.max(shortest, 0.5)) {
        return 0;
      }
      below = median;
      left += rank.stream().mapToDouble(x -> Math.abs(x - median)).sum();
    }
    double middle = Arrays.stream(cut).average().orElse(0);
    double whole = Arrays.stream(cut).map(x -> Math.abs(x - middle)).sum();
    return whole > 0 ? Math.max(0, 1 - left / whole) : 0;
  }

  private static double[] array(List<Double> values) {
    return values.stream().mapToDouble(Double::doubleValue).toArray();
  }
}
