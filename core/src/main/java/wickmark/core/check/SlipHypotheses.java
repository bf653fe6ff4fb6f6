package wickmark.core.check;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import wickmark.core.check.MeasuredSheet.MeasuredLane;
import wickmark.core.check.MeasuredSheet.MeasuredSpot;
import wickmark.core.uncertainty.Decimals;

/** The slips that are tried, over a whole sheet, a lane or a single reading. */
final class SlipHypotheses {
  /** Beforehand, one reader, lane or reading in 150 is taken to have a certain slip. */
  private static final double RARE = 5;

  /** Uncertainty of where a person sees the rim of a spot, mm: rims are blurred. */
  private static final double RIM = 0.7;

  /** Uncertainty of where a person sees the paper's edge, mm: corners curl. */
  private static final double EDGE = 0.5;

  /** Centimetres are written with one decimal: half of it as a rectangular distribution. */
  private static final double CENTIMETRE_ROUNDING = 0.05 / StrictMath.sqrt(3);

  /** Inches are read to sixteenths. */
  private static final double INCH_ROUNDING = 1 / 32.0 / StrictMath.sqrt(3);

  private static final double INCH = 25.4;

  /** The blank in front of a ruler's zero mark, mm, from and to. */
  private static final double SHORTEST_BLANK = 2;

  private static final double LONGEST_BLANK = 15;

  /** Readings that must agree on a blank. */
  private static final int LEAST_FOR_BLANK = 3;

  /** The readings that a slip touches. */
  private enum Touched {
    ALL,
    FRONTS,
    SPOTS;

    boolean holds(LengthReading reading) {
      return this == ALL || (this == FRONTS) == reading.isFront();
    }
  }

  private final MeasuredSheet sheet;
  private final double handUncertainty;

  SlipHypotheses(MeasuredSheet sheet, CheckSettings settings) {
    this.sheet = sheet;
    this.handUncertainty = settings.lengthUncertainty();
  }

  LengthHypothesis correct() {
    return new LengthHypothesis(Optional.empty(), 0, "", this::truth);
  }

  Prediction truth(LengthReading reading) {
    return truth(reading.machine(), reading.machineUncertainty());
  }

  private Prediction truth(double machine, double machineUncertainty) {
    return new Prediction(machine, StrictMath.hypot(handUncertainty, machineUncertainty));
  }

  /** Slips that a person makes in everything. */
  List<LengthHypothesis> ofSheet(List<LengthReading> readings) {
    List<LengthHypothesis> hypotheses = common();
    blank(readings).ifPresent(hypotheses::add);
    hypotheses.add(
        slip(
            Slip.SPOT_ORDER,
            RARE,
            "reversed",
            Touched.SPOTS,
            r -> otherSpot(r, r.lane(), reversed(r))));
    for (int i = 0; i < sheet.lanes().size(); i++) {
      for (int j = i + 1; j < sheet.lanes().size(); j++) {
        hypotheses.add(swapped(sheet.lanes().get(i), sheet.lanes().get(j)));
      }
    }
    return hypotheses;
  }

  /** Slips that a person makes in one lane. */
  List<LengthHypothesis> ofLane(MeasuredLane lane) {
    List<LengthHypothesis> hypotheses = common();
    int spots = lane.moved();
    if (spots > 2) {
      hypotheses.add(
          slip(
              Slip.SPOT_ORDER,
              RARE,
              "reversed",
              Touched.SPOTS,
              r -> otherSpot(r, lane, reversed(r))));
    }
    for (int i = 1; i <= spots; i++) {
      for (int j = i + 1; j <= spots; j++) {
        int first = i;
        int second = j;
        hypotheses.add(
            slip(
                Slip.SPOT_ORDER,
                RARE,
                first + " and " + second,
                Touched.SPOTS,
                r -> otherSpot(r, lane, exchanged(r.spotNumber(), first, second))));
      }
    }
    return hypotheses;
  }

