package wickmark.core.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import wickmark.core.statistics.GrubbsTest;

class ClassCheckTest {
  /** Eleven readings of lane A, spot 1, as alike as a ruler lets them be. */
  private static final List<String> ALIKE =
      List.of(
          "54.2", "54.2", "54.3", "54.1", "54.2", "54.3", "54.2", "54.1", "54.2", "54.2", "54.3");

  @Test
  void whoIsApartWithinTheRulersDivisionsIsNotNamed() {
    assertThat(callsTheLastAnOutlier("54.8")).isTrue();
    assertThat(outlier("54.8", CheckSettings.defaults())).isEmpty();
  }

  @Test
  void whoIsApartByMoreIsNamed() {
    assertThat(outlier("58.2", CheckSettings.defaults()))
        .hasValueSatisfying(row -> assertThat(row.reader()).isEqualTo("p11"));
    assertThat(outlier("50.2", CheckSettings.defaults()))
        .hasValueSatisfying(row -> assertThat(row.reader()).isEqualTo("p11"));
  }

  /** The uncertainty is of the ruler that was used: with half millimetres 0.58 mm (k = 2). */
  @Test
  void ofAFinerRulerLessIsApart() {
    CheckSettings halves = new CheckSettings(CheckSettings.defaults().lengthUncertainty() / 2);

    assertThat(outlier("54.7", halves)).isEmpty();
    assertThat(outlier("54.9", halves)).isPresent();
  }

  /** Far from the mean, but the others scatter as widely. */
  @Test
  void whatChanceGivesIsNotNamedHoweverFarItLies() {
    assertThat(report(List.of("50", "58", "52", "57", "51", "56"), CheckSettings.defaults()))
        .isEmpty();
  }

  private static boolean callsTheLastAnOutlier(String last) {
    List<Double> values = new ArrayList<>(ALIKE.stream().map(Double::valueOf).toList());
    values.add(Double.valueOf(last));
    GrubbsTest test = GrubbsTest.of(values).orElseThrow();
    return test.isOutlier() && test.index() == ALIKE.size();
  }

  private static Optional<HandReading> outlier(String last, CheckSettings settings) {
    List<String> distances = new ArrayList<>(ALIKE);
    distances.add(last);
    return report(distances, settings);
  }

  private static Optional<HandReading> report(List<String> distances, CheckSettings settings) {
    List<ReaderReport> readers = new ArrayList<>();
    for (String distance : distances) {
      readers.add(reader("p" + readers.size(), new BigDecimal(distance), settings));
    }
    return new ClassCheck(ReadSheet.SHEET, settings, readers).report().spots().get(0).outlier();
  }

  /** A reader in whose only distance no slip was found. */
  private static ReaderReport reader(String name, BigDecimal distance, CheckSettings settings) {
    HandReading row =
        new HandReading(
            name,
            "A",
            1,
            Optional.of(distance),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            "line");
    Mark mark =
        Mark.of(
            row,
            Mark.Quantity.DISTANCE,
            distance.doubleValue(),
            settings.lengthUncertainty(),
            54.2,
            0.12);
    return new ReaderReport(name, List.of(mark), List.of(), Optional.empty());
  }
}
