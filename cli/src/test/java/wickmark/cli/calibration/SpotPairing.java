package wickmark.cli.calibration;

import java.util.List;

/** Pairs a lane's true spots with those found: as many as possible, then as close as possible. */
final class SpotPairing {
  /** Greatest distance in Rf of a pair. */
  private static final double REACH = 0.06;

  private SpotPairing() {}

  /**
   * For each true spot the index of the Rf found, or −1. Both lists ascend, so pairs do not cross.
   */
  static int[] of(List<TruthFile.Spot> truth, List<Double> found) {
    return OrderedPairing.of(
        truth.size(), found.size(), (i, j) -> Math.abs(truth.get(i).rfError(found.get(j))), REACH);
  }
}
