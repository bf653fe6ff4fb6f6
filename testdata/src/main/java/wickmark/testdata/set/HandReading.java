package wickmark.testdata.set;

import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * One row of a person's readings, in the person's own unit.
 *
 * @param spot 1 is the one nearest the front
 */
record HandReading(String lane, int spot, BigDecimal distance, BigDecimal front, BigDecimal rf) {
  private static final int RF_DECIMALS = 2;

  /** A reading whose Rf was worked out rightly. */
  static HandReading of(String lane, int spot, BigDecimal distance, BigDecimal front) {
    return new HandReading(
        lane, spot, distance, front, quotient(distance, front, RoundingMode.HALF_UP));
  }

  private static BigDecimal quotient(BigDecimal over, BigDecimal under, RoundingMode mode) {
    return over.divide(under, RF_DECIMALS, mode);
  }

  boolean isOf(String name, int number) {
    return lane.equals(name) && spot == number;
  }

  /** The same spot with another distance, and the Rf that follows from it. */
  HandReading withDistance(BigDecimal other) {
    return of(lane, spot, other, front);
  }

  /** The first two digits of the distance exchanged. */
  HandReading withDigitsExchanged() {
    String digits = distance.toPlainString();
    return withDistance(
        new BigDecimal("" + digits.charAt(1) + digits.charAt(0) + digits.substring(2)));
  }

  HandReading dividedUpsideDown() {
    return withRf(quotient(front, distance, RoundingMode.HALF_UP));
  }

  /** Divided by a front that is too long by so much. */
  HandReading dividedWrong(int tooMuch) {
    BigDecimal wrong = front.add(BigDecimal.valueOf(tooMuch));
    return withRf(quotient(distance, wrong, RoundingMode.HALF_UP));
  }

  /** Digits cut off in place of rounding. */
  HandReading cutOff() {
    return withRf(quotient(distance, front, RoundingMode.DOWN));
  }

  private HandReading withRf(BigDecimal other) {
    return new HandReading(lane, spot, distance, front, other);
  }
}
