package wickmark.core.check;

import java.util.List;
import java.util.Optional;
import wickmark.core.statistics.DemingLine;
import wickmark.core.statistics.LimitsOfAgreement;
import wickmark.core.statistics.Precision;

/**
 * The statistics of all readers together. Distances in which a slip was found take no part.
 *
 * @param agreement of hand and machine over all distances, mm; empty for fewer than two
 * @param line hand against machine with errors in both; empty for fewer than three distances or
 *     where they have no trend
 * @param precision repeatability and reproducibility of hand minus machine, mm (ISO 5725-2), with
 *     readers as laboratories and the variances of the spots averaged; empty where nobody repeats
 * @param spots one for each spot that somebody read, in the order of the lanes
 * @param leftOut how many distances a slip explains
 */
public record ClassReport(
    Optional<LimitsOfAgreement> agreement,
    Optional<DemingLine> line,
    Optional<Precision> precision,
    List<SpotSummary> spots,
    int leftOut) {

  /** Keeps a copy of the list. */
  public ClassReport {
    spots = List.copyOf(spots);
  }

  /**
   * One spot.
   *
   * @param machine the machine's distance, mm
   * @param distances what was read, mm, in the order of the readers
   * @param robustMean algorithm A of ISO 13528, mm
   * @param robustDeviation likewise
   * @param outlier the reading that the Grubbs test (5 %, two-sided) calls an outlier and that lies
   *     further from the robust mean than a reading is uncertain (k = 2), if any
   */
  public record SpotSummary(
      String lane,
      int spot,
      double machine,
      List<Double> distances,
      double robustMean,
      double robustDeviation,
      Optional<HandReading> outlier) {

    /** Keeps a copy of the list. */
    public SpotSummary {
      distances = List.copyOf(distances);
    }
  }
}
