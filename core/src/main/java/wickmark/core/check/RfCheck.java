package wickmark.core.check;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;
import wickmark.core.uncertainty.Decimals;

/**
 * Checks a person's Rf: against the person's own distances where both are there, so that a wrong
 * length is not held against the sum; otherwise against the machine's.
 */
final class RfCheck {
  /** How many standard uncertainties off an Rf must be before it is asked why. */
  private static final double CHANCE = 3.2;

  private static final int WORKING_DECIMALS = 12;

  /** A slip in an Rf, with the sentence that explains it. */
  record Found(Slip slip, String sentence) {}

  private RfCheck() {}

  /** Compares an Rf with the lengths that it was worked out from, both in one unit. */
  static Optional<Found> againstOwn(BigDecimal rf, BigDecimal distance, BigDecimal front) {
    if (distance.signum() <= 0 || front.signum() <= 0) {
      return Optional.empty();
    }
    int decimals = Math.max(0, rf.scale());
    BigDecimal step = BigDecimal.ONE.movePointLeft(decimals);
    BigDecimal quotient = Decimals.quotient(distance, front, decimals);
    if (rf.compareTo(quotient) == 0) {
      return aboveOne(rf, distance, front);
    }
    String sum = plain(distance) + " ÷ " + plain(front) + " = " + shown(distance, front);
    if (rf.subtract(quotient).abs().compareTo(step) <= 0 && decimals > 0) {
      BigDecimal cut = distance.divide(front, decimals, RoundingMode.DOWN);
      String how =
          rf.compareTo(cut) == 0
              ? "cut off the digits after that instead of rounding"
              : "rounded the wrong way";
      return Optional.of(
          new Found(
              Slip.RF_ROUNDING,
              "%s, which rounds to %s; you wrote %s. It looks as if you %s."
                  .formatted(sum, plain(quotient), plain(rf), how)));
    }
    if (rf.subtract(Decimals.quotient(front, distance, decimals)).abs().compareTo(step) <= 0) {
      return Optional.of(
          new Found(
              Slip.RF_UPSIDE_DOWN,
              "you divided the front by the spot. It is the other way round: %s. Rf is never above 1."
                  .formatted(sum)));
    }
    BigDecimal hundredfold = Decimals.quotient(distance.movePointRight(2), front, decimals);
    if (rf.subtract(hundredfold).abs().compareTo(step) <= 0) {
      return Optional.of(hundredfold(sum, rf));
    }
    return Optional.of(
        new Found(
            Slip.RF_ARITHMETIC,
            "your own distances give %s, but you wrote %s. Work the division out again."
                .formatted(sum, plain(rf))));
  }

  /** Compares an Rf with the machine's. */
  static Optional<Found> againstMachine(BigDecimal rf, double machine, double uncertainty) {
    double value = rf.doubleValue();
    String has = "the machine has " + Decimals.text(machine, 2);
    if (Math.abs(value - machine) <= CHANCE * uncertainty) {
      return Optional.empty();
    }
    if (machine > 0 && isNear(value, 1 / machine, uncertainty / machine / machine)) {
      return Optional.of(
          new Found(
              Slip.RF_UPSIDE_DOWN,
              "you wrote %s, %s. It looks as if you divided the front by the spot; it is the other way round, and never above 1."
                  .formatted(plain(rf), has)));
    }
    if (isNear(value, 100 * machine, 100 * uncertainty) && value > 1) {
      return Optional.of(hundredfold(has, rf));
    }
    if (value > 1) {
      return Optional.of(aboveOneAtAll(rf));
    }
    return Optional.empty();
  }

  private static boolean isNear(double value, double expected, double uncertainty) {
    return Math.abs(value - expected) <= CHANCE * uncertainty;
  }

  private static Optional<Found> aboveOne(BigDecimal rf, BigDecimal distance, BigDecimal front) {
    return distance.compareTo(front) > 0 ? Optional.of(aboveOneAtAll(rf)) : Optional.empty();
  }

  private static Found aboveOneAtAll(BigDecimal rf) {
    return new Found(
        Slip.RF_ABOVE_ONE,
        "your Rf is %s, but no spot travels further than the solvent: Rf lies between 0 and 1. Look at both distances again."
            .formatted(plain(rf)));
  }

  private static Found hundredfold(String first, BigDecimal rf) {
    return new Found(
        Slip.RF_HUNDREDFOLD,
        "%s; you wrote %s, which is a hundred times that. Give Rf as a number between 0 and 1."
            .formatted(first, plain(rf)));
  }

  /** The quotient with enough digits to see how it rounds. */
  private static String shown(BigDecimal distance, BigDecimal front) {
    BigDecimal exact =
        distance.divide(front, WORKING_DECIMALS, RoundingMode.DOWN).stripTrailingZeros();
    if (exact.scale() <= 4) {
      return exact.setScale(Math.max(2, exact.scale()), RoundingMode.UNNECESSARY).toPlainString();
    }
    return exact.setScale(4, RoundingMode.DOWN).toPlainString() + "…";
  }

  private static String plain(BigDecimal value) {
    return value.toPlainString();
  }
}
