package wickmark.core.check;

import java.util.Optional;
import java.util.function.Function;

/**
 * A way in which lengths come to be written down: correctly or with a slip.
 *
 * @param slip empty for correct reading
 * @param cost minus the logarithm of how likely the way is beforehand, against correct reading
 * @param detail what the slip was about, such as the other lane's name; may be empty text
 * @param prediction what would have been written
 */
record LengthHypothesis(
    Optional<Slip> slip,
    double cost,
    String detail,
    Function<LengthReading, Prediction> prediction) {

  double costOf(LengthReading reading) {
    return prediction.apply(reading).cost(reading.value());
  }
}
