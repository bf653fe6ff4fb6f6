package wickmark.core.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static wickmark.core.check.ReadSheet.row;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

class HandCheckTest {

  @Test
  void marksByTheEnNumber() {
    ReaderReport report = ReadSheet.check(List.of(row("A", 1, "56", "75", "")));

    Mark distance = report.marks().get(0);
    // ISO 13528:2015, 9.7: 1.8 mm over the root of (2 · 0.577)² + (2 · 0.12)².
    assertThat(distance.difference()).isCloseTo(1.8, within(1e-9));
    assertThat(distance.en()).isCloseTo(1.8 / Math.hypot(2 / Math.sqrt(3), 0.24), within(1e-9));
    assertThat(distance.agrees()).isFalse();
    assertThat(report.marks().get(1).agrees()).isTrue();
  }

  @Test
  void findsLanesWhateverTheirCase() {
    assertThat(ReadSheet.check(List.of(row("a", 1, "54", "75", "0.72"))).isAllRight()).isTrue();
  }

  @Nested
  class Sentences {

    @Test
    void ofCentimetres() {
      assertThat(messages(row("A", 1, "5.4", "75", "")))
          .containsExactly(
              "Lane A, spot 1: you wrote 5.4, the machine has 54.2 mm. That fits centimetres: 5.4"
                  + " cm are 54 mm. Please write millimetres.");
    }

    @Test
    void ofTheUpperRim() {
      assertThat(messages(row("A", 1, "58", "75", "")))
          .singleElement()
          .asString()
          .contains("upper rim of the spot (58.2 mm)", "Measure to the middle");
    }

    @Test
    void ofThePaperEdge() {
      assertThat(messages(row("A", 1, "76", "75", "")))
          .singleElement()
          .asString()
          .contains("your baseline lies 21.5 mm above the paper's lower edge");
    }

    @Test
    void ofExchangedDigits() {
      assertThat(messages(row("B", 1, "16", "75", "")))
          .singleElement()
          .asString()
          .contains("With two digits exchanged it would be 61, which fits");
    }

    @Test
    void ofSomethingElse() {
      assertThat(messages(row("A", 1, "40", "75", "")))
          .singleElement()
          .asString()
          .contains("Nothing common explains it. Please read this one again.");
    }

    @Test
    void ofSpotsCountedFromTheBaseline() {
      assertThat(
              messages(
                  row("C", 1, "13", "75", ""),
                  row("C", 2, "48", "75", ""),
                  row("C", 3, "70", "75", "")))
          .singleElement()
          .asString()
          .startsWith(
              "In 2 readings (lane C, spot 1; lane C, spot 3). The first of them: you wrote 13")
          .contains("counted the other way", "Spot 1 is the one nearest the front");
    }
  }

  @Nested
  class OfRf {

    // A student report cut 19/48 = 0.3958 off to 0.39.
    @Test
    void seesWhatWasCutOff() {
      assertThat(rf("19", "48", "0.39"))
          .hasValueSatisfying(
              found -> {
                assertThat(found.slip()).isEqualTo(Slip.RF_ROUNDING);
                assertThat(found.sentence())
                    .isEqualTo(
                        "19 ÷ 48 = 0.3958…, which rounds to 0.40; you wrote 0.39. It looks as if"
                            + " you cut off the digits after that instead of rounding.");
              });
    }

    @Test
    void acceptsAnyNumberOfDecimals() {
      assertThat(rf("33", "55", "0.6")).isEmpty();
      assertThat(rf("33", "55", "0.60")).isEmpty();
      assertThat(rf("19", "48", "0.396")).isEmpty();
    }

    @Test
    void seesARatioUpsideDown() {
      assertThat(rf("33", "55", "1.67")).map(RfCheck.Found::slip).contains(Slip.RF_UPSIDE_DOWN);
      assertThat(machineRf("1.67")).map(RfCheck.Found::slip).contains(Slip.RF_UPSIDE_DOWN);
    }

    @Test
    void seesHundredths() {
      assertThat(rf("33", "55", "60")).map(RfCheck.Found::slip).contains(Slip.RF_HUNDREDFOLD);
      assertThat(machineRf("60")).map(RfCheck.Found::slip).contains(Slip.RF_HUNDREDFOLD);
    }

    @Test
    void seesAWrongSum() {
      assertThat(rf("33", "55", "0.66"))
          .hasValueSatisfying(
              found ->
                  assertThat(found.sentence())
                      .startsWith("your own distances give 33 ÷ 55 = 0.60, but you wrote 0.66"));
    }

    @Test
    void seesAnRfAboveOne() {
      assertThat(rf("60", "55", "1.09")).map(RfCheck.Found::slip).contains(Slip.RF_ABOVE_ONE);
      assertThat(machineRf("1.2")).map(RfCheck.Found::slip).contains(Slip.RF_ABOVE_ONE);
    }

    @Test
    void isNotBlamedForAUnit() {
      assertThat(messages(row("A", 1, "5.4", "75", "0.72")))
          .singleElement()
          .asString()
          .contains("centimetres");
    }

    @Test
    void hasNoUnit() {
      HandReading row =
          new HandReading(
              "p",
              "A",
              1,
              Optional.empty(),
              Optional.empty(),
              Optional.of(new BigDecimal("0.72")),
              Optional.of("mm"),
              "line 2");

      assertThat(messages(row))
          .containsExactly(
              "Rf of lane A, spot 1: you wrote \"mm\" after the Rf. Rf has no unit: it is a length "
                  + "divided by a length.");
    }

