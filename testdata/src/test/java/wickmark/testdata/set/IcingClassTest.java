package wickmark.testdata.set;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import wickmark.testdata.noise.Dice;
import wickmark.testdata.truth.StripTruth;

class IcingClassTest {
  private static final StripTruth STRIP = IcingExample.firstScan().strip().strip();

  @Test
  void theStoredReadingsAreTheDrawnOnes() throws IOException {
    assertThat(IcingClass.readings(STRIP))
        .isEqualTo(Files.readString(Path.of("example", "hand-readings.csv")));
  }

  @Test
  void aCarefulReaderIsNearTheTruth() {
    List<HandReading> rows =
        HandReader.careful("P", HandReader.Edge.HALF_MILLIMETRES).read(STRIP, new Dice(1));

    assertThat(rows).hasSize(7);
    for (HandReading row : rows) {
      var spots = STRIP.lane(row.lane()).spots();
      double middle = spots.get(spots.size() - row.spot()).extent().middleDistanceMm();
      // Four standard deviations of the scatter and half a step of rounding.
      assertThat(Math.abs(row.distance().doubleValue() - middle)).isLessThan(4 * 0.3 + 0.25);
      assertThat(row.rf().doubleValue())
          .isBetween(
              row.distance().doubleValue() / row.front().doubleValue() - 0.005,
              row.distance().doubleValue() / row.front().doubleValue() + 0.005);
    }
  }
}
