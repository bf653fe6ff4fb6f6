package wickmark.core.check;

import java.util.List;
import wickmark.core.uncertainty.Decimals;

/**
 * Says a slip in lengths as a teacher would to a pupil: what was seen, what it may be, what to do.
 */
final class SlipWords {
  private static final int MOST_NAMED = 3;

  private SlipWords() {}

  static String of(Slip slip, String detail, List<LengthReading> readings) {
    LengthReading example = readings.get(0);
    return where(readings) + figures(example) + reason(slip, detail, example, readings.size() > 1);
  }

  private static String where(List<LengthReading> readings) {
    if (readings.size() == 1) {
      return capital(readings.get(0).name()) + ": ";
    }
    List<String> names = readings.stream().limit(MOST_NAMED).map(LengthReading::name).toList();
    String more = readings.size() > MOST_NAMED ? " and others" : "";
    return "In "
        + readings.size()
        + " readings ("
        + String.join("; ", names)
        + more
        + "). The first of them: ";
  }

  private static String figures(LengthReading reading) {
    return "you wrote "
        + reading.written().toPlainString()
        + ", the machine has "
        + mm(reading.machine())
        + ". ";
  }

  private static String reason(Slip slip, String detail, LengthReading example, boolean several) {
    return switch (slip) {
      case CENTIMETRES ->
          "That fits centimetres: "
              + example.written().toPlainString()
              + " cm are "
              + example.written().movePointRight(1).toPlainString()
              + " mm. Please write millimetres.";
      case INCHES ->
          "That fits inches: "
              + example.written().toPlainString()
              + " in are "
              + mm(example.value() * 25.4)
              + ". Turn the ruler round and use its millimetre edge.";
      case FROM_PAPER_EDGE ->
          "The difference is "
              + mm(example.value() - example.machine())
              + ", and your baseline lies "
              + mm(example.lane().margin())
              + " above the paper's lower edge. Did you measure from the edge? Start at the pencil "
              + "baseline.";
      case UPPER_RIM ->
          "That is about the upper rim of the spot ("
              + mm(example.spot().orElseThrow().top())
              + "). Measure to the middle of the spot.";
      case LOWER_RIM ->
          "That is about the lower rim of the spot ("
              + mm(example.spot().orElseThrow().bottom())
              + "). Measure to the middle of the spot.";
      case FRONT_AT_PAPER_TOP ->
          "That is about the top of the paper ("
              + mm(example.lane().paperTop())
              + "). The front is the line up to which the solvent came.";
      case RULER_END ->
          "All your lengths are about "
              + detail
              + " mm too short. Many rulers begin with a blank piece: lay the zero mark, not the "
              + "ruler's end, on the baseline.";
      case SPOT_ORDER -> spotOrder(detail);
      case LANES_SWAPPED ->
          "Your distances fit if lanes "
              + detail
              + " are exchanged. Look at the lane's name again.";
      case DIGITS_TRANSPOSED ->
          "With two digits exchanged it would be "
              + detail
              + ", which fits. Read it again before you write it down.";
      default ->
          several
              ? "Nothing common explains these. Please read them again."
              : "Nothing common explains it. Please read this one again.";
    };
  }

  private static String spotOrder(String detail) {
    return detail.equals("reversed")
        ? "Your distances fit if the spots are counted the other way. Spot 1 is the one nearest the"
            + " front."
        : "Your distances fit if spots "
            + detail
            + " of this lane are exchanged. Spot 1 is the one nearest the front.";
  }

  private static String mm(double value) {
    return Decimals.text(value, 1) + " mm";
  }

  static String capital(String text) {
    return Character.toUpperCase(text.charAt(0)) + text.substring(1);
  }
}