    private static Optional<RfCheck.Found> rf(String distance, String front, String rf) {
      return RfCheck.againstOwn(
          new BigDecimal(rf), new BigDecimal(distance), new BigDecimal(front));
    }

    private static Optional<RfCheck.Found> machineRf(String rf) {
      return RfCheck.againstMachine(new BigDecimal(rf), 0.6, 0.012);
    }
  }

  @Nested
  class Problems {

    @Test
    void nameThePlace() {
      HandCheckReport report =
          HandCheck.of(
              ReadSheet.SHEET,
              List.of(
                  at("class.csv, line 2", "Z", 1, "54"),
                  at("class.csv, line 3", "A", 3, "54"),
                  at("class.csv, line 4", "A", 1, "54"),
                  at("class.csv, line 5", "A", 1, "54"),
                  at("class.csv, line 6", "B", 1, "")),
              CheckSettings.defaults());

      assertThat(report.problems())
          .extracting(problem -> problem.place() + ": " + problem.message())
          .containsExactly(
              "class.csv, line 2: there is no lane \"Z\"; the lanes are A, B, C, X",
              "class.csv, line 3: there is no spot 3 in lane A, which has 1 spot",
              "class.csv, line 5: the same row as at class.csv, line 4; it counts once",
              "class.csv, line 6: there is no number in this row",
              "p: not read or not usable: lane B spot 1, lane B spot 2, lane C spot 1, lane C spot "
                  + "2, lane C spot 3, lane X spot 1, lane X spot 2");
      assertThat(report.readers().get(0).marks()).hasSize(1);
    }

    private static HandReading at(String place, String lane, int spot, String distance) {
      HandReading row = row(lane, spot, distance, "", "");
      return new HandReading(
          row.reader(),
          row.lane(),
          row.spot(),
          row.distance(),
          row.front(),
          row.rf(),
          row.rfUnit(),
          place);
    }
  }

  @Nested
  class OfAClass {
    private final HandCheckReport report =
        HandCheck.of(ReadSheet.SHEET, classOf(30, 1.2), CheckSettings.defaults());

    @Test
    void findsTheBiasOfAll() {
      assertThat(report.together().agreement().orElseThrow().meanDifference())
          .isCloseTo(1.2, within(0.15));
      assertThat(report.readers()).hasSize(30);
      assertThat(report.readers().get(0).differences().orElseThrow().mean())
          .isCloseTo(1.2, within(0.6));
    }

    @Test
    void summarisesEachSpot() {
      ClassReport.SpotSummary first = report.together().spots().get(0);

      assertThat(report.together().spots()).hasSize(8);
      assertThat(first.robustMean()).isCloseTo(55.4, within(0.4));
      assertThat(first.robustDeviation()).isCloseTo(0.6, within(0.3));
    }

    @Test
    void drawsALineOfSlopeOne() {
      assertThat(report.together().line().orElseThrow().slope()).isCloseTo(1, within(0.01));
    }

    @Test
    void leavesOutWhatASlipExplains() {
      List<HandReading> rows = new ArrayList<>(classOf(5, 0));
      rows.add(row("A", 1, "5.4", "75", ""));

      ClassReport together =
          HandCheck.of(ReadSheet.SHEET, rows, CheckSettings.defaults()).together();

      assertThat(together.leftOut()).isEqualTo(1);
      assertThat(together.spots().get(0).distances()).hasSize(5);
    }

    @Test
    void knowsThePrecisionOnlyWhereReadersRepeat() {
      List<HandReading> twice = new ArrayList<>();
      Random random = new Random(3);
      for (int reader = 0; reader < 20; reader++) {
        for (int time = 0; time < 2; time++) {
          for (HandReading row : ReadSheet.readings(random, ReadSheet::truth)) {
            twice.add(named("p" + reader, row, 0, reader + "/" + time));
          }
        }
      }

      assertThat(report.together().precision()).isEmpty();
      assertThat(
              HandCheck.of(ReadSheet.SHEET, twice, CheckSettings.defaults())
                  .together()
                  .precision()
                  .orElseThrow()
                  .repeatability())
          .isCloseTo(Math.hypot(0.5, Math.sqrt(1 / 12.0)), within(0.12));
    }

    private static List<HandReading> classOf(int readers, double bias) {
      Random random = new Random(17);
      List<HandReading> rows = new ArrayList<>();
      for (int reader = 0; reader < readers; reader++) {
        for (HandReading row :
            ReadSheet.readings(random, (lane, spot) -> ReadSheet.truth(lane, spot) + bias)) {
          rows.add(named("p" + reader, row, 0, "line"));
        }
      }
      return rows;
    }

    private static HandReading named(String reader, HandReading row, double shift, String place) {
      return new HandReading(
          reader,
          row.lane(),
          row.spot(),
          row.distance().map(d -> d.add(BigDecimal.valueOf(shift))),
          row.front(),
          row.rf(),
          row.rfUnit(),
          place);
    }
  }

  private static List<String> messages(HandReading... rows) {
    return ReadSheet.check(List.of(rows)).slips().stream().map(SlipFinding::message).toList();
  }
}
