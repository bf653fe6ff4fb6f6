package wickmark.core.check;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import wickmark.core.check.MeasuredSheet.MeasuredLane;
import wickmark.core.check.MeasuredSheet.MeasuredSpot;
import wickmark.core.statistics.SampleMean;

/** Marks the rows of one reader; all of them name a lane and a spot that exist. */
final class ReaderCheck {
  private final MeasuredSheet sheet;
  private final CheckSettings settings;
  private final String reader;
  private final List<HandReading> rows;
  private final List<LengthReading> lengths = new ArrayList<>();
  private final Map<LengthReading, SlipSearch.Assigned> assigned;
  private final SlipHypotheses hypotheses;

  ReaderCheck(MeasuredSheet sheet, CheckSettings settings, String reader, List<HandReading> rows) {
    this.sheet = sheet;
    this.settings = settings;
    this.reader = reader;
    this.rows = rows;
    this.hypotheses = new SlipHypotheses(sheet, settings);
    collectLengths();
    this.assigned = new SlipSearch(hypotheses, lengths).explain();
  }

  private MeasuredLane lane(HandReading row) {
    return sheet.lane(row.lane()).orElseThrow();
  }

  /** Each distance, and each front once a lane: people copy it into every row. */
  private void collectLengths() {
    Set<String> frontsSeen = new HashSet<>();
    for (HandReading row : rows) {
      MeasuredLane lane = lane(row);
      row.distance().ifPresent(d -> lengths.add(new LengthReading(row, lane, row.spot(), d)));
      row.front()
          .filter(f -> frontsSeen.add(lane.name() + "\n" + f.stripTrailingZeros()))
          .ifPresent(f -> lengths.add(new LengthReading(row, lane, 0, f)));
    }
  }

  ReaderReport report() {
    List<SlipFinding> slips = new ArrayList<>(lengthSlips());
    slips.addAll(rfSlips());
    slips.sort(Comparator.comparingInt(slip -> -slip.rows().size()));
    return new ReaderReport(reader, marks(), slips, differences());
  }

  private List<Mark> marks() {
    List<Mark> marks = new ArrayList<>();
    for (LengthReading length : lengths) {
      marks.add(
          Mark.of(
              length.row(),
              length.isFront() ? Mark.Quantity.FRONT : Mark.Quantity.DISTANCE,
              length.value(),
              settings.lengthUncertainty(),
              length.machine(),
              length.machineUncertainty()));
    }
    for (HandReading row : rows) {
      row.rf()
          .ifPresent(
              rf ->
                  marks.add(
                      Mark.of(
                          row,
                          Mark.Quantity.RF,
                          rf.doubleValue(),
                          handRfUncertainty(row, rf),
                          machineRf(row),
                          machineRfUncertainty(row))));
    }
    marks.sort(Comparator.comparingInt(mark -> rows.indexOf(mark.row())));
    return marks;
  }

  private MeasuredSpot spot(HandReading row) {
    return lane(row).spot(row.spot()).orElseThrow();
  }

  private double machineRf(HandReading row) {
    return spot(row).middle() / lane(row).front();
  }

  private double machineRfUncertainty(HandReading row) {
    double rf = machineRf(row);
    return StrictMath.hypot(spot(row).middleUncertainty(), rf * lane(row).frontUncertainty())
        / lane(row).front();
  }

  /** Of two lengths read with a ruler, and of writing it with so many decimals. */
  private double handRfUncertainty(HandReading row, BigDecimal rf) {
    double ratio = machineRf(row);
    double ofLengths =
        settings.lengthUncertainty() * StrictMath.sqrt(1 + ratio * ratio) / lane(row).front();
    double rounding = StrictMath.pow(10, -rf.scale()) / 2 / StrictMath.sqrt(3);
    return StrictMath.hypot(ofLengths, rounding);
  }

