package wickmark.cli.record;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import wickmark.cli.measuring.SampleStrip;

class SpotsCsvTest {
  private static List<CSVRecord> rows(String text) throws Exception {
    return CSVParser.parse(text, CSVFormat.RFC4180.builder().setHeader().get()).getRecords();
  }

  @Test
  void hasARowASpot() throws Exception {
    List<CSVRecord> rows = rows(SpotsCsv.text(SampleStrip.record()));

    assertThat(rows).hasSize(4);
    assertThat(rows.get(0).get("lane")).isEqualTo("A");
    assertThat(rows.get(0).get("distance_mm")).isEqualTo("54.00");
    assertThat(rows.get(0).get("front_mm")).isEqualTo("75.00");
    assertThat(rows.get(0).get("rf")).isEqualTo("0.7200");
    assertThat(rows.get(0).get("rf_plus_minus_k2")).isEqualTo("0.0042");
  }

  @ParameterizedTest
  @ValueSource(strings = {"=1+1", "+1", "-1", "@x", "\tx"})
  void noNameIsAFormula(String name) throws Exception {
    List<CSVRecord> rows = rows(SpotsCsv.text(SampleStrip.record(name, "B", "X")));

    assertThat(rows.get(0).get("lane")).isEqualTo("'" + name);
  }

  @Test
  void aNameWithCommasAndQuotesStaysOneCell() throws Exception {
    List<CSVRecord> rows = rows(SpotsCsv.text(SampleStrip.record("a,\"b\"\nc", "B", "X")));

    assertThat(rows.get(0).get("lane")).isEqualTo("a,\"b\"\nc");
  }
}
