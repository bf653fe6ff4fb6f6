package wickmark.core.check;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import wickmark.core.check.MeasuredSheet.MeasuredLane;
import wickmark.core.check.MeasuredSheet.MeasuredSpot;

/** An invented strip and readers who read it to whole millimetres with a scatter of 0.5 mm. */
final class ReadSheet {
  static final MeasuredSheet SHEET =
      new MeasuredSheet(
          List.of(
              lane("A", spot(54.2, 4)),
              lane("B", spot(61.3, 3.5), spot(33.4, 4.2)),
              lane("C", spot(70.1, 3.4), spot(47.6, 5), spot(12.8, 3.2)),
              lane("X", spot(61.8, 4.4), spot(53.7, 3.6))));

  private ReadSheet() {}

  private static MeasuredLane lane(String name, MeasuredSpot... spots) {
    return new MeasuredLane(name, 75.4, 0.15, 21.5, 92.3, List.of(spots));
  }

  private static MeasuredSpot spot(double middle, double halfHeight) {
    return new MeasuredSpot(middle, 0.12, middle + halfHeight, middle - halfHeight);
  }

  /** What a reader does: from lane and spot (0 for the front) to the length meant. */
  interface Habit {
    double length(MeasuredLane lane, int spot);

    /** In how large a unit it is written, mm. */
    default double unit() {
      return 1;
    }
  }

  static double truth(MeasuredLane lane, int spot) {
    return spot == 0 ? lane.front() : lane.spot(spot).orElseThrow().middle();
  }

  static HandReading row(String lane, int spot, String distance, String front, String rf) {
    return new HandReading(
        "p", lane, spot, number(distance), number(front), number(rf), Optional.empty(), "line");
  }

  private static Optional<BigDecimal> number(String text) {
    return text.isEmpty() ? Optional.empty() : Optional.of(new BigDecimal(text));
  }

  /**
   * All readings of one reader: each length once, with scatter, and an Rf that follows from them.
   */
  static List<HandReading> readings(Random random, Habit habit) {
    List<HandReading> rows = new ArrayList<>();
    for (MeasuredLane lane : SHEET.lanes()) {
      BigDecimal front = written(habit.length(lane, 0), habit.unit(), random);
      for (int spot = 1; spot <= lane.spots().size(); spot++) {
        BigDecimal distance = written(habit.length(lane, spot), habit.unit(), random);
        rows.add(
            new HandReading(
                "p",
                lane.name(),
                spot,
                Optional.of(distance),
                Optional.of(front),
                Optional.of(distance.divide(front, 2, RoundingMode.HALF_UP)),
                Optional.empty(),
                "line"));
      }
    }
    return rows;
  }

  private static BigDecimal written(double length, double unit, Random random) {
    double read = Math.rint(length + 0.5 * random.nextGaussian());
    int decimals = unit == 1 ? 0 : unit == 10 ? 1 : 2;
    return BigDecimal.valueOf(read / unit).setScale(decimals, RoundingMode.HALF_UP);
  }

  static HandReading with(HandReading row, BigDecimal distance) {
    return new HandReading(
        row.reader(),
        row.lane(),
        row.spot(),
        Optional.of(distance),
        row.front(),
        row.rf(),
        row.rfUnit(),
        row.place());
  }

  static HandReading withRf(HandReading row, BigDecimal rf) {
    return new HandReading(
        row.reader(),
        row.lane(),
        row.spot(),
        row.distance(),
        row.front(),
        Optional.of(rf),
        row.rfUnit(),
        row.place());
  }

  static ReaderReport check(List<HandReading> rows) {
    return HandCheck.of(SHEET, rows, CheckSettings.defaults()).readers().get(0);
  }
}
