package wickmark.core.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.function.BiFunction;
import java.util.function.Function;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import wickmark.core.check.MeasuredSheet.MeasuredLane;

/**
 * How often slips are named: rightly where they were made, wrongly where a careful reader only
 * scatters by 0.5 mm and rounds to whole millimetres.
 */
class SlipRatesTest {
  private static final int CLASSES = 400;

  @Test
  void namesNoSlipInCarefulReadings() {
    Random random = new Random(41);
    int readings = 0;
    int accused = 0;
    int readers = 0;
    for (int i = 0; i < 5 * CLASSES; i++) {
      List<HandReading> rows = ReadSheet.readings(random, ReadSheet::truth);
      ReaderReport report = ReadSheet.check(rows);
      readings += rows.size();
      accused += report.slips().stream().mapToInt(slip -> slip.rows().size()).sum();
      readers += report.slips().isEmpty() ? 0 : 1;
    }
    assertThat(accused / (double) readings).isLessThan(0.005);
    assertThat(readers / (double) (5 * CLASSES)).isLessThan(0.02);
  }

  @ParameterizedTest(name = "{0} over the whole sheet")
  @MethodSource("habits")
  void namesTheSlipOfAWholeSheet(Slip slip, ReadSheet.Habit habit) {
    Random random = new Random(7);
    int hits = 0;
    for (int i = 0; i < CLASSES; i++) {
      ReaderReport report = ReadSheet.check(ReadSheet.readings(random, habit));
      hits += !report.slips().isEmpty() && report.slips().get(0).slip() == slip ? 1 : 0;
    }
    assertThat(hits / (double) CLASSES).isGreaterThanOrEqualTo(0.95);
  }

  static List<Arguments> habits() {
    return List.of(
        Arguments.of(Slip.CENTIMETRES, inUnit(10)),
        Arguments.of(Slip.INCHES, inUnit(25.4)),
        Arguments.of(Slip.FROM_PAPER_EDGE, habit((lane, spot) -> spot == 0 ? 0 : lane.margin())),
        Arguments.of(Slip.FROM_PAPER_EDGE, habit((lane, spot) -> spot == 0 ? lane.margin() : 0)),
        Arguments.of(Slip.FROM_PAPER_EDGE, habit((lane, spot) -> lane.margin())),
        Arguments.of(
            Slip.UPPER_RIM,
            habit((lane, spot) -> lane.spot(spot).map(s -> s.top() - s.middle()).orElse(0.0))),
        Arguments.of(
            Slip.LOWER_RIM,
            habit((lane, spot) -> lane.spot(spot).map(s -> s.bottom() - s.middle()).orElse(0.0))),
        Arguments.of(
            Slip.FRONT_AT_PAPER_TOP,
            habit((lane, spot) -> spot == 0 ? lane.paperTop() - lane.front() : 0)),
        Arguments.of(Slip.RULER_END, habit((lane, spot) -> -5.0)),
        Arguments.of(
            Slip.SPOT_ORDER,
            habit(
                (lane, spot) ->
                    spot == 0
                        ? 0
                        : ReadSheet.truth(lane, lane.spots().size() + 1 - spot)
                            - ReadSheet.truth(lane, spot))),
        Arguments.of(
            Slip.LANES_SWAPPED,
            habit(
                (lane, spot) ->
                    spot == 0 || "AX".contains(lane.name())
                        ? 0
                        : other(lane, spot) - ReadSheet.truth(lane, spot))));
  }

  /** Lanes B and C exchanged; a spot that the other lane lacks is read rightly. */
  private static double other(MeasuredLane lane, int spot) {
    int other = lane.name().equals("B") ? 2 : 1;
    return ReadSheet.SHEET
        .lanes()
        .get(other)
        .spot(spot)
        .map(MeasuredSheet.MeasuredSpot::middle)
        .orElse(ReadSheet.truth(lane, spot));
  }

  private static ReadSheet.Habit habit(BiFunction<MeasuredLane, Integer, Double> error) {
    return (lane, spot) -> ReadSheet.truth(lane, spot) + error.apply(lane, spot);
  }