  private List<SlipFinding> lengthSlips() {
    record Kind(Slip slip, String detail) {}
    Map<Kind, List<LengthReading>> groups = new LinkedHashMap<>();
    for (Map.Entry<LengthReading, SlipSearch.Assigned> entry : assigned.entrySet()) {
      LengthReading reading = entry.getKey();
      if (isSlip(reading)) {
        Kind kind =
            entry
                .getValue()
                .hypothesis()
                .map(h -> new Kind(h.slip().orElseThrow(), h.detail()))
                .orElse(new Kind(Slip.READ_AGAIN, ""));
        groups.computeIfAbsent(kind, k -> new ArrayList<>()).add(reading);
      }
    }
    List<SlipFinding> findings = new ArrayList<>();
    groups.forEach(
        (kind, readings) ->
            findings.add(
                new SlipFinding(
                    kind.slip(),
                    readings.stream().map(LengthReading::row).distinct().toList(),
                    SlipWords.of(kind.slip(), kind.detail(), readings))));
    return findings;
  }

  /** Says whether a reading is explained by a slip that changes it, or by nothing. */
  private boolean isSlip(LengthReading reading) {
    Optional<LengthHypothesis> hypothesis = hypothesis(reading);
    return hypothesis
        .map(
            h ->
                h.slip().isPresent()
                    && !h.prediction().apply(reading).equals(hypotheses.truth(reading)))
        .orElse(true);
  }

  private Optional<LengthHypothesis> hypothesis(LengthReading reading) {
    return assigned.getOrDefault(reading, new SlipSearch.Assigned(Optional.empty())).hypothesis();
  }

  private List<SlipFinding> rfSlips() {
    List<SlipFinding> findings = new ArrayList<>();
    for (HandReading row : rows) {
      row.rf()
          .flatMap(rf -> rfSlip(row, rf))
          .ifPresent(found -> findings.add(rfFinding(row, found.slip(), found.sentence())));
      row.rfUnit()
          .ifPresent(
              unit ->
                  findings.add(
                      rfFinding(
                          row,
                          Slip.RF_UNIT,
                          "you wrote \""
                              + unit
                              + "\" after the Rf. Rf has no unit: it is a length divided by a "
                              + "length.")));
    }
    return findings;
  }

  private SlipFinding rfFinding(HandReading row, Slip slip, String sentence) {
    String where = "Rf of lane " + lane(row).name() + ", spot " + row.spot() + ": ";
    return new SlipFinding(slip, List.of(row), where + sentence);
  }

  private Optional<RfCheck.Found> rfSlip(HandReading row, BigDecimal rf) {
    Optional<BigDecimal> distance = inMillimetres(row, false);
    Optional<BigDecimal> front = inMillimetres(row, true);
    if (distance.isPresent() && front.isPresent()) {
      return RfCheck.againstOwn(rf, distance.get(), front.get());
    }
    return RfCheck.againstMachine(
        rf,
        machineRf(row),
        StrictMath.hypot(handRfUncertainty(row, rf), machineRfUncertainty(row)));
  }

  /** The row's own length, with a slip in its unit put right: the sum is judged for itself. */
  private Optional<BigDecimal> inMillimetres(HandReading row, boolean front) {
    Optional<BigDecimal> written = front ? frontOf(row) : row.distance();
    return written.map(
        value -> {
          Optional<Slip> slip =
              lengths.stream()
                  .filter(
                      l ->
                          l.isFront() == front && isOf(l, row) && l.written().compareTo(value) == 0)
                  .findFirst()
                  .flatMap(this::hypothesis)
                  .flatMap(LengthHypothesis::slip);
          if (slip.equals(Optional.of(Slip.CENTIMETRES))) {
            return value.movePointRight(1);
          }
          return slip.equals(Optional.of(Slip.INCHES))
              ? value.multiply(new BigDecimal("25.4"))
              : value;
        });
  }

  private boolean isOf(LengthReading length, HandReading row) {
    return length.lane().equals(lane(row)) && (length.isFront() || length.row().equals(row));
  }

  /** The front in this row, or in another row of the same lane. */
  private Optional<BigDecimal> frontOf(HandReading row) {
    return row.front().isPresent()
        ? row.front()
        : rows.stream()
            .filter(other -> lane(other).equals(lane(row)))
            .flatMap(other -> other.front().stream())
            .findFirst();
  }

  private Optional<SampleMean> differences() {
    List<Double> differences =
        lengths.stream()
            .filter(reading -> !isSlip(reading))
            .map(reading -> reading.value() - reading.machine())
            .toList();
    return differences.isEmpty() ? Optional.empty() : Optional.of(SampleMean.of(differences));
  }
}
