package wickmark.testdata.set;

import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import wickmark.testdata.noise.Dice;
import wickmark.testdata.truth.LaneTruth;
import wickmark.testdata.truth.SpotTruth;
import wickmark.testdata.truth.StripTruth;

/**
 * The invented class that measured the first run of {@link IcingStrip} with rulers. Three readers
 * make no slip; the others make, between them, every slip of the trade that can be told apart.
 */
final class IcingClass {
  private static final String COLUMNS = "lane,spot,distance_mm,front_mm,rf,reader\n";
  private static final long SEED = 44;

  /** The blank between a ruler's end and its zero mark, mm. */
  private static final double BLANK_MM = 5;

  private final StripTruth strip;

  private IcingClass(StripTruth strip) {
    this.strip = strip;
  }

  /** Returns the readings of the whole class as a table with a header row. */
  static String readings(StripTruth strip) {
    StringBuilder csv = new StringBuilder(COLUMNS);
    Dice dice = new Dice(SEED);
    for (HandReader reader : new IcingClass(strip).readers()) {
      for (HandReading row : reader.read(strip, new Dice(dice.seed()))) {
        csv.append(
            String.join(
                ",",
                row.lane(),
                String.valueOf(row.spot()),
                row.distance().toPlainString(),
                row.front().toPlainString(),
                row.rf().toPlainString(),
                reader.code()));
        csv.append('\n');
      }
    }
    return csv.toString();
  }

  private List<HandReader> readers() {
    return List.of(
        halves("P01"),
        HandReader.careful("P02", HandReader.Edge.CENTIMETRES),
        whole("P03").longerBy(lane -> lane.origin().y()),
        halves("P04").aimingAt(IcingClass::rim),
        whole("P05"),
        halves("P06").withFrontAt(this::paperTop),
        whole("P07").longerBy(lane -> -BLANK_MM),
        HandReader.careful("P08", HandReader.Edge.INCHES),
        whole("P09")
            .writing(rows -> exchanged(rows, "Leaf", 1, "Leaf", 2))
            .writing(rows -> changed(rows, "Rose", 1, HandReading::withDigitsExchanged)),
        halves("P10").writing(rows -> exchanged(rows, "Yolk", 1, "Rose", 1)),
        halves("P11")
            .writing(rows -> changed(rows, "Yolk", 1, HandReading::dividedUpsideDown))
            .writing(rows -> changed(rows, "Sky", 1, row -> row.dividedWrong(10)))
            .writing(IcingClass::oneCutOff),
        halves("P12"));
  }

  private static HandReader halves(String code) {
    return HandReader.careful(code, HandReader.Edge.HALF_MILLIMETRES);
  }

  private static HandReader whole(String code) {
    return HandReader.careful(code, HandReader.Edge.MILLIMETRES);
  }

  /** To the upper rim of every spot but Sky's, which is read at its lower. */
  private static double rim(LaneTruth lane, SpotTruth spot) {
    return lane.name().equals("Sky")
        ? spot.extent().bottomDistanceMm()
        : spot.extent().topDistanceMm();
  }

  private double paperTop(LaneTruth lane) {
    return strip.sheet().heightMm() - lane.origin().y();
  }

  private static List<HandReading> changed(
      List<HandReading> rows, String lane, int spot, UnaryOperator<HandReading> change) {
    return rows.stream().map(row -> row.isOf(lane, spot) ? change.apply(row) : row).toList();
  }

  /** Two spots that are taken for each other. */
  private static List<HandReading> exchanged(
      List<HandReading> rows, String lane, int spot, String otherLane, int otherSpot) {
    HandReading one = find(rows, lane, spot);
    HandReading other = find(rows, otherLane, otherSpot);
    List<HandReading> first = changed(rows, lane, spot, row -> row.withDistance(other.distance()));
    return changed(first, otherLane, otherSpot, row -> row.withDistance(one.distance()));
  }

  private static HandReading find(List<HandReading> rows, String lane, int spot) {
    return rows.stream().filter(row -> row.isOf(lane, spot)).findFirst().orElseThrow();
  }

  /** The last Rf that cutting off makes another. */
  private static List<HandReading> oneCutOff(List<HandReading> rows) {
    List<HandReading> changed = new ArrayList<>(rows);
    for (int i = rows.size() - 1; i >= 0; i--) {
      HandReading cut = rows.get(i).cutOff();
      if (rows.get(i).rf().subtract(cut.rf()).movePointRight(2).intValue() == 1) {
        changed.set(i, cut);
        return changed;
      }
    }
    throw new IllegalStateException("every Rf rounds down; another seed is needed");
  }
}
