package wickmark.core.check;

import java.math.BigDecimal;
import java.util.Optional;

/**
 * One length that a person read, beside the machine's.
 *
 * @param lane the machine's lane
 * @param spotNumber its number; 0 for the front
 * @param written the number as the person wrote it
 */
record LengthReading(
    HandReading row, MeasuredSheet.MeasuredLane lane, int spotNumber, BigDecimal written) {

  boolean isFront() {
    return spotNumber == 0;
  }

  double value() {
    return written.doubleValue();
  }

  Optional<MeasuredSheet.MeasuredSpot> spot() {
    return lane.spot(spotNumber);
  }

  /** The machine's value in millimetres. */
  double machine() {
    return spot().map(MeasuredSheet.MeasuredSpot::middle).orElse(lane.front());
  }

  double machineUncertainty() {
    return spot()
        .map(MeasuredSheet.MeasuredSpot::middleUncertainty)
        .orElse(lane.frontUncertainty());
  }

  String name() {
    return isFront()
        ? "the front of lane " + lane.name()
        : "lane " + lane.name() + ", spot " + spotNumber;
  }
}