  /** Slips that a person makes in one reading. */
  List<LengthHypothesis> ofReading(LengthReading reading) {
    List<LengthHypothesis> hypotheses = new ArrayList<>();
    for (LengthHypothesis hypothesis : common()) {
      if (!hypothesis.prediction().apply(reading).equals(truth(reading))) {
        hypotheses.add(hypothesis);
      }
    }
    List<BigDecimal> swaps = DigitSwaps.of(reading.written());
    for (BigDecimal other : swaps) {
      double shift = reading.value() - other.doubleValue();
      hypotheses.add(
          slip(
              Slip.DIGITS_TRANSPOSED,
              RARE + StrictMath.log(swaps.size()),
              other.toPlainString(),
              Touched.ALL,
              r -> truth(r).shifted(shift, 0)));
    }
    return hypotheses;
  }

  private List<LengthHypothesis> common() {
    List<LengthHypothesis> hypotheses = new ArrayList<>();
    for (Touched which : Touched.values()) {
      hypotheses.add(
          slip(Slip.CENTIMETRES, RARE, "", which, r -> truth(r).inUnit(10, CENTIMETRE_ROUNDING)));
      hypotheses.add(slip(Slip.INCHES, RARE, "", which, r -> truth(r).inUnit(INCH, INCH_ROUNDING)));
      hypotheses.add(
          slip(
              Slip.FROM_PAPER_EDGE,
              RARE,
              "",
              which,
              r -> truth(r).shifted(r.lane().margin(), EDGE)));
    }
    hypotheses.add(slip(Slip.UPPER_RIM, RARE, "", Touched.SPOTS, r -> rim(r, true)));
    hypotheses.add(slip(Slip.LOWER_RIM, RARE, "", Touched.SPOTS, r -> rim(r, false)));
    hypotheses.add(
        slip(
            Slip.FRONT_AT_PAPER_TOP,
            RARE,
            "",
            Touched.FRONTS,
            r -> truth(r).shifted(r.lane().paperTop() - r.lane().front(), EDGE)));
    return hypotheses;
  }

  private LengthHypothesis slip(
      Slip slip,
      double cost,
      String detail,
      Touched which,
      Function<LengthReading, Prediction> prediction) {
    return new LengthHypothesis(
        Optional.of(slip),
        cost,
        detail,
        reading -> which.holds(reading) ? prediction.apply(reading) : truth(reading));
  }

  private Prediction rim(LengthReading reading, boolean upper) {
    MeasuredSpot spot = reading.spot().orElseThrow();
    double shift = (upper ? spot.top() : spot.bottom()) - spot.middle();
    return truth(reading).shifted(shift, RIM);
  }

  private static int reversed(LengthReading reading) {
    return reading.lane().moved() + 1 - reading.spotNumber();
  }

  private static int exchanged(int number, int first, int second) {
    return number == first ? second : number == second ? first : number;
  }

  private Prediction otherSpot(LengthReading reading, MeasuredLane lane, int number) {
    return lane.spot(number)
        .map(spot -> truth(spot.middle(), spot.middleUncertainty()))
        .orElseGet(() -> truth(reading));
  }

  private LengthHypothesis swapped(MeasuredLane first, MeasuredLane second) {
    return slip(
        Slip.LANES_SWAPPED,
        RARE,
        first.name() + " and " + second.name(),
        Touched.SPOTS,
        reading -> {
          if (reading.lane().equals(first)) {
            return otherSpot(reading, second, reading.spotNumber());
          }
          return reading.lane().equals(second)
              ? otherSpot(reading, first, reading.spotNumber())
              : truth(reading);
        });
  }

  /** The ruler's end at the baseline: everything is too short by the blank before its zero mark. */
  private Optional<LengthHypothesis> blank(List<LengthReading> readings) {
    if (readings.size() < LEAST_FOR_BLANK) {
      return Optional.empty();
    }
    List<Double> missing =
        readings.stream().map(reading -> reading.machine() - reading.value()).sorted().toList();
    double blank = missing.get(missing.size() / 2);
    if (blank < SHORTEST_BLANK || blank > LONGEST_BLANK) {
      return Optional.empty();
    }
    double spread = handUncertainty / StrictMath.sqrt(readings.size());
    double cost = RARE + StrictMath.log((LONGEST_BLANK - SHORTEST_BLANK) / spread);
    String detail = Decimals.text(blank, 0);
    return Optional.of(
        slip(Slip.RULER_END, cost, detail, Touched.ALL, r -> truth(r).shifted(-blank, 0)));
  }
}
