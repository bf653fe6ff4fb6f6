package wickmark.core.pool;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import wickmark.core.colour.ColourName;
import wickmark.core.colour.DyeAbsorbance;
import wickmark.core.colour.LabColour;
import wickmark.core.record.RunRecord;
import wickmark.core.statistics.GrubbsTest;

class PooledStripsTest {
  private static final DyeAbsorbance RED = new DyeAbsorbance(0.02, 0.5, 0.44);
  private static final DyeAbsorbance YELLOW = new DyeAbsorbance(0.01, 0.03, 0.5);
  private static final DyeAbsorbance BLUE = new DyeAbsorbance(0.5, 0.29, 0.05);

  // Class table of a school experiment, three benches: red 0.89, 0.99, 0.97 (SD 0.053), yellow
  // 0.97,
  // 0.93, 0.95 (0.020), blue 0.95, 0.93, 0.95 (0.012); pooled: root of the mean of the squares.
  @Test
  void poolTheClassTable() {
    PooledStrips pooled =
        PooledStrips.of(
            List.of(
                record(
                    lane("red", spot(RED, 0.89)),
                    lane("yellow", spot(YELLOW, 0.97)),
                    lane("blue", spot(BLUE, 0.95))),
                record(
                    lane("red", spot(RED, 0.99)),
                    lane("yellow", spot(YELLOW, 0.93)),
                    lane("blue", spot(BLUE, 0.93))),
                record(
                    lane("red", spot(RED, 0.97)),
                    lane("yellow", spot(YELLOW, 0.95)),
                    lane("blue", spot(BLUE, 0.95)))));

    assertThat(pooled.spots())
        .extracting(PooledStrips.PooledSpot::lane)
        .containsExactly("red", "yellow", "blue");
    assertThat(pooled.spots())
        .extracting(spot -> spot.mean().standardDeviation().orElseThrow())
        .satisfiesExactly(
            red -> assertThat(red).isCloseTo(0.053, within(5e-4)),
            yellow -> assertThat(yellow).isCloseTo(0.020, within(5e-4)),
            blue -> assertThat(blue).isCloseTo(0.012, within(5e-4)));
    assertThat(pooled.repeatability().orElseThrow())
        .isCloseTo(
            Math.sqrt((0.0529 * 0.0529 + 0.02 * 0.02 + 0.01155 * 0.01155) / 3), within(1e-4));
  }

  @Test
  void keepSpotsOfOneLaneApart() {
    PooledStrips pooled =
        PooledStrips.of(
            List.of(
                record(lane("A", spot(RED, 0.45), spot(YELLOW, 0.50))),
                record(lane("A", spot(RED, 0.51), spot(YELLOW, 0.55)))));

    assertThat(pooled.spots())
        .extracting(PooledStrips.PooledSpot::colour)
        .containsExactly("yellow", "red");
    assertThat(pooled.spots().get(1).values())
        .extracting(PooledStrips.Value::rf)
        .containsExactly(0.45, 0.51);
  }

  @Test
  void sayWhereASpotIsMissing() {
    PooledStrips pooled =
        PooledStrips.of(
            List.of(
                record(lane("A", spot(RED, 0.30), spot(BLUE, 0.8))),
                record(lane("A", spot(RED, 0.31)))));

    assertThat(pooled.spots()).extracting(PooledStrips.PooledSpot::missingIn).containsExactly(1, 0);
    assertThat(pooled.spots().get(0).mean().standardDeviation()).isEmpty();
  }

  @Test
  void findAnOutlier() {
    List<RunRecord> records = new ArrayList<>();
    for (double rf : new double[] {0.501, 0.498, 0.502, 0.499, 0.57, 0.5}) {
      records.add(record(lane("A", spot(RED, rf))));
    }

    PooledStrips.PooledSpot spot = PooledStrips.of(records).spots().get(0);

    assertThat(spot.values().get(spot.outlier().orElseThrow()).rf()).isEqualTo(0.57);
  }

  /**
   * Five strips that agree to 0.0002 by luck, and one 0.002 off, each uncertain by 0.006 (k = 2).
   */
  @Test
  void takeNothingForAnOutlierThatIsWithinItsUncertainty() {
    List<RunRecord> records = new ArrayList<>();
    for (double rf : new double[] {0.5001, 0.4999, 0.5002, 0.4998, 0.502, 0.5}) {
      records.add(record(lane("A", spot(RED, rf))));
    }
    List<Double> factors = records.stream().map(r -> r.lanes().get(0).spots().get(0).rf()).toList();

    assertThat(GrubbsTest.of(factors)).hasValueSatisfying(t -> assertThat(t.isOutlier()).isTrue());
    assertThat(PooledStrips.of(records).spots().get(0).outlier()).isEmpty();
  }

  @Test
  void countLanesOfOneNameOnOneStripAsRepeats() {
    PooledStrips pooled =
        PooledStrips.of(List.of(record(lane("A", spot(RED, 0.5)), lane("A", spot(RED, 0.52)))));

    assertThat(pooled.spots())
        .singleElement()
        .satisfies(spot -> assertThat(spot.mean().mean()).isCloseTo(0.51, within(1e-12)));
  }

  private static RunRecord record(RunRecord.Lane... lanes) {
    return new RunRecord(
        RunRecord.FORMAT,
        new RunRecord.Tool("wickmark", "0"),
        new RunRecord.Photo("strip.png", "0", 1, 1),
        Map.of(),
        new RunRecord.Scale("none", null, null, null),
        null,
        new RunRecord.Strip(List.of(), List.of(), false, 1, 1.0),
        new RunRecord.Baseline(List.of(), false, 1),
        new RunRecord.Front(List.of(), "pencil", List.of(), 1),
        List.of(lanes),
        List.of(),
        List.of());
  }

  private static RunRecord.Lane lane(String name, RunRecord.Spot... spots) {
    return new RunRecord.Lane(
        name, "reference", List.of(0.0, 0.0), false, 1.0, null, null, "", Arrays.asList(spots));
  }

  private static RunRecord.Spot spot(DyeAbsorbance dye, double rf) {
    LabColour lab = dye.toLab();
    return new RunRecord.Spot(
        1,
        null,
        null,
        null,
        null,
        null,
        null,
        null,
        null,
        rf,
        0.003,
        rf,
        rf,
        0.5,
        List.of(0.0, 0.0),
        List.of(lab.lightness(), lab.a(), lab.b()),
        ColourName.of(lab).word(),
        List.of(),
        1,
        List.of(),
        List.of());
  }
}