  private static ReadSheet.Habit inUnit(double millimetres) {
    return new ReadSheet.Habit() {
      @Override
      public double length(MeasuredLane lane, int spot) {
        return ReadSheet.truth(lane, spot);
      }

      @Override
      public double unit() {
        return millimetres;
      }
    };
  }

  @Test
  void namesCentimetresInASingleReading() {
    assertThat(hitRateOfOne(Slip.CENTIMETRES, row -> row.distance().orElseThrow().movePointLeft(1)))
        .isGreaterThanOrEqualTo(0.95);
  }

  // Digits that differ by one change the number by 9 mm, which other slips explain as well; from
  // two
  // on it is gross. Nobody writes 07.
  @Test
  void namesTransposedDigits() {
    assertThat(
            hitRateOfOne(
                Slip.DIGITS_TRANSPOSED,
                row -> {
                  BigDecimal swapped =
                      DigitSwaps.of(row.distance().orElseThrow()).stream()
                          .findFirst()
                          .orElse(row.distance().orElseThrow());
                  double change =
                      swapped.subtract(row.distance().orElseThrow()).abs().doubleValue();
                  boolean startsWithZero = swapped.precision() < 2;
                  return change < 18 || startsWithZero ? row.distance().orElseThrow() : swapped;
                }))
        .isGreaterThanOrEqualTo(0.95);
  }

  @Test
  void namesAnRfUpsideDown() {
    assertThat(
            rfHitRate(
                Slip.RF_UPSIDE_DOWN,
                row ->
                    row.front()
                        .orElseThrow()
                        .divide(row.distance().orElseThrow(), 2, RoundingMode.HALF_UP)))
        .isGreaterThanOrEqualTo(0.95);
  }

  @Test
  void namesAWrongDivision() {
    assertThat(
            rfHitRate(
                Slip.RF_ARITHMETIC, row -> row.rf().orElseThrow().add(new BigDecimal("0.10"))))
        .isGreaterThanOrEqualTo(0.95);
  }

  @Test
  void namesAnRfThatWasCutOff() {
    assertThat(
            rfHitRate(
                Slip.RF_ROUNDING,
                row ->
                    row.distance()
                        .orElseThrow()
                        .divide(row.front().orElseThrow(), 2, RoundingMode.DOWN)))
        .isGreaterThanOrEqualTo(0.95);
  }

  /** Of the readings that the change alters, how many are given the slip and no other. */
  private static double hitRateOfOne(Slip slip, Function<HandReading, BigDecimal> change) {
    Random random = new Random(99);
    int tries = 0;
    int hits = 0;
    for (int i = 0; i < CLASSES; i++) {
      List<HandReading> rows = new ArrayList<>(ReadSheet.readings(random, ReadSheet::truth));
      int index = random.nextInt(rows.size());
      BigDecimal distance = change.apply(rows.get(index));
      if (distance.compareTo(rows.get(index).distance().orElseThrow()) == 0) {
        continue;
      }
      HandReading changed = ReadSheet.with(rows.get(index), distance);
      rows.set(index, changed);
      tries++;
      hits +=
          ReadSheet.check(rows).slips().stream()
                  .anyMatch(f -> f.slip() == slip && f.rows().contains(changed))
              ? 1
              : 0;
    }
    return hits / (double) tries;
  }

  private static double rfHitRate(Slip slip, Function<HandReading, BigDecimal> change) {
    Random random = new Random(5);
    int tries = 0;
    int hits = 0;
    for (int i = 0; i < CLASSES; i++) {
      for (HandReading row : ReadSheet.readings(random, ReadSheet::truth)) {
        BigDecimal rf = change.apply(row);
        if (rf.compareTo(row.rf().orElseThrow()) != 0) {
          tries++;
          ReaderReport report = ReadSheet.check(List.of(ReadSheet.withRf(row, rf)));
          hits += report.slips().stream().anyMatch(f -> f.slip() == slip) ? 1 : 0;
        }
      }
    }
    return hits / (double) tries;
  }
}
