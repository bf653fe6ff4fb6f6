package wickmark.core.check;

/**
 * One value of a person beside the machine's.
 *
 * @param quantity what was measured
 * @param hand what the person gave
 * @param machine what the machine has
 * @param en the E<sub>n</sub> number of ISO 13528:2015, 9.7: the difference over the root of the
 *     summed squares of both expanded uncertainties (k = 2); beyond ±1 they do not agree
 */
public record Mark(HandReading row, Quantity quantity, double hand, double machine, double en) {

  /** What was measured. */
  public enum Quantity {
    /** Distance of a spot's middle from the baseline, mm. */
    DISTANCE,
    /** Distance of the front from the baseline, mm. */
    FRONT,
    /** Retardation factor. */
    RF
  }

  static Mark of(
      HandReading row,
      Quantity quantity,
      double hand,
      double handUncertainty,
      double machine,
      double machineUncertainty) {
    double expanded = 2 * StrictMath.hypot(handUncertainty, machineUncertainty);
    return new Mark(row, quantity, hand, machine, (hand - machine) / expanded);
  }

  /** Returns hand minus machine. */
  public double difference() {
    return hand - machine;
  }

  /** Says whether the two agree within their uncertainties. */
  public boolean agrees() {
    return Math.abs(en) <= 1;
  }
}
