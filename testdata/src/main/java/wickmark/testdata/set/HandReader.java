package wickmark.testdata.set;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleBiFunction;
import java.util.function.ToDoubleFunction;
import java.util.function.UnaryOperator;
import wickmark.testdata.noise.Dice;
import wickmark.testdata.truth.LaneTruth;
import wickmark.testdata.truth.SpotTruth;
import wickmark.testdata.truth.StripTruth;

/**
 * An invented person with a ruler.
 *
 * @param code how the readings name the person
 * @param edge the edge of the ruler that is read
 * @param spot where the person reads a spot, mm above the baseline
 * @param front where the person reads the front, mm above the baseline
 * @param afterwards what goes wrong when it is written down
 */
record HandReader(
    String code,
    Edge edge,
    ToDoubleBiFunction<LaneTruth, SpotTruth> spot,
    ToDoubleFunction<LaneTruth> front,
    UnaryOperator<List<HandReading>> afterwards) {

  /** How far apart the readings of one length lie, as a standard deviation, mm. */
  private static final double SCATTER_MM = 0.3;

  /**
   * A ruler's edge and how it is written down.
   *
   * @param unitMm length of the unit that numbers are written in, mm
   * @param steps read to this many parts of the unit
   * @param decimals written with so many
   */
  record Edge(double unitMm, int steps, int decimals) {
    static final Edge MILLIMETRES = new Edge(1, 1, 0);
    static final Edge HALF_MILLIMETRES = new Edge(1, 2, 1);
    static final Edge CENTIMETRES = new Edge(10, 10, 1);
    static final Edge INCHES = new Edge(25.4, 16, 2);

    private BigDecimal written(double mm) {
      double read = Math.rint(mm / unitMm * steps) / steps;
      return BigDecimal.valueOf(read).setScale(decimals, RoundingMode.HALF_UP);
    }
  }

  /** Someone who measures as told, to the middle of what is visible. */
  static HandReader careful(String code, Edge edge) {
    return new HandReader(
        code,
        edge,
        (lane, spot) -> spot.extent().middleDistanceMm(),
        LaneTruth::frontMm,
        UnaryOperator.identity());
  }

  HandReader aimingAt(ToDoubleBiFunction<LaneTruth, SpotTruth> place) {
    return new HandReader(code, edge, place, front, afterwards);
  }

  HandReader withFrontAt(ToDoubleFunction<LaneTruth> place) {
    return new HandReader(code, edge, spot, place, afterwards);
  }

  /** Everything comes out longer by an amount that may differ from lane to lane, mm. */
  HandReader longerBy(ToDoubleFunction<LaneTruth> more) {
    return new HandReader(
        code,
        edge,
        (lane, of) -> spot.applyAsDouble(lane, of) + more.applyAsDouble(lane),
        lane -> front.applyAsDouble(lane) + more.applyAsDouble(lane),
        afterwards);
  }

  HandReader writing(UnaryOperator<List<HandReading>> change) {
    return new HandReader(
        code, edge, spot, front, readings -> change.apply(afterwards.apply(readings)));
  }

  /** Returns what the person writes down, lane by lane, each from the front down. */
  List<HandReading> read(StripTruth strip, Dice dice) {
    List<HandReading> readings = new ArrayList<>();
    for (LaneTruth lane : strip.lanes()) {
      BigDecimal toFront = read(front.applyAsDouble(lane), dice);
      int count = lane.spots().size();
      for (int number = 1; number <= count; number++) {
        SpotTruth read = lane.spots().get(count - number);
        readings.add(
            HandReading.of(
                lane.name(), number, read(spot.applyAsDouble(lane, read), dice), toFront));
      }
    }
    return afterwards.apply(readings);
  }

  private BigDecimal read(double mm, Dice dice) {
    return edge.written(mm + SCATTER_MM * dice.normal());
  }
}
